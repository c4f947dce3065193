import { describe, expect, it } from "vitest";
import { roundToFloat32 } from "../../../src/mesh/float32.js";
import { encodeMesh } from "../../../src/output/files/format.js";
import { stlBinary } from "../../../src/output/files/formats/stl-binary.js";
import { printFigures } from "../../../src/output/print/figures.js";
import { layDown } from "../../../src/output/print/lay-down.js";
import { printSettings } from "../../../src/output/print/settings.js";
import { box, torus } from "../../support/meshes.js";
import { hasSlicer, slicedLayers, slicerInfo } from "../../support/slicer.js";

describe("what a printer asks", () => {
  it("is the box, its height and its layers", () => {
    const settings = printSettings({ layer: 0.3 });
    expect(printFigures(box([3, 2, 1], [1, 1, 1]), settings)).toMatchObject({
      stance: "built",
      tilt: null,
      bounds: { min: [1, 1, 1], max: [4, 3, 2] },
      box: [3, 2, 1],
      height: 1,
      layer: 0.3,
      layers: 4,
      undersides: { support: 45, area: 0, share: 0, resting: 6, count: 0, largest: [] },
    });
  });

  it.each([
    [1, 0.05, 20],
    [1.001, 0.05, 21],
    [7.4, 0.05, 148],
    [7.4, 0.025, 296],
    [0.04, 0.05, 1],
  ])("%d mm in layers of %d mm are %d, in float32 too", (height, layer, layers) => {
    const mesh = box([1, 1, height]);
    for (const one of [mesh, roundToFloat32(mesh)])
      expect(printFigures(one, printSettings({ layer })).layers).toBe(layers);
  });

  it.skipIf(!hasSlicer)("agrees with a slicer on the box and the layers of a tilted ring", async () => {
    const settings = printSettings({ stance: "tilted", tilt: 35 });
    const mesh = layDown(torus(9, 1.53, 180, 60), settings);
    const { box: lengths, layers } = printFigures(mesh, settings);
    const bytes = await encodeMesh(stlBinary, mesh, { name: "ring" });
    slicerInfo(bytes, ".stl").size.forEach((length, k) => {
      expect(lengths[k]).toBeCloseTo(length, 4);
    });
    // It slices at the middles of layers: the last one is left out where the ring ends in its lower half.
    const sliced = slicedLayers(bytes, ".stl");
    expect([layers - 1, layers]).toContain(sliced);
  });
});
