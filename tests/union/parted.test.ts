import { describe, expect, it } from "vitest";
import { after, before } from "../../src/base/math/half-space.js";
import type { Sector } from "../../src/base/math/round.js";
import { finish } from "../../src/base/pausing.js";
import { TURN } from "../../src/base/units.js";
import { Work } from "../../src/base/work.js";
import { checkSolid } from "../../src/judge/gate.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { cuttingToSectors, partsFor, unitePartly } from "../../src/union/parted.js";
import { takeSteps } from "../../src/union/take-steps.js";
import { tidyMesh } from "../../src/union/tidy-mesh.js";
import { partsOf } from "../properties/roads.js";
import { farthest } from "../support/farthest.js";
import { box, torus } from "../support/meshes.js";
import { unitStep } from "../support/steps.js";

/** Volumes differ by what tidying and single precision change of faces and edges. */
const SAME_VOLUME = 2e-6;

const sectorsFrom = (cuts: readonly number[]): Sector[] =>
  cuts.map((from, i) => ({ from, to: cuts[i + 1] ?? cuts[0] + TURN }));

/** A block that stands on the torus at an angle, as long along it as told. */
function stud(angle: number, along = 0.5): Mesh {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const block = box([1.2, along, 0.7], [6.6, -along / 2, 0.1]);
  return transformMesh(block, [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]);
}

describe("a body in sectors", () => {
  const cuts = [-3.1, -1.7, 0.2, 1.9, 2.6];

  it("is cut where it goes on: each part is closed, and within its sector it is the body", () => {
    const ring = torus(6, 1, 90, 16);
    const parts = finish(cuttingToSectors(ring, sectorsFrom(cuts)));
    let sum = 0;
    for (const [i, part] of parts.entries()) {
      expect(checkSolid(part)).toMatchObject({ closed: true, genus: 0 });
      sum += signedVolume(part);
      const [middle] = sectorsFrom(cuts)
        .slice(i, i + 1)
        .map(({ from, to }) => (from + to) / 2);
      const inside = (keep: { readonly normal: readonly number[] }) =>
        keep.normal[0] * Math.cos(middle) + keep.normal[1] * Math.sin(middle) < 0;
      const { from, to } = sectorsFrom(cuts)[i];
      expect([after(from), before(to)].every(inside)).toBe(true);
    }
    // Each goes on a little beyond both its ends.
    const whole = signedVolume(ring);
    expect(sum).toBeGreaterThan(whole);
    expect(sum).toBeLessThan(whole * (1 + (2 * cuts.length * 0.031) / TURN));
  });

  it("stays whole where it is short, in each sector that it reaches into and in no other", () => {
    // On a cut, clear of all cuts, beside a cut by less than parts go on beyond it, and where angles begin anew.
    const studs = [0.2, 1, 1.9 - 0.06, Math.PI];
    const parts = finish(cuttingToSectors(concatMeshes(studs.map((at) => stud(at))), sectorsFrom(cuts)));
    const each = 12;
    expect(parts.map(({ triangles }) => triangles.length / 3 / each)).toEqual([1, 1, 3, 1, 1]);
    for (const part of parts)
      expect(checkSolid(part, { components: part.triangles.length / 3 / each }).closed).toBe(true);
  });

  it("has parts enough that each is less than half the round, and never too many", () => {
    expect(partsFor(1)).toBe(4);
    expect(partsFor(100_000)).toBe(9);
    expect(partsFor(1e9)).toBe(32);
  });
});

describe("a ring united in parts", () => {
  const united = async (
    steps: Parameters<typeof unitePartly>[1],
    count: number,
    cutNear = (angle: number) => angle,
  ) => {
    const parted = tidyMesh(await unitePartly(manifoldKernel, steps, { count, cutNear, pace: new Work() }));
    const whole = tidyMesh(await takeSteps(manifoldKernel, steps));
    return { parted, whole };
  };
  const isSame = ({ parted, whole }: { parted: Mesh; whole: Mesh }) => {
    expect(Math.abs(signedVolume(parted) / signedVolume(whole) - 1)).toBeLessThan(SAME_VOLUME);
    expect(Math.max(farthest(parted, whole, 1), farthest(whole, parted, 1))).toBeLessThan(1e-3);
  };

  it.each([3, 4, 7])(
    "of %i is the ring united whole: what stands on cuts, crosses them or lies beside them",
    async (count) => {
      const steps = [
        unitStep("add", [torus(6, 1.4, 60, 12)]),
        unitStep("add", [stud(0.001), stud(1.3), stud(2.2, 4), stud(TURN / 4 + 0.02)], true),
        unitStep("add", [transformMesh(stud(0.35, 3), [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, -0.9, 1])]),
        unitStep("cut", [
          stud(3, 2),
          transformMesh(torus(7.3, 0.3, 80, 8), [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0.3, 1]),
        ]),
      ];
      const made = await united(steps, count, (angle) => angle + 0.013);
      const found = checkSolid(made.whole);
      expect(found.closed).toBe(true);
      expect(checkSolid(made.parted)).toMatchObject({ closed: true, genus: found.genus });
      isSame(made);
    },
  );

  it("is the same of a design: a letter without symmetry, a hole, a pit all the way round, beads and a mark", async () => {
    const parts = await partsOf({
      annulet: 1,
      size: { system: "iso", value: 54 },
      profile: { width: 7, thickness: 2, bore: { form: "flat" }, outside: { form: "domed", rise: 0.3 } },
      tolerance: 0.03,
      pattern: {
        cover: 300,
        fit: { repeats: 7 },
        regions: [
          { path: "M 0.1 -0.4 H 0.9 V -0.08 H 0.7 V -0.2 H 0.3 V 0.2 H 0.7 V 0.08 H 0.9 V 0.4 H 0.1 Z", height: 0.4 },
          { path: "M 0.45 -0.05 H 0.6 V 0.05 H 0.45 Z", mode: "pierced" },
        ],
      },
      beads: [{ along: { v: 2.9 }, diameter: 0.6 }],
    });
    expect(parts.symmetry).toBeUndefined();
    const made = await united(parts.steps, 6, parts.cutNear);
    expect(checkSolid(made.parted).closed).toBe(true);
    isSame(made);
  });

  it("is refused where its parts do not meet: a body that is another one in each sector", async () => {
    let asked = 0;
    const torusStep = unitStep("add", [torus(6, 1.4, 60, 12)]);
    const fickle = { ...torusStep, bodies: () => [torus(6, asked++ % 2 === 0 ? 1.4 : 1.2, 60, 12)] };
    const working = unitePartly(manifoldKernel, [fickle], {
      count: 4,
      cutNear: (angle) => angle + 0.01,
      pace: new Work(),
    });
    await expect(working).rejects.toMatchObject({ code: "seam-mismatch" });
  });
});
