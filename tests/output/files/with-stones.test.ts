// Covers: src/output/files/file-stone.ts, src/output/files/formats/threemf-stones.ts
// Covers: src/output/files/formats/glb-stones.ts, src/ring/piece-stones.ts
import { strFromU8, unzipSync } from "fflate";
import { validateBytes } from "gltf-validator";
import type { Object3D, Mesh as ThreeMesh } from "three";
import { Box3, Vector3 } from "three";
import { ThreeMFLoader } from "three/examples/jsm/loaders/3MFLoader.js";
import { GLTFLoader } from "three/examples/jsm/loaders/GLTFLoader.js";
import { beforeAll, describe, expect, it } from "vitest";
import { checkSolid } from "../../../src/judge/gate.js";
import { concatMeshes, type Mesh } from "../../../src/mesh/mesh.js";
import { formatForFile } from "../../../src/output/files/catalogue.js";
import { encodeMesh } from "../../../src/output/files/format.js";
import { readMetal } from "../../../src/output/files/read-mesh.js";
import { withStones } from "../../../src/output/files/with-stones.js";
import { layDown } from "../../../src/output/print/lay-down.js";
import { shownStones } from "../../../src/output/stones/shown-stone.js";
import { type Made, openInside } from "../../../src/ring/open-ring.js";
import { intoSpace } from "../../../src/stones/frame.js";
import { withDomParser } from "../../support/dom-parser.js";
import { flatBand } from "../../support/place-stones.js";

const TILTED = { stance: "tilted", tilt: 35 } as const;

const design = {
  ...flatBand,
  // A master is larger along the finger than round it, so stones that went with it would be bent.
  casting: { shrinkage: { axial: 3, radial: 1 } },
  stones: [
    {
      ...{ name: "field <1>", size: 0.8, gem: "ruby", setting: { form: "flush" } },
      place: { form: "row", along: "middle", over: { from: 20, to: 60 }, count: 3 },
    },
    {
      ...{ name: "top", cut: "emerald", size: 1.5, gem: "emerald", setting: { form: "flush" } },
      place: { form: "single", angle: 90, turn: 30 },
    },
  ],
};

const NAMES = ["field <1> 1", "field <1> 2", "field <1> 3", "top 4"];

let made: Made;
/** Boxes of the stones by another way: their points put into the master's mesh, which is laid down with them. */
const expected = new Map<string, Box3>();

beforeAll(async () => {
  const ring = openInside(design);
  made = await ring.make({ detail: "draft", print: TILTED });
  const { answers } = await ring.ask(["stones", "piece"], { detail: "draft", piece: "master" });
  for (const { body, frame, group, number } of shownStones(answers.stones)) {
    const [x, y, z] = frame.at;
    const at = { ...frame, at: [x / 0.99, y / 0.99, z / 0.97] as const };
    const { positions, triangles } = body.mesh;
    const points = Array.from({ length: positions.length / 3 }, (_, i) =>
      intoSpace(at, [positions[3 * i], positions[3 * i + 1], positions[3 * i + 2]]),
    );
    const stone: Mesh = { positions: Float64Array.from(points.flat()), triangles };
    const laid = layDown(concatMeshes([answers.piece, stone]), TILTED).positions;
    const own = laid.subarray(answers.piece.positions.length);
    expected.set(`${group} ${number}`, new Box3().setFromArray(own));
  }
}, 60_000);

const encode = (file: string, stones = made.stones) =>
  encodeMesh(formatForFile(file), made.mesh, { name: "Ring", stones });

/** Boxes of what is named so, mm. */
function boxesOf(root: Object3D, scale: number): Map<string, Box3> {
  root.updateMatrixWorld(true);
  const boxes = new Map<string, Box3>();
  for (const name of NAMES) {
    const objects: Object3D[] = [];
    root.traverse((child) => {
      // The loader of glTF keeps names free of what its paths are made of.
      if (child.name === name || child.userData.name === name) objects.push(child);
    });
    expect(objects, name).toHaveLength(1);
    const box = new Box3().setFromObject(objects[0], true);
    boxes.set(name, new Box3(box.min.multiplyScalar(scale), box.max.multiplyScalar(scale)));
  }
  return boxes;
}

function expectAtPlaces(boxes: ReadonlyMap<string, Box3>): void {
  expect([...boxes.keys()]).toEqual(NAMES);
  for (const [name, box] of boxes) {
    const wanted = expected.get(name) ?? new Box3();
    const off = Math.max(box.min.distanceTo(wanted.min), box.max.distanceTo(wanted.max));
    expect(off, name).toBeLessThan(1e-5);
    expect(box.getSize(new Vector3()).length(), name).toBeGreaterThan(0.8);
  }
}

describe("stones in 3MF", () => {
  it("are objects of their own where they stand, named, of their gem, and one mesh for equal ones", async () => {
    const bytes = await encode("ring.3mf");
    expectAtPlaces(
      boxesOf(
        withDomParser(() => new ThreeMFLoader().parse(bytes.slice().buffer)),
        1,
      ),
    );
    const model = strFromU8(unzipSync(bytes)["3D/3dmodel.model"]);
    expect(model.match(/<mesh>/g)).toHaveLength(3);
    expect(model.match(/<item /g)).toHaveLength(5);
    expect(model).toMatch(/<base name="Ruby" displaycolor="#[0-9A-F]{6}"\/>\n <base name="Emerald"/);
    expect(model).toContain('name="field &lt;1&gt; 2"');
  });
});

describe("stones in GLB", () => {
  it("are valid, let light through, and share a mesh where they are equal", async () => {
    const bytes = await encode("ring.glb");
    const { issues, info } = await validateBytes(bytes, { maxIssues: 20 });
    expect(issues.messages).toEqual([]);
    expect(info.materialCount).toBe(3);
    const json = JSON.parse(strFromU8(bytes.subarray(20, 20 + new DataView(bytes.buffer).getUint32(12, true))));
    expect(json.extensionsUsed.sort()).toEqual(["KHR_materials_ior", "KHR_materials_transmission"]);
    expect(json.materials[1]).toMatchObject({
      name: "Ruby",
      extensions: { KHR_materials_ior: { ior: 1.77 }, KHR_materials_transmission: { transmissionFactor: 1 } },
    });
    const of = (name: string) => json.nodes.find((node: { readonly name: string }) => node.name === name).mesh;
    expect(NAMES.map(of)).toEqual([of(NAMES[0]), of(NAMES[0]), of(NAMES[0]), of(NAMES[3])]);
  });

  it("stand where they are set, as three reads them", async () => {
    const { scene } = await new GLTFLoader().parseAsync((await encode("ring.glb")).slice().buffer, "");
    expectAtPlaces(boxesOf(scene, 1000));
    const stone = scene.getObjectsByProperty("isMesh", true)[1] as ThreeMesh;
    expect(stone.material).toMatchObject({ transmission: 1, ior: 1.77 });
  });
});

describe("readers", () => {
  it("read the metal alone, the same as without stones, and count the stones", async () => {
    for (const file of ["ring.3mf", "ring.glb"]) {
      const [set, plain] = [await encode(file), await encode(file, [])];
      expect(set.length).toBeGreaterThan(plain.length);
      expect(await readMetal(set, file)).toEqual({ ...(await readMetal(plain, file)), stones: 4 });
    }
  });
});

describe("withStones", () => {
  it("puts each stone beside the metal as a closed body, and leaves the metal as it was", async () => {
    expect(withStones(made.mesh, [])).toBe(made.mesh);
    const all = withStones(made.mesh, made.stones);
    expect(all.positions.subarray(0, made.mesh.positions.length)).toEqual(made.mesh.positions);
    expect(checkSolid(all, { components: 5 }).closed).toBe(true);
  });

  it("is asked for: STL and OBJ hold the metal alone", async () => {
    for (const file of ["ring.stl", "ring.obj"]) expect(await encode(file)).toEqual(await encode(file, []));
  });
});

describe("encodeMesh", () => {
  it("refuses what is no stone", async () => {
    const [stone] = made.stones;
    for (const wrong of [{ ...stone, map: [1] }, { ...stone, gem: { ...stone.gem, index: 0.5 } }, null]) {
      await expect(encode("ring.glb", [wrong as never])).rejects.toMatchObject({ code: "option-invalid" });
    }
  });
});
