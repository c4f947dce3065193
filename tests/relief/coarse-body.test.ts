import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { BREATH, finish } from "../../src/base/pausing.js";
import type { GridPath } from "../../src/flat/grid.js";
import { type GridRegion, ringArea } from "../../src/flat/polygons.js";
import { makeStrip, type Strip } from "../../src/flat/strip.js";
import { coarseBody as makingCoarse } from "../../src/relief/coarse-body.js";

/** The body, made at once. */
function coarseBody<Body>(strip: Strip, region: GridRegion, make: (strip: Strip, region: GridRegion) => Body): Body {
  const making = makingCoarse(strip, region, function* (one, rings) {
    yield BREATH;
    return make(one, rings);
  });
  return finish(making);
}

const fit = { tileWidth: 4, tileHeight: 4, repeats: 10, rows: 1, cover: 360, cycle: 1, aspect: 1 };
const stripOf = (bodyTolerance?: number) => makeStrip(fit, "p1", 6, 0.01, { bodyTolerance });
const fine = stripOf();
const coarse = stripOf(0.05);

/** A circle of points about (2, 0), mm, on the grid; turned the other way for a hole. */
function circle({ grid }: Strip, radius: number, count: number, isHole = false): GridPath {
  return Array.from({ length: count }, (_, i) => {
    const angle = ((isHole ? -1 : 1) * 2 * Math.PI * i) / count;
    return {
      x: Math.round((2 + radius * Math.cos(angle)) * grid.scale),
      y: Math.round(radius * Math.sin(angle) * grid.scale),
    };
  });
}

const region = [circle(fine, 1, 240)];
const asMade = (strip: Strip, rings: readonly GridPath[]) => ({ strip, rings });

describe("a body coarser than its art", () => {
  it("is made of the art itself where bodies may not be coarser", () => {
    expect(coarseBody(fine, region, asMade)).toEqual({ strip: fine, rings: region });
    expect(coarseBody(stripOf(0.005), region, asMade).rings).toBe(region);
  });

  it("keeps within the bodies' tolerance with far fewer points, at places and of a size as before", () => {
    const { strip, rings } = coarseBody(coarse, region, asMade);
    expect(rings[0].length).toBeLessThan(region[0].length / 5);
    expect(strip.artTolerance).toBe(0.025);
    expect(strip.arcTolerance).toBe(0.025 * fine.grid.scale);
    const { scale } = fine.grid;
    rings[0].forEach((a, i) => {
      const b = rings[0][(i + 1) % rings[0].length];
      const middle = Math.hypot((a.x + b.x) / 2 / scale - 2, (a.y + b.y) / 2 / scale);
      expect(1 - middle).toBeLessThan(0.025);
    });
    expect(ringArea(rings[0]) / scale ** 2).toBeGreaterThan(Math.PI - 2 * Math.PI * 0.025);
  });

  it("is as fine as its art where straightening would lose a hole", () => {
    const [left, middle, right, low] = [1.9, 2, 2.1, 0.004].map((mm) => Math.round(mm * fine.grid.scale));
    const sliver = [
      { x: left, y: 0 },
      { x: middle, y: -low },
      { x: right, y: 0 },
      { x: middle, y: low },
    ];
    const pierced = [...region, sliver.toReversed()];
    expect(coarseBody(coarse, pierced, asMade).rings).toBe(pierced);
    const wide = [...region, circle(fine, 0.3, 60, true)];
    expect(coarseBody(coarse, wide, asMade).rings).toHaveLength(2);
  });

  it("is as fine as its art where no coarse one can be made, and what that refuses is refused", () => {
    const refuse = (message: string) => new AnnuletError({ code: "round-too-large", message });
    const only = coarseBody(coarse, region, (strip, rings) => {
      if (rings !== region) throw refuse("straightened");
      return strip;
    });
    expect(only).toBe(coarse);
    const never = () =>
      coarseBody(coarse, region, (_, rings) => {
        throw refuse(rings === region ? "as drawn" : "straightened");
      });
    expect(never).toThrow("as drawn");
  });

  it("hides no fault of the code", () => {
    const broken = () =>
      coarseBody(coarse, region, () => {
        throw new TypeError("broken");
      });
    expect(broken).toThrow(TypeError);
  });
});
