import { describe, expect, it } from "vitest";
import { geodesicSphere } from "../../src/beads/bead.js";
import { buildBeads } from "../../src/beads/bead-bodies.js";
import { SIX_SIDED_DEVIATION, sixSidedBead } from "../../src/beads/six-sided-bead.js";
import { checkSolid } from "../../src/judge/gate.js";
import { meshBounds } from "../../src/mesh/bounds.js";
import { signedVolume } from "../../src/mesh/volume.js";

const radii = ({ positions }: { readonly positions: Float64Array }) =>
  Array.from({ length: positions.length / 3 }, (_, i) => Math.hypot(...positions.subarray(3 * i, 3 * i + 3)));

describe("the plainest bead", () => {
  const bead = sixSidedBead();

  it("is a solid of 24 triangles whose corners all lie on the unit sphere", () => {
    expect(checkSolid(bead)).toMatchObject({ closed: true, genus: 0, triangles: 24 });
    for (const radius of radii(bead)) expect(radius).toBeCloseTo(1, 12);
  });

  it("has the volume of a hexagonal prism and two pyramids", () => {
    const area = 1.5 * Math.sqrt(3) * (1 - 0.44 ** 2);
    expect(signedVolume(bead)).toBeCloseTo(area * (0.88 + (2 * 0.56) / 3), 12);
  });

  it("falls short of its sphere most at the middle of its sides", () => {
    expect(1 - meshBounds(bead).max[1]).toBeCloseTo(SIX_SIDED_DEVIATION, 12);
  });

  it("stands in for small beads where so coarse a one will do, and stands out no farther than a finer one", () => {
    const at = (radius: number) => ({ centre: [10, 0, 0] as const, radius, outward: [1, 0, 0] as const });
    const [small, large] = buildBeads([at(0.2), at(0.6)], { tolerance: 0.05, coarsest: SIX_SIDED_DEVIATION });
    expect([small.triangles.length / 3, large.triangles.length / 3]).toEqual([
      24,
      geodesicSphere(1 / 12).triangles.length / 3,
    ]);
    const fine = buildBeads([at(0.2)], { tolerance: 0.01, coarsest: 0.04 })[0];
    expect(meshBounds(small).max[0]).toBeLessThanOrEqual(meshBounds(fine).max[0]);
  });
});
