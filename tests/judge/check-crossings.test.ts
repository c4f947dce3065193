import { describe, expect, it } from "vitest";
import { checkCrossings } from "../../src/judge/check-crossings.js";
import { concatMeshes } from "../../src/mesh/mesh.js";
import { box, meshOf } from "../support/meshes.js";

describe("the gate with crossings", () => {
  it("passes a box, and two that stand apart", async () => {
    expect(await checkCrossings(box())).toMatchObject({ closed: true, crossings: { count: 0 } });
    const two = concatMeshes([box(), box([1, 1, 1], [2, 0, 0])]);
    expect(await checkCrossings(two, { components: 2 })).toMatchObject({ closed: true, faults: [] });
  });

  it("finds two boxes in each other at fault, deeper than a micrometre and no shallower", async () => {
    const reaching = (by: number) => concatMeshes([box(), box([1, 0.5, 0.5], [1 - by, 0.2, 0.2])]);
    const deep = await checkCrossings(reaching(0.002), { components: 2 });
    expect(deep.closed).toBe(false);
    expect(deep.faults.map(({ code }) => code)).toEqual(["crossing"]);
    expect(deep.faults[0].message).toMatch(/^\d+ pairs of triangles cross, by up to 0\.0020 mm$/);
    const shallow = await checkCrossings(reaching(0.0005), { components: 2 });
    expect(shallow).toMatchObject({ closed: true, faults: [] });
    expect(shallow.crossings?.deepest).toBeCloseTo(0.0005, 12);
  });

  it("does not look into a mesh that is not closed", async () => {
    const open = meshOf(
      [
        [0, 0, 0],
        [1, 0, 0],
        [0, 1, 0],
      ],
      [[0, 1, 2]],
    );
    expect(await checkCrossings(open)).toMatchObject({ closed: false, crossings: undefined });
  });
});
