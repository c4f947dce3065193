import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { facetCount } from "../../src/solids/facet-counts.js";
import { SEED } from "../band/profile/specs.js";

describe("the number of facets", () => {
  it("keeps the sagitta r (1 − cos π/n) under the tolerance, is whole a tile, and not more than one tile's too many", () => {
    const radius = fc.double({ min: 6, max: 15, noNaN: true });
    const tolerance = fc.double({ min: 0.001, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(radius, tolerance, fc.integer({ min: 1, max: 1000 }), (r, t, repeats) => {
        const facets = facetCount(r, t, repeats);
        expect(r * (1 - Math.cos(Math.PI / facets))).toBeLessThanOrEqual(t * (1 + 1e-9));
        expect(facets % repeats).toBe(0);
        const needed = Math.max(24, Math.ceil(Math.PI / Math.acos(1 - t / r)));
        expect(facets).toBeLessThan(needed + 2 * repeats + 1);
        if (2 * repeats <= needed) expect(facets % (2 * repeats)).toBe(0);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});
