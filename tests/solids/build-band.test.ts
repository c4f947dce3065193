import { describe, expect, it } from "vitest";
import { before, type HalfSpace, after as past } from "../../src/base/math/half-space.js";
import type { Point2 } from "../../src/base/math/point.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { buildBand } from "../../src/solids/build-band.js";
import { cutOff } from "../../src/solids/sector.js";

/** A rectangle 5 wide and 2 thick about the radius 9, in (w, r), mm. */
const polyline: Point2[] = [
  [-2.5, 8],
  [2.5, 8],
  [2.5, 10],
  [-2.5, 10],
];
const [FACETS, START] = [40, 0.3];
const STEP = (2 * Math.PI) / FACETS;

/** Pappus for so many facets: area times the centroid's radius times sin of a facet's angle for each. */
const facets = (count: number, area = 10) => area * 9 * count * Math.sin(STEP);

const between = (mesh: Mesh, from: number, to: number, more: readonly HalfSpace[] = []) =>
  signedVolume([past(from), before(to), ...more].reduce(cutOff, mesh));

describe("the band over a sector", () => {
  it("is all of it where none is given", () => {
    const whole = buildBand(() => polyline, { facets: FACETS, startAngle: START });
    expect(checkSolid(whole)).toMatchObject({ closed: true, genus: 1 });
    expect(signedVolume(whole)).toBeCloseTo(facets(FACETS), 9);
  });

  it.each([
    [0, 10],
    [3.37, 8.37],
    [-2.5, 4],
    [0, 20],
  ])("from facet %f to %f is the band itself up to its ends, and goes on beyond them", (first, last) => {
    const [from, to] = [START + first * STEP, START + last * STEP];
    const whole = buildBand(() => polyline, { facets: FACETS, startAngle: START });
    const part = buildBand(() => polyline, { facets: FACETS, startAngle: START, sector: { from, to } });
    expect(checkSolid(part)).toMatchObject({ closed: true, genus: 0 });
    expect(signedVolume(part)).toBeLessThan(facets(last - first + 3));
    if (last - first < FACETS / 2) {
      expect(between(part, from, to)).toBeCloseTo(between(whole, from, to), 9);
      // Longer by less than a third of a facet at either end, and the same there.
      const more = 0.29 * STEP;
      expect(between(part, from - more, to + more)).toBeCloseTo(between(whole, from - more, to + more), 9);
      if (Number.isInteger(first)) expect(between(part, from, to)).toBeCloseTo(facets(last - first), 9);
    } else expect(signedVolume(part)).toBeGreaterThan(facets(last - first));
  });

  it("above the middle is half of it, and a little more below", () => {
    const sector = { from: START, to: START + 6 * STEP, upper: true };
    const part = buildBand(() => polyline, { facets: FACETS, startAngle: START, sector });
    expect(checkSolid(part)).toMatchObject({ closed: true, genus: 0 });
    const above: HalfSpace = { normal: [0, 0, -1], offset: 0 };
    expect(between(part, sector.from, sector.to, [above])).toBeCloseTo(facets(6, 5), 9);
    expect(between(part, sector.from, sector.to)).toBeCloseTo(facets(6, 2 * 2.65), 9);
  });
});
