// Covers: src/output/files/reading/gltf-lists.ts
import { Document, WebIO } from "@gltf-transform/core";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../../src/base/errors.js";
import { checkSolid } from "../../../../src/judge/gate.js";
import { meshBounds } from "../../../../src/mesh/bounds.js";
import { signedVolume } from "../../../../src/mesh/volume.js";
import { encodeMesh } from "../../../../src/output/files/format.js";
import { glb } from "../../../../src/output/files/formats/glb.js";
import { readMesh } from "../../../../src/output/files/read-mesh.js";
import { box, surfaceKey } from "../../../support/meshes.js";
import { readByThree } from "../../../support/three.js";

const cube = await encodeMesh(glb, box(), { name: "cube" });

/** The part of a file's JSON that tests change. */
interface Json {
  nodes: {
    mesh?: number;
    children?: number[];
    scale?: number[];
    rotation?: number[];
    translation?: number[];
  }[];
  scenes: { nodes?: number[] }[];
  scene?: number;
  readonly buffers: { byteLength: number; uri?: string }[];
  readonly accessors: { count: number; bufferView?: number; sparse?: object }[];
  readonly bufferViews: { buffer: number; byteLength: number; byteStride?: number }[];
  readonly meshes: { readonly primitives: { mode?: number; indices?: number }[] }[];
  extensionsRequired?: string[];
}

/** The JSON of a GLB file, changed. The binary part stays. */
function edit(bytes: Uint8Array, change: (json: Json) => void): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const length = view.getUint32(12, true);
  const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + length)));
  change(json);
  const text = new TextEncoder().encode(JSON.stringify(json));
  const padded = new Uint8Array(4 * Math.ceil(text.length / 4)).fill(32);
  padded.set(text);
  const rest = bytes.subarray(20 + length);
  const all = new Uint8Array(20 + padded.length + rest.length);
  all.set(bytes.subarray(0, 20));
  all.set(padded, 20);
  all.set(rest, 20 + padded.length);
  const header = new DataView(all.buffer);
  header.setUint32(8, all.length, true);
  header.setUint32(12, padded.length, true);
  return all;
}

async function problem(bytes: Uint8Array): Promise<string> {
  try {
    await readMesh(bytes, "a.glb");
  } catch (error) {
    if (error instanceof AnnuletError) return `${error.code}: ${error.message}`;
    throw error;
  }
  return "read";
}

describe("reading GLB", () => {
  it("takes metres for metres and applies nodes within nodes, mirrors too", async () => {
    const bytes = edit(cube, (json) => {
      json.nodes = [
        { mesh: 0, scale: [-0.001, 0.001, 0.001], translation: [0, 0.5, 0] },
        { children: [0], rotation: [0, 0, Math.SQRT1_2, Math.SQRT1_2], scale: [2, 2, 2] },
      ];
      json.scenes = [{ nodes: [1] }];
    });
    const mesh = await readMesh(bytes, "a.glb");
    const { min, max } = meshBounds(mesh);
    for (const [k, value] of [-1002 + 2, -2, 0].entries()) expect(min[k]).toBeCloseTo(k === 0 ? -1002 : value, 9);
    for (const [k, value] of [-1000, 0, 2].entries()) expect(max[k]).toBeCloseTo(value, 9);
    expect(signedVolume(mesh)).toBeCloseTo(8, 9);
  });

  it.each([
    ["strip", 5],
    ["fan", 6],
    ["list", 4],
  ] as const)("reads a triangle %s as three does", async (_, mode) => {
    const document = new Document();
    const buffer = document.createBuffer();
    const points = new Float32Array([0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 1, 0.5, 0, 2, 0, 1, 2, 0.25]);
    const position = document.createAccessor().setType("VEC3").setArray(points).setBuffer(buffer);
    const primitive = document.createPrimitive().setAttribute("POSITION", position).setMode(mode);
    const node = document.createNode().setMesh(document.createMesh().addPrimitive(primitive));
    document.getRoot().setDefaultScene(document.createScene().addChild(node));
    const bytes = await new WebIO().writeBinary(document);
    expect(surfaceKey(await readMesh(bytes, "a.glb"))).toEqual(surfaceKey(await readByThree(glb, bytes)));
  });

  it("reads a view that begins at an odd byte", async () => {
    const larger = new Uint8Array(cube.length + 9);
    larger.set(cube, 3);
    expect(checkSolid(await readMesh(larger.subarray(3, 3 + cube.length), "a.glb")).closed).toBe(true);
  });

  it.each<[string, Uint8Array, RegExp]>([
    ["another file", new TextEncoder().encode("solid ".repeat(10)), /no GLB file/],
    ["a few bytes", cube.slice(0, 10), /no GLB file/],
    ["a truncated file", cube.slice(0, -50), /announces \d+ bytes but has/],
    ["glTF 1", cube.map((byte, i) => (i === 4 ? 1 : byte)), /glTF 1/],
    ["chunks of another length", cube.map((byte, i) => (i === 13 ? byte + 1 : byte)), /chunks/],
    ["JSON that is none", cube.map((byte, i) => (i === 20 ? 65 : byte)), /cannot be read/],
    [
      "a buffer elsewhere",
      edit(cube, (json) => {
        json.buffers[0].uri = "other.bin";
      }),
      /cannot be read: .*external/,
    ],
    [
      "compressed geometry",
      edit(cube, (json) => {
        json.extensionsRequired = ["KHR_draco_mesh_compression"];
      }),
      /needs KHR_draco/,
    ],
    [
      "an accessor past its end",
      edit(cube, (json) => {
        json.accessors[0].count = 1e9;
      }),
      /accessor 0 asks for more/,
    ],
    [
      "an accessor of nothing",
      edit(cube, (json) => {
        delete json.accessors[0].bufferView;
      }),
      /accessor 0 asks/,
    ],
    [
      "a node with two parents",
      edit(cube, (json) => {
        json.nodes.push({ children: [0] }, { children: [0] });
      }),
      /two parents/,
    ],
    [
      "nodes in a ring",
      edit(cube, (json) => {
        json.nodes = [{ children: [1] }, { children: [0], mesh: 0 }];
      }),
      /has a parent/,
    ],
    [
      "a node that is not there",
      edit(cube, (json) => {
        json.scenes[0].nodes = [7];
      }),
      /node 7, which is not there/,
    ],
    [
      "a sparse accessor of a thousand million changes",
      edit(cube, (json) => {
        json.accessors[0].sparse = {
          count: 1e9,
          indices: { bufferView: 0, componentType: 5121 },
          values: { bufferView: 0 },
        };
      }),
      /accessor 0 changes more entries than it has/,
    ],
    [
      "changes that are not in the file",
      edit(cube, (json) => {
        json.bufferViews.push({ buffer: 0, byteLength: 4 });
        const view = json.bufferViews.length - 1;
        json.accessors[0].sparse = {
          count: 8,
          indices: { bufferView: view, componentType: 5121 },
          values: { bufferView: view },
        };
      }),
      /accessor 0 asks for more/,
    ],
    [
      "entries that lie over one another",
      edit(cube, (json) => {
        json.bufferViews[json.accessors[0].bufferView as number].byteStride = 0;
        json.accessors[0].count = 1e9;
      }),
      /accessor 0 has entries that lie over one another/,
    ],
    [
      "a part of the file that is longer than the file",
      edit(cube, (json) => {
        for (const part of [...json.buffers, ...json.bufferViews]) part.byteLength = 1e12;
        json.accessors[0].count = 1e9;
      }),
      /accessor 0 asks for more/,
    ],
    [
      "indices that are not there",
      edit(cube, (json) => {
        json.meshes[0].primitives[0].indices = 9;
      }),
      /accessor 9, which is not there/,
    ],
    [
      "the same numbers over and over",
      edit(cube, (json) => {
        const bytes = 12_000;
        json.buffers.push({ byteLength: bytes, uri: `data:;base64,${btoa("\0".repeat(bytes))}` });
        json.bufferViews.push({ buffer: 1, byteLength: bytes });
        const accessor = { bufferView: json.bufferViews.length - 1, componentType: 5126, count: 1000, type: "VEC3" };
        json.accessors.push(...Array.from({ length: 50_000 }, () => accessor));
      }),
      /more than 120000000 numbers/,
    ],
    [
      "no scene",
      edit(cube, (json) => {
        json.scenes = [];
        delete json.scene;
      }),
      /no scene/,
    ],
    [
      "points",
      edit(cube, (json) => {
        json.meshes[0].primitives[0].mode = 0;
      }),
      /no triangles/,
    ],
    [
      "a node that flattens",
      edit(cube, (json) => {
        json.nodes[0].scale = [1, 0, 1];
      }),
      /flattens/,
    ],
    [
      "copies without end",
      edit(cube, (json) => {
        json.nodes = Array.from({ length: 100_001 }, () => ({ mesh: 0 }));
        json.scenes[0].nodes = json.nodes.map((_, i) => i);
      }),
      /more than 100000 nodes/,
    ],
  ])(
    "refuses %s",
    async (_, bytes, message) => {
      const said = await problem(bytes);
      expect(said).toMatch(/^mesh-file-broken/);
      expect(said).toMatch(message);
    },
    30_000,
  );

  it("reads or refuses JSON with any of its values made another kind of thing", async () => {
    const kinds = [3, -1, 1.5, 1e9, "x", null, true, [], {}, [null], [{}], { length: 4 }, [[0]]] as const;
    const places: (readonly (string | number)[])[] = [];
    edit(cube, (json) => collect(json, [], places));
    let refused = 0;
    for (const place of places) {
      for (const kind of kinds) {
        const said = await problem(edit(cube, (json) => put(json, place, kind)));
        expect(said, `${place.join(".")} = ${JSON.stringify(kind)}`).toMatch(/^(read$|mesh-file-broken)/);
        if (said !== "read") refused++;
      }
    }
    expect(refused).toBeGreaterThan((places.length * kinds.length) / 4);
  });
});

/** The paths to all values within a value. */
function collect(value: unknown, path: readonly (string | number)[], into: (readonly (string | number)[])[]): void {
  if (typeof value !== "object" || value === null) return;
  for (const [name, inner] of Object.entries(value)) {
    into.push([...path, name]);
    collect(inner, [...path, name], into);
  }
}

function put(value: unknown, path: readonly (string | number)[], kind: unknown): void {
  let at = value as Record<string | number, unknown>;
  for (const name of path.slice(0, -1)) at = at[name] as typeof at;
  at[path[path.length - 1]] = kind;
}
