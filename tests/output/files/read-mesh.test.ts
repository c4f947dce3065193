// Covers: src/output/files/reading/lists.ts, src/output/files/reading/obj.ts, src/output/files/reading/reader.ts
// Covers: src/output/files/reading/scanner.ts, src/output/files/reading/stl.ts
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { triangleCount, vertexCount } from "../../../src/mesh/mesh.js";
import { encodeMesh } from "../../../src/output/files/format.js";
import { stlAscii } from "../../../src/output/files/formats/stl-ascii.js";
import { stlBinary } from "../../../src/output/files/formats/stl-binary.js";
import { readMesh } from "../../../src/output/files/read-mesh.js";
import { box } from "../../support/meshes.js";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array) => new TextDecoder().decode(bytes);
const binary = await encodeMesh(stlBinary, box(), { name: "box" });
const text = textOf(await encodeMesh(stlAscii, box(), { name: "box" }));

async function problem(bytes: Uint8Array, fileName: string): Promise<string> {
  try {
    await readMesh(bytes, fileName);
  } catch (error) {
    if (error instanceof AnnuletError) return `${error.code}: ${error.message}`;
    throw error;
  }
  return "read";
}

describe("readMesh", () => {
  it("reads OBJ with quads, negative indices, normals and comments", async () => {
    const source = [
      "# a box",
      ...["0 0 0", "0 0 1", "0 1 0", "0 1 1", "1 0 0", "1 0 1", "1 1 0", "1 1 1"].map((point) => `v ${point}`),
      "vn 0 0 1",
      "o first",
      "f 1//1 2//1 4//1 3//1",
      "f 5 7 8 6",
      "f 1 5 6 2",
      "o second",
      "f 3 4 8 7",
      "f -8 -6 -2 -4",
      "f 2 6 8 4",
    ].join("\r\n");
    const mesh = await readMesh(bytesOf(source), "BOX.OBJ");
    expect([vertexCount(mesh), triangleCount(mesh)]).toEqual([8, 12]);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, volume: 1 });
  });

  it("takes a binary file for binary even when its header begins with solid", async () => {
    const solid = binary.slice();
    solid.set(bytesOf("solid box"), 0);
    expect(triangleCount(await readMesh(solid, "box.stl"))).toBe(12);
  });

  it("reads a view into a larger buffer", async () => {
    const larger = new Uint8Array(binary.length + 20);
    larger.set(binary, 7);
    expect(triangleCount(await readMesh(larger.subarray(7, 7 + binary.length), "box.stl"))).toBe(12);
  });

  it("reads text STL with other spacing, exponents and several solids", async () => {
    const other = text.replace(/ /g, "\t").replace(/1\n/g, "+1.0E0\r\n");
    expect(checkSolid(await readMesh(bytesOf(other), "box.stl")).closed).toBe(true);
    const half = text.indexOf("facet normal", text.length / 2);
    const two = `${text.slice(0, half)}endsolid a\nsolid b\n${text.slice(half)}`;
    expect(triangleCount(await readMesh(bytesOf(two), "box.stl"))).toBe(12);
  });

  it("keeps triangles that repeat a vertex, for the gate to see", async () => {
    const cube = box();
    const needle = { ...cube, triangles: Uint32Array.from([...cube.triangles, 0, 1, 1]) };
    const mesh = await readMesh(await encodeMesh(stlBinary, needle, { name: "" }), "needle.stl");
    expect(checkSolid(mesh).faults.map(({ code }) => code)).toEqual(["repeated-vertex"]);
  });

  const nan = binary.slice();
  new DataView(nan.buffer).setFloat32(84 + 12, Number.NaN, true);
  const none = binary.slice(0, 84);
  new DataView(none.buffer).setUint32(80, 0, true);

  it.each<[string, Uint8Array, string, RegExp]>([
    ["an empty file", new Uint8Array(0), "a.stl", /empty/],
    ["a few bytes", binary.slice(0, 40), "a.stl", /too few/],
    ["a truncated binary file", binary.slice(0, -60), "a.stl", /announces 12 triangles but has room for 10\.8/],
    ["a binary file with a tail", new Uint8Array([...binary, 0]), "a.stl", /announces 12 triangles/],
    ["a binary file without triangles", none, "a.stl", /no triangles/],
    ["a coordinate that is not a number", nan, "a.stl", /triangle 1 has a corner that is no point/],
    [
      "a text file cut off between facets",
      bytesOf(text.slice(0, text.indexOf("endsolid"))),
      "a.stl",
      /breaks off after facet 12/,
    ],
    ["a text file cut off inside a facet", bytesOf(text.slice(0, 500)), "a.stl", /breaks off after facet/],
    [
      "a text facet with four corners",
      bytesOf(text.replace("endloop", "vertex 1 2 3\nendloop")),
      "a.stl",
      /facet 1 has 4 corners/,
    ],
    [
      "a text corner that is no number",
      bytesOf(text.replace(/vertex \S+/, "vertex nan")),
      "a.stl",
      /facet 1 has a corner that is no point/,
    ],
    ["prose that begins with solid", bytesOf(`solid ${"advice ".repeat(30)}`), "a.stl", /no facets/],
    ["an STL called OBJ", binary, "a.obj", /no OBJ file/],
    ["a text STL called OBJ", bytesOf(text), "a.obj", /no OBJ file/],
    ["an OBJ called STL", bytesOf(`v 0 0 0\n${"# long enough\n".repeat(10)}f 1 1 1\n`), "a.stl", /announces/],
    ["an OBJ face that names no vertex", bytesOf("v 0 0 0\nv 1 0 0\nf 1 2 3\n"), "a.obj", /not there/],
    ["an OBJ vertex that is no number", bytesOf("v 0 0 x\nv 1 0 0\nv 0 1 0\nf 1 2 3\n"), "a.obj", /no point/],
    ["OBJ points alone", bytesOf("v 0 0 0\n"), "a.obj", /no OBJ file/],
  ])("refuses %s", async (_, bytes, fileName, message) => {
    const said = await problem(bytes, fileName);
    expect(said).toMatch(/^mesh-file-broken/);
    expect(said).toMatch(message);
  });

  it("says which endings it reads", async () => {
    expect(await problem(binary, "ring.ply")).toMatch(/^format-unknown[\s\S]*\.stl, \.obj, \.3mf, \.glb/);
  });
});
