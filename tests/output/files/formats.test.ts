// Covers: src/output/files/bytes.ts, src/output/files/catalogue.ts, src/output/files/format.ts
// Covers: src/output/files/names.ts, src/output/files/formats/*
/**
 * Every format of the catalogue is read again by code that is not ours, and the geometry compared.
 */

import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { measureMesh } from "../../../src/measure/measure.js";
import { roundToFloat32 } from "../../../src/mesh/float32.js";
import { reverseMesh } from "../../../src/mesh/transform.js";
import { formatForFile, formats } from "../../../src/output/files/catalogue.js";
import { encodeMesh, type Format } from "../../../src/output/files/format.js";
import { obj } from "../../../src/output/files/formats/obj.js";
import { stlAscii } from "../../../src/output/files/formats/stl-ascii.js";
import { stlBinary } from "../../../src/output/files/formats/stl-binary.js";
import { threemf } from "../../../src/output/files/formats/threemf.js";
import { readMesh } from "../../../src/output/files/read-mesh.js";
import { admesh, hasAdmesh } from "../../support/admesh.js";
import { box, meshOf, sphere, surfaceKey, torus } from "../../support/meshes.js";
import { readByThree } from "../../support/three.js";

const NAMES = [
  "Saltmarsh lattice",
  "",
  "solid",
  "two\nlines\r\nand a facet\n",
  "bell \u0007 null \0 escape \u001b[31m line\u2028separator",
  "ends in a backslash \\",
  "endsolid endfacet endloop facet normal 1 0 0 vertex 1 2 3",
  "COLOR=abcd MATERIAL=",
  "Brève œuvre 環 💍 \ud800",
  "long ".repeat(100),
];

const ring = torus(9, 1.1, 60, 18);
const decode = (bytes: Uint8Array) => new TextDecoder("utf-8", { fatal: true }).decode(bytes);

describe.each(formats.map((format) => [format.name, format] as const))("%s", (_, format) => {
  it("keeps to the contract of a format", () => {
    expect(format.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(format.extensions.length).toBeGreaterThan(0);
    for (const extension of format.extensions) expect(extension).toMatch(/^\.[a-z0-9]+$/);
    expect(format.unit).not.toBe("");
    expect(formatForFile(`ring${format.extensions[0]}`, format.name)).toBe(format);
  });

  it.each(NAMES)("is read back by three to the same float32 surface, named %j", async (name) => {
    const bytes = await encodeMesh(format, ring, { name });
    expect(surfaceKey(await readByThree(format, bytes))).toEqual(surfaceKey(roundToFloat32(ring)));
  });

  it("is read back by readMesh as a closed mesh of the same volume", async () => {
    const again = await readMesh(await encodeMesh(format, ring, { name: "ring" }), `ring${format.extensions[0]}`);
    expect(checkSolid(again).closed).toBe(true);
    expect(measureMesh(again).volume / measureMesh(ring).volume).toBeCloseTo(1, 6);
  });

  it("gives the same bytes twice and leaves its input alone", async () => {
    const mesh = box();
    const bytes = await encodeMesh(format, mesh, { name: "box" });
    expect(await encodeMesh(format, mesh, { name: "box" })).toEqual(bytes);
    expect(mesh).toEqual(box());
  });

  it("writes −0 as 0", async () => {
    const signed = { ...box(), positions: box().positions.map((value) => (value === 0 ? -0 : value)) };
    expect(await encodeMesh(format, signed, { name: "box" })).toEqual(await encodeMesh(format, box(), { name: "box" }));
  });

  it("writes an empty mesh where the format can hold one, and refuses what cannot be written", async () => {
    const empty = encodeMesh(format, meshOf([], []), { name: "nothing" });
    if (/stl|obj/.test(format.name)) expect((await empty).length).toBeGreaterThan(0);
    else await expect(empty).rejects.toMatchObject({ code: "mesh-malformed" });
    const broken = [meshOf([[0, 0, Number.NaN]], [[0, 0, 0]]), meshOf([[0, 0, 0]], [[0, 0, 1]])];
    for (const mesh of broken) await expect(encodeMesh(format, mesh, { name: "x" })).rejects.toThrow(AnnuletError);
  });
});

describe("binary STL", () => {
  it("has 80 bytes of header that do not begin with solid, a count, and 50 bytes a facet", async () => {
    for (const name of NAMES) {
      const bytes = await encodeMesh(stlBinary, ring, { name });
      const header = String.fromCharCode(...bytes.subarray(0, 80));
      expect(header).toMatch(/^annulet, unit: mm, [ -~]*$/);
      expect(new DataView(bytes.buffer).getUint32(80, true)).toBe(60 * 18 * 2);
      expect(bytes.length).toBe(84 + 50 * 60 * 18 * 2);
    }
  });

  it("has outward unit normals of the rounded corners", async () => {
    const view = new DataView((await encodeMesh(stlBinary, sphere(5, 12, 24), { name: "" })).buffer);
    for (let at = 84; at < view.byteLength; at += 50) {
      const [n, a] = [at, at + 12].map((from) => [0, 4, 8].map((step) => view.getFloat32(from + step, true)));
      expect(Math.hypot(...n)).toBeCloseTo(1, 6);
      expect(n[0] * a[0] + n[1] * a[1] + n[2] * a[2]).toBeGreaterThan(4);
    }
  });

  it("refuses a coordinate beyond float32", async () => {
    const huge = box([1e39, 1, 1]);
    await expect(encodeMesh(stlBinary, huge, { name: "" })).rejects.toThrow(AnnuletError);
    await expect(encodeMesh(stlAscii, huge, { name: "" })).rejects.toThrow(AnnuletError);
  });
});

describe("OBJ", () => {
  it("keeps every double", async () => {
    const lines = decode(await encodeMesh(obj, ring, { name: "ring" })).split("\n");
    const values = lines
      .filter((line) => line.startsWith("v "))
      .flatMap((line) => line.slice(2).split(" ").map(Number));
    expect(Float64Array.from(values)).toEqual(ring.positions.map((value) => value + 0));
    const faces = lines.filter((line) => line.startsWith("f ")).flatMap((line) => line.slice(2).split(" ").map(Number));
    expect(Uint32Array.from(faces, (index) => index - 1)).toEqual(ring.triangles);
  });
});

describe.skipIf(!hasAdmesh)("admesh on STL", () => {
  it.each([
    ["Binary", stlBinary],
    ["ASCII", stlAscii],
  ] as const)("finds the %s file whole, its normals right and the volume ours", async (fileType, format) => {
    for (const name of NAMES) {
      const report = admesh(await encodeMesh(format, ring, { name }));
      expect(report).toMatchObject({
        fileType,
        facets: 60 * 18 * 2,
        parts: 1,
        degenerate: 0,
        disconnectedEdges: [0, 0, 0],
        backwards: 0,
        edgesFixed: 0,
        facetsReversed: 0,
        normalsFixed: 0,
      });
      expect(report.volume).toBeCloseTo(measureMesh(ring).volume, 3);
    }
  });

  it("shows a broken mesh broken: an open box, a doubled needle, a cube inside out", async () => {
    const cube = box();
    const open = { ...cube, triangles: cube.triangles.slice(6) };
    expect(admesh(await encodeMesh(stlBinary, open, { name: "" })).disconnectedEdges).not.toEqual([0, 0, 0]);
    const needle = { ...cube, triangles: Uint32Array.from([...cube.triangles, 0, 1, 1]) };
    expect(admesh(await encodeMesh(stlBinary, needle, { name: "" })).degenerate).toBe(1);
    const inverted = admesh(await encodeMesh(stlBinary, reverseMesh(cube), { name: "" }));
    expect(inverted.facetsReversed).toBe(12);
  });
});

describe("formatForFile", () => {
  it("goes by the ending, in any case, and by choice within it", () => {
    expect(formatForFile("out/Ring.STL")).toBe(stlBinary);
    expect(formatForFile("ring.stl", "stl-ascii")).toBe(stlAscii);
    expect(formatForFile("ring.obj")).toBe(obj);
  });

  it("says what is allowed", () => {
    const problem = (fileName: string, choice?: string) => {
      try {
        formatForFile(fileName, choice);
      } catch (error) {
        const { code, allowed } = error as AnnuletError;
        return { code, allowed };
      }
      return undefined;
    };
    expect(problem("ring.step")).toEqual({ code: "format-unknown", allowed: ".stl, .obj, .3mf, .glb" });
    expect(problem("ring")).toEqual({ code: "format-unknown", allowed: ".stl, .obj, .3mf, .glb" });
    expect(problem("ring.obj", "stl-ascii")).toEqual({ code: "format-unknown", allowed: "obj" });
  });

  it("takes a format of the user's own", () => {
    const own: Format = { name: "own", extensions: [".own"], unit: "none", write: () => [new Uint8Array(1)] };
    expect(formatForFile("x.own", undefined, [...formats, own])).toBe(own);
  });
});

describe("3MF", () => {
  it("refuses triangles that repeat a vertex, and says which", async () => {
    const cube = box();
    const needle = { ...cube, triangles: Uint32Array.from([...cube.triangles, 0, 1, 1]) };
    await expect(encodeMesh(threemf, needle, { name: "" })).rejects.toMatchObject({
      code: "mesh-malformed",
      message: expect.stringContaining("triangle 12"),
    });
  });

  it("is packed within a few hundred kilobytes, whatever its size", async () => {
    let largest = 0;
    for await (const chunk of threemf.write(torus(9, 1, 1000, 200), { name: "" })) {
      largest = Math.max(largest, chunk.length);
    }
    expect(largest).toBeLessThan(400_000);
  });
});
