import { build, openRing } from "annulet";
import { describe, expect, it } from "vitest";
import { Heard } from "../../src/ring/heard.js";

const progress = { stage: "union", share: 0.5 } as const;

const design = {
  annulet: 1,
  size: { diameter: 16 },
  tolerance: 0.1,
  profile: { width: 4, thickness: 2, outside: { form: "flat" } },
  pattern: { fit: { repeats: 4 }, regions: [{ path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.3 }] },
};

describe("one who hears", () => {
  it("hears until the question is over, or the signal goes up", () => {
    const told: unknown[] = [];
    const controller = new AbortController();
    const [one, other] = [
      new Heard((it) => told.push(it), undefined),
      new Heard((it) => told.push(it), controller.signal),
    ];
    one.hear?.(progress);
    one.end();
    one.hear?.(progress);
    controller.abort();
    other.hear?.(progress);
    expect(told).toEqual([progress]);
    expect(new Heard(undefined, undefined).hear).toBeUndefined();
  });

  it("keeps what was thrown for the one who threw it", () => {
    const error = new RangeError("mine");
    let calls = 0;
    const heard = new Heard(() => {
      calls++;
      throw error;
    }, undefined);
    expect(() => heard.rethrow()).not.toThrow();
    heard.hear?.(progress);
    heard.hear?.(progress);
    expect(calls).toBe(1);
    expect(() => heard.rethrow()).toThrow(error);
  });

  it("spoils nobody else's answer by what it throws", async () => {
    const ring = openRing(design);
    const onProgress = ({ stage }: { stage: string }) => {
      if (stage === "union") throw new RangeError("mine");
    };
    const [mine, theirs] = await Promise.allSettled([ring.solid({ onProgress }), ring.solid()]);
    expect(mine).toMatchObject({ status: "rejected", reason: new RangeError("mine") });
    expect(theirs.status).toBe("fulfilled");
    await expect(build(design, { onProgress })).rejects.toThrow("mine");
  });
});
