// Across: files, by programs that are not ours
/**
 * A whole ring in every format against programs that are not ours: a validator of glTF, and a slicer.
 */
import { type BuildResult, build, encodeMesh, formatForFile, formats } from "annulet";
import { strFromU8, unzipSync } from "fflate";
import { validateBytes } from "gltf-validator";
import { beforeAll, describe, expect, it } from "vitest";
import { findAlloy } from "../../src/measure/alloys/catalogue.js";
import { lookOf } from "../../src/measure/alloys/look.js";
import { curedVolume, hasSlicer, slicerInfo } from "../support/slicer.js";

const design = {
  annulet: 1,
  name: "Dewline & <marsh>",
  size: { system: "iso", value: 55 },
  profile: { width: 5, thickness: 1.8, bore: { form: "comfort", rise: 0.2 }, outside: { form: "domed", rise: 0.5 } },
  beads: [{ along: { v: 0 }, diameter: 0.6 }],
  material: "au750-red",
};

let ring: BuildResult;
const files = new Map<string, Uint8Array>();

beforeAll(async () => {
  ring = await build(design);
  const material = lookOf(findAlloy(design.material));
  for (const format of formats) {
    files.set(format.name, await encodeMesh(format, ring.mesh, { name: ring.report.name, material }));
  }
}, 60_000);

const fileOf = (name: string): Uint8Array => files.get(name) ?? new Uint8Array(0);

it("GLB is valid glTF 2.0, in metres, with a metal", async () => {
  const { issues, info, mimeType } = await validateBytes(fileOf("glb"), { maxIssues: 20 });
  expect(issues.messages).toEqual([]);
  expect(mimeType).toBe("model/gltf-binary");
  expect(info).toMatchObject({
    version: "2.0",
    generator: "annulet",
    drawCallCount: 1,
    materialCount: 1,
    totalTriangleCount: ring.report.triangles,
    hasTextures: false,
  });
  const json = JSON.parse(
    strFromU8(fileOf("glb").subarray(20, 20 + new DataView(fileOf("glb").buffer).getUint32(12, true))),
  );
  expect(json.nodes).toMatchObject([{ name: design.name, scale: [0.001, 0.001, 0.001] }]);
  expect(json.materials).toMatchObject([
    {
      name: "18 K red gold",
      pbrMetallicRoughness: { baseColorFactor: [...lookOf(findAlloy(design.material)).colour, 1] },
    },
  ]);
  expect(Object.keys(json.meshes[0].primitives[0].attributes).sort()).toEqual(["NORMAL", "POSITION"]);
});

it("3MF is a package of one object in millimetres with its name and its material", () => {
  const parts = unzipSync(fileOf("3mf"));
  expect(Object.keys(parts)).toEqual(["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"]);
  const model = strFromU8(parts["3D/3dmodel.model"]);
  expect(model).toContain('unit="millimeter"');
  expect(model).toContain('<metadata name="Title">Dewline &amp; &lt;marsh&gt;</metadata>');
  expect(model).toMatch(/<base name="18 K red gold" displaycolor="#[0-9A-F]{6}"\/>/);
  expect(model.match(/<object /g)).toHaveLength(1);
  expect(model.match(/<item objectid="1"\/>/g)).toHaveLength(1);
});

it("3MF carries a picture, and nothing that is no PNG", async () => {
  const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3);
  const format = formatForFile("ring.3mf");
  const parts = unzipSync(await encodeMesh(format, ring.mesh, { name: "", thumbnail: png }));
  expect(parts["Metadata/thumbnail.png"]).toEqual(png);
  expect(strFromU8(parts["[Content_Types].xml"])).toContain('Extension="png" ContentType="image/png"');
  expect(strFromU8(parts["_rels/.rels"])).toContain('Target="/Metadata/thumbnail.png"');
  const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 0, 0, 0);
  await expect(encodeMesh(format, ring.mesh, { name: "", thumbnail: jpeg })).rejects.toMatchObject({
    code: "option-invalid",
    path: "thumbnail",
  });
});

describe.skipIf(!hasSlicer)("a slicer", () => {
  it.each([
    ["stl-binary", ".stl"],
    ["stl-ascii", ".stl"],
    ["obj", ".obj"],
    ["3mf", ".3mf"],
  ])(
    "reads %s as one manifold of the report's triangles, size and volume",
    (name, ending) => {
      const info = slicerInfo(fileOf(name), ending);
      const { triangles, bounds, volume } = ring.report;
      expect(info).toMatchObject({ manifold: true, parts: 1, triangles });
      // It sums in single precision.
      expect(Math.abs(info.volume / volume - 1)).toBeLessThan(1e-4);
      for (const axis of [0, 1, 2]) expect(info.size[axis]).toBeCloseTo(bounds.max[axis] - bounds.min[axis], 4);
    },
    60_000,
  );

  it.each([
    ["stl-binary", ".stl"],
    ["3mf", ".3mf"],
  ])(
    "cures as much resin from %s as the report's volume, within 0.5 %%",
    (name, ending) => {
      expect(Math.abs(curedVolume(fileOf(name), ending) / ring.report.volume - 1)).toBeLessThan(0.005);
    },
    120_000,
  );
});
