import { describe, expect, it } from "vitest";
import { before, type HalfSpace, after as past } from "../../src/base/math/half-space.js";
import type { Sector } from "../../src/base/math/round.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { cutOff, flatSector } from "../../src/solids/sector.js";
import { farthest } from "../support/farthest.js";
import { box } from "../support/meshes.js";
import { bodiesOf } from "../support/stages.js";
import { bodiesOfSteps, type StepBodies } from "../support/steps.js";

/** Coarse, so that a chord and its arc are far apart. */
const document = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.1,
  profile: {
    width: 6,
    thickness: 2.4,
    bore: { form: "flat", edge: 0.2 },
    outside: { form: "domed", rise: 0.4, edge: 0.2 },
  },
  pattern: {
    fit: { repeats: 8, hold: "band" },
    symmetry: "p2",
    regions: [
      { path: "M 0 0.05 C 0.3 0.3 0.7 -0.2 1 0.05", ribbon: { width: 0.8 }, height: 0.5 },
      { path: "M 0.2 -0.3 L 0.45 -0.1 L 0.3 0.1 Z", mode: "pierced" },
      { path: "M 0.9 -0.3 L 1.2 -0.3 L 1.05 -0.1 Z", mode: "sunk", depth: 0.4 },
    ],
  },
};

const { parts, wrap } = bodiesOf(document);
const UNIT = (2 * Math.PI) / 8;

const inside = (mesh: Mesh, { from, to, upper }: Sector) => {
  const planes: HalfSpace[] = [past(from), before(to), ...(upper ? [{ normal: [0, 0, -1] as const, offset: 0 }] : [])];
  return planes.reduce(cutOff, mesh);
};

describe("a sector on the flat seat", () => {
  it("goes on for a tenth of a millimetre beyond its ends, and below the middle where that is enough", () => {
    const sector = { from: wrap.startAngle, to: wrap.startAngle + UNIT };
    const wide = UNIT * wrap.referenceRadius;
    const { low, high, least } = flatSector(sector, wrap);
    expect([low, high, least]).toEqual([-0.1, expect.closeTo(wide + 0.1, 12), Number.NEGATIVE_INFINITY]);
    expect(flatSector({ ...sector, upper: true }, wrap).least).toBe(-0.1);
  });
});

describe("bodies over a sector", () => {
  it.each<[number, number, boolean]>([
    [0, 1, false],
    [0.37, 1, false],
    [0.11, 0.5, true],
    [-0.93, 2, false],
  ])(
    "from unit %f, %f units long (upper half: %s), are the ring's own bodies up to its ends",
    (first, count, upper) => {
      const from = wrap.startAngle + first * UNIT;
      const sector: Sector = { from, to: from + count * UNIT, upper };
      const of = (bodies: StepBodies) => [
        ...bodies.reliefs,
        ...bodies.cuts.flatMap(({ under, tools }) => [...under, ...tools]),
      ];
      const [part, whole] = [of(bodiesOfSteps(parts.steps, sector)), of(bodiesOfSteps(parts.steps))];
      expect(part.length).toBe(whole.length);
      expect(part.length).toBeGreaterThan(2);
      part.forEach((body, i) => {
        expect(checkSolid(body, { components: checkSolid(body).components }).closed).toBe(true);
        expect(signedVolume(body)).toBeLessThan(signedVolume(whole[i]));
        const [own, ring] = [inside(body, sector), inside(whole[i], sector)];
        expect(signedVolume(own)).toBeCloseTo(signedVolume(ring), 9);
        if (own.triangles.length > 0) expect(farthest(own, ring, 1)).toBeLessThan(1e-7);
      });
    },
  );
});

describe("a mesh cut off", () => {
  it("is closed at the plane (2 × 3 × 4 cut at 1.5: 9 mm³)", () => {
    const part = cutOff(box([4, 3, 2]), { normal: [1, 0, 0], offset: 1.5 });
    expect(checkSolid(part)).toMatchObject({ closed: true, genus: 0 });
    expect(signedVolume(part)).toBeCloseTo(9, 12);
  });
});
