// Covers: src/output/picture/known/known-surface.ts
import { describe, expect, it } from "vitest";
import { makeBand } from "../../../../src/band/make-band.js";
import { readDesign } from "../../../../src/design/read.js";
import { knownBand } from "../../../../src/output/picture/known/known-band.js";
import { mostLean } from "../../../../src/output/picture/known/known-surface.js";

const BORE = 9;

function bandOf(outside: object, rest: object = {}) {
  const profile = { width: 6, thickness: 2, bore: { form: "flat", edge: 0.2 }, outside, ...rest };
  const design = readDesign({ annulet: 1, size: { system: "iso", value: 55 }, profile });
  return makeBand(design.profile, BORE, 0.01);
}

/** All that is known of a point, at θ, w and r: along the way round, along the axis and away from it; and the lean. */
function knownAt(band: ReturnType<typeof bandOf>, [angle, w, r]: readonly [number, number, number]) {
  const found: number[][] = [];
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  knownBand(band, 0.01)(r * cos, r * sin, w, (nx, ny, nz, lean) => {
    found.push([ny * cos - nx * sin, nz, nx * cos + ny * sin, lean]);
  });
  return found;
}

describe("the band's known surface", () => {
  it("faces away from the middle of a dome's arc", () => {
    const rise = 0.6;
    const band = bandOf({ form: "domed", rise, edge: 0.1 });
    // The circle through both sides and the top: radius (c² / 4 + s²) / 2s of chord c and sagitta s.
    const radius = (6 ** 2 / 4 + rise ** 2) / (2 * rise);
    for (const angle of [0, 1, 2.5, -2]) {
      for (const tilt of [-0.3, -0.1, 0, 0.2, 0.3]) {
        // A facet's middle lies within the tolerance beneath.
        for (const deep of [0, 0.009]) {
          const [w, r] = [(radius - deep) * Math.sin(tilt), BORE + 2 - radius + (radius - deep) * Math.cos(tilt)];
          const [[round, across, out], ...others] = knownAt(band, [angle, w, r]);
          expect(others).toEqual([]);
          expect(round).toBeCloseTo(0, 12);
          expect(across).toBeCloseTo(Math.sin(tilt), 9);
          expect(out).toBeCloseTo(Math.cos(tilt), 9);
        }
      }
    }
  });

  it("tells both sides of a sharp edge, and nothing off the surface", () => {
    const band = bandOf({ form: "flat", edge: 0 });
    const edge = knownAt(band, [0.4, 3, BORE + 2]).map(([, across, out]) => [Math.round(across), Math.round(out)]);
    expect(edge.toSorted()).toEqual([
      [0, 1],
      [1, 0],
    ]);
    expect(knownAt(band, [0.4, 0, BORE + 1])).toEqual([]);
    expect(knownAt(band, [0.4, 0, BORE + 2.05])).toEqual([]);
    // The bore faces the axis.
    expect(knownAt(band, [0.4, 0, BORE]).map(([, across, out]) => [Math.round(across), Math.round(out)])).toEqual([
      [0, -1],
    ]);
  });

  it("leans along the way round where the band tapers, square to how its surface goes", () => {
    const band = bandOf({ form: "domed", rise: 0.4, edge: 0.2 }, { taper: { width: 3, thickness: 1.4 } });
    expect(band.revolved).toBe(false);
    for (const angle of [0.2, 1.1, 2.6, -1.2]) {
      // Three points of the surface near one another give its normal, whatever the formula says.
      const point = (theta: number, share: number) => {
        const arc = band.seatAt(theta)[Math.floor(band.seatAt(theta).length / 2)];
        if (arc.kind !== "arc") throw new Error("a dome is an arc");
        const at = arc.start + arc.sweep * share;
        const [w, r] = [arc.centre[0] + arc.radius * Math.cos(at), arc.centre[1] + arc.radius * Math.sin(at)];
        return [r * Math.cos(theta), r * Math.sin(theta), w];
      };
      const [share, step] = [0.37, 1e-4];
      const [a, b, c] = [point(angle, share), point(angle + step, share), point(angle, share + step)];
      const [p, q] = [b.map((value, k) => value - a[k]), c.map((value, k) => value - a[k])];
      const cross = [0, 1, 2].map((k) => p[(k + 1) % 3] * q[(k + 2) % 3] - p[(k + 2) % 3] * q[(k + 1) % 3]);
      const length = Math.hypot(...cross);
      const outward = Math.sign(cross[0] * a[0] + cross[1] * a[1]);
      const found: number[][] = [];
      knownBand(band, 0.01)(a[0], a[1], a[2], (...normal) => found.push(normal));
      expect(found).toHaveLength(1);
      for (const k of [0, 1, 2]) expect(found[0][k]).toBeCloseTo((outward * cross[k]) / length, 3);
      const along = found[0][1] * Math.cos(angle) - found[0][0] * Math.sin(angle);
      expect(Math.abs(along)).toBeGreaterThan(0.005);
    }
  });
});

describe("mostLean", () => {
  it("lets a chord's half angle pass, and never a chamfer's turn", () => {
    const half = Math.acos(1 - 0.01 / 10);
    expect(mostLean([10, Number.POSITIVE_INFINITY], 0.01)).toBeGreaterThan(half);
    expect(mostLean([10, Number.POSITIVE_INFINITY], 0.01)).toBeLessThan(2 * half);
    expect(mostLean([0.001, 0.001], 0.01)).toBeLessThan(Math.PI / 4);
  });
});
