// Across: designs whose rings hang together on no road, and roads that fail where another does not
import { describe, expect, it } from "vitest";
import { build, type Kernel, manifoldKernel } from "../../src/index.js";
import type { Mesh } from "../../src/mesh/mesh.js";

const band = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  profile: { width: 6, thickness: 2, bore: { form: "flat" }, outside: { form: "flat" } },
  tolerance: 0.05,
} as const;

/** Beads beside each other that do not touch, over holes: or, where those are no holes, over pits that they reach into. */
const beaded = (cut: object, symmetry = "p1") => ({
  ...band,
  pattern: { fit: { repeats: 6 }, symmetry, regions: [{ path: "M 0.2 -0.3 H 0.8 V 0.3 H 0.2 Z", ...cut }] },
  beads: [{ along: { v: 0 }, diameter: 0.6, pitch: 1.5 }],
});
const HOLES = { mode: "pierced" };
const PITS = { mode: "sunk", depth: 0.1 };

/** The default kernel, whose unions are counted. */
function counting() {
  const counted = { unions: 0 };
  const kernel: Kernel = {
    ...manifoldKernel,
    name: "counting",
    union: (...given) => {
      counted.unions++;
      return manifoldKernel.union(...given);
    },
  };
  return { kernel, counted };
}

describe("a design whose ring is in pieces", () => {
  it.each(["p1", "p2mm"])("is refused once its first road shows it (%s)", async (symmetry) => {
    const [sound, loose] = [counting(), counting()];
    await build(beaded(PITS, symmetry), { kernel: sound.kernel });
    const error = await build(beaded(HOLES, symmetry), { kernel: loose.kernel }).catch((reason) => reason);
    expect(error).toMatchObject({ code: "loose-pieces", value: { pieces: expect.any(Number) } });
    expect(loose.counted.unions).toBe(sound.counted.unions);
  });
});

describe("a ring that is in pieces by its road's fault", () => {
  /** Drops a part of the first union that has as many. */
  function dropping(which: number, of: number): Kernel {
    let dropped = false;
    return {
      ...manifoldKernel,
      name: "dropping",
      union: (parts: readonly Mesh[], ...more) => {
        const now = !dropped && parts.length === of;
        dropped ||= now;
        return manifoldKernel.union(now ? parts.filter((_, i) => i !== which) : parts, ...more);
      },
    };
  }

  it("is made on another road: what the beads stand on was lost on the first", async () => {
    const posts = {
      ...band,
      pattern: {
        fit: { repeats: 6 },
        regions: [
          { path: "M 0.2 -0.3 H 0.8 V 0.2 H 0.2 Z", height: 0.9, beads: { on: "border", diameter: 0.6, pitch: 2 } },
        ],
      },
    };
    const sound = await build(posts);
    const lengths: number[] = [];
    const listening: Kernel = {
      ...manifoldKernel,
      name: "listening",
      union: (parts, ...more) => {
        lengths.push(parts.length);
        return manifoldKernel.union(parts, ...more);
      },
    };
    await build(posts, { kernel: listening });
    const { report } = await build(posts, { kernel: dropping(1, Math.max(...lengths)) });
    expect(report.volume).toBeCloseTo(sound.report.volume, 3);
    expect(report.roadReason).toMatch(/by dropping/);
    expect(sound.report.roadReason).not.toMatch(/by /);
  });
});
