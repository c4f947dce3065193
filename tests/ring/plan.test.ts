import { describe, expect, it } from "vitest";
import type { RingOptions } from "../../src/ring/answers.js";
import { RING_DEFAULTS } from "../../src/ring/open-ring.js";
import { Plan } from "../../src/ring/plan.js";
import type { StageName } from "../../src/ring/stage.js";
import { stages } from "../../src/ring/stages.js";

const plan = (
  names: readonly StageName[],
  cast: "cast" | "finished" = "finished",
  chosen: Partial<RingOptions> = {},
) => {
  const own = new Plan({ ...(RING_DEFAULTS as RingOptions), ...chosen }, cast);
  const nodes = names.map((name) => own.need(name));
  return { nodes, ids: own.order.map(({ id }) => id), order: own.order };
};

describe("which stages a question needs", () => {
  it("are those that its own read, and no others: a size needs nothing but itself", () => {
    expect(plan(["size"]).ids).toEqual(["finished size"]);
    expect(plan(["boreRadius"]).ids).toEqual(["finished size", "finished boreRadius"]);
    expect(plan(["fit"]).ids).not.toContain("finished pattern");
    expect(plan([]).ids).toEqual([]);
  });

  it("come each after all that it reads, once, for every answer that there is and with and without a casting", () => {
    for (const cast of ["cast", "finished"] as const) {
      const { order, ids } = plan(Object.keys(stages) as StageName[], cast);
      expect(new Set(ids).size).toBe(ids.length);
      order.forEach(({ reads }, i) => {
        for (const { node } of reads) if (node !== undefined) expect(ids.slice(0, i)).toContain(node.id);
      });
    }
  });

  it("are of the casting where that is read of it, or of the finished piece where they are one", () => {
    expect(plan(["castPiece"], "cast").ids).toContain("cast union");
    expect(plan(["castPiece"], "cast").ids).not.toContain("finished union");
    const one = plan(["castPiece"]).ids;
    expect(one.some((id) => id.startsWith("cast "))).toBe(false);
    expect(one).toContain("finished union");
  });

  it("begin with the finished piece and end with what is made of both", () => {
    const { order } = plan(["allowances"], "cast");
    const kinds = order.map(({ piece, last }) => (last ? "last" : piece));
    expect(kinds).toEqual(
      kinds.toSorted((a, b) => ["finished", "cast", "last"].indexOf(a) - ["finished", "cast", "last"].indexOf(b)),
    );
    expect(order.at(-1)?.id).toBe("finished allowances");
    expect(new Set(kinds).size).toBe(3);
  });

  it("are those that an option chooses, in place of the question itself", () => {
    expect(plan(["piece"], "cast", { piece: "finished" }).nodes[0]?.name).toBe("solid");
    expect(plan(["piece"], "cast", { piece: "master" }).nodes[0]?.name).toBe("masterPiece");
    expect(plan(["thinned"], "finished", { decimate: 0 }).ids).not.toContain("finished decimated");
    expect(plan(["thinned"], "finished", { decimate: 0.1 }).ids).toContain("finished decimated");
  });

  it("are none for a field or an option", () => {
    const own = new Plan(RING_DEFAULTS as RingOptions, "finished");
    expect([own.need("design.size"), own.need("option.kernel")]).toEqual([undefined, undefined]);
    expect(own.order).toEqual([]);
  });
});
