// Covers: src/output/files/reading/package.ts, src/output/files/reading/placed.ts
// Covers: src/output/files/reading/threemf-model.ts, src/output/files/reading/xml.ts
import { strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../../src/base/errors.js";
import { checkSolid } from "../../../../src/judge/gate.js";
import { meshBounds } from "../../../../src/mesh/bounds.js";
import { encodeMesh } from "../../../../src/output/files/format.js";
import { threemf } from "../../../../src/output/files/formats/threemf.js";
import { readMesh } from "../../../../src/output/files/read-mesh.js";
import { box } from "../../../support/meshes.js";

const CORE = 'xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"';
const PRODUCTION = 'xmlns:p="http://schemas.microsoft.com/3dmanufacturing/production/2015/06"';

const cube = await encodeMesh(threemf, box(), { name: "cube" });
const { "_rels/.rels": rels, "3D/3dmodel.model": cubeModel } = unzipSync(cube);
const cubeXml = new TextDecoder().decode(cubeModel);
const mesh = cubeXml.slice(cubeXml.indexOf("<mesh>"), cubeXml.indexOf("</mesh>") + 7);

const pack = (model: string, more: Record<string, Uint8Array> = {}) =>
  zipSync({ "_rels/.rels": rels, "3D/3dmodel.model": strToU8(model), ...more });
const model = (resources: string, build: string, attributes = "") =>
  `<?xml version="1.0"?><model ${CORE} ${attributes}><resources>${resources}</resources><build>${build}</build></model>`;
const object = (id: number, content = mesh) => `<object id="${id}">${content}</object>`;
const components = (...list: string[]) => `<components>${list.join("")}</components>`;

const others = Array.from({ length: 20 }, (_, i) => `part-${i}.xml`);

/** An empty package whose directory, in the 64-bit form (APPNOTE 6.3.10, 4.3.14 and 4.3.15), announces so many parts. */
function announcingParts(count: number): Uint8Array {
  const view = new DataView(new ArrayBuffer(56 + 20 + 22));
  view.setUint32(0, 0x06064b50, true);
  view.setUint32(32, count, true);
  view.setUint32(56, 0x07064b50, true);
  view.setUint32(76, 0x06054b50, true);
  view.setUint16(76 + 8, 0xffff, true);
  return new Uint8Array(view.buffer);
}

const at = (x: number) => `1 0 0 0 1 0 0 0 1 ${x} 0 0`;

async function problem(bytes: Uint8Array): Promise<string> {
  try {
    await readMesh(bytes, "a.3mf");
  } catch (error) {
    if (error instanceof AnnuletError) return `${error.code}: ${error.message}`;
    throw error;
  }
  return "read";
}

describe("reading 3MF", () => {
  it("takes lengths in the model's unit", async () => {
    const inches = await readMesh(pack(model(object(1), '<item objectid="1"/>', 'unit="inch"')), "a.3mf");
    expect(checkSolid(inches)).toMatchObject({ closed: true, volume: expect.closeTo(25.4 ** 3, 6) });
  });

  it("places items and components within components by their transforms, mirrors too", async () => {
    const bytes = pack(
      model(
        object(1) +
          object(2, components('<component objectid="1" transform="2 0 0 0 1 0 0 0 1 0 0 0"/>')) +
          object(
            3,
            components('<component objectid="2" transform="0 1 0 -1 0 0 0 0 1 5 0 0"/>', '<component objectid="1"/>'),
          ),
        '<item objectid="3" transform="-1 0 0 0 1 0 0 0 1 0 0 7"/>',
      ),
    );
    const placed = await readMesh(bytes, "a.3mf");
    // Twice as long in x, turned by 90° about z, moved to x = 5; all of it mirrored in x and moved to z = 7.
    expect(meshBounds(placed)).toEqual({ min: [-5, 0, 7], max: [0, 2, 8] });
    expect(checkSolid(placed, { components: 2 })).toMatchObject({ closed: true, volume: expect.closeTo(3, 12) });
  });

  it("follows the path of a component into another part", async () => {
    const other = strToU8(model(object(7), ""));
    const bytes = pack(
      model(
        object(1, components('<component objectid="7" p:path="/3D/Objects/part.model"/>')),
        '<item objectid="1"/>',
        `${PRODUCTION} requiredextensions="p"`,
      ),
      { "3D/Objects/part.model": other },
    );
    expect(checkSolid(await readMesh(bytes, "a.3mf"))).toMatchObject({ closed: true, volume: 1 });
  });

  it("leaves out what the build does not place, and other namespaces", async () => {
    const bytes = pack(
      model(`${object(1)}${object(2)}<x:object xmlns:x="urn:x" id="3"><x:vertex/></x:object>`, '<item objectid="2"/>'),
    );
    expect(checkSolid(await readMesh(bytes, "a.3mf"))).toMatchObject({ closed: true, triangles: 12 });
  });

  const item = '<item objectid="1"/>';
  const nested = Array.from({ length: 12 }, (_, i) =>
    object(i + 2, components(...Array.from({ length: 10 }, () => `<component objectid="${i + 1}"/>`))),
  ).join("");
  const bomb = `<!DOCTYPE m [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;">]>${model(object(1), item).slice(21)}`;

  it.each<[string, Uint8Array, RegExp]>([
    ["what is no zip", strToU8("solid ".repeat(50)), /zip package cannot be read/],
    ["a truncated package", cube.slice(0, -100), /zip package cannot be read/],
    ["a zip of something else", zipSync({ "a.txt": strToU8("a") }), /no 3MF file: its package has no _rels/],
    ["a package that names no model", zipSync({ "_rels/.rels": strToU8("<Relationships/>") }), /names no model/],
    ["a package without its model", zipSync({ "_rels/.rels": rels }), /there is no \/3D\/3dmodel\.model/],
    ["a model cut off", pack(cubeXml.slice(0, 800)), /3dmodel\.model/],
    [
      "text that is not UTF-8",
      zipSync({ "_rels/.rels": rels, "3D/3dmodel.model": cubeModel.map((b, i) => (i === 300 ? 0xff : b)) }),
      /not UTF-8/,
    ],
    ["a unit of its own", pack(model(object(1), item, 'unit="league"')), /no unit league/],
    ["a unit by a name that objects have", pack(model(object(1), item, 'unit="constructor"')), /no unit constructor/],
    [
      "an extension that is not known",
      pack(model(object(1), item, 'xmlns:b="urn:lattice" requiredextensions="b"')),
      /needs the extension urn:lattice/,
    ],
    ["an object that is not there", pack(model(object(1), '<item objectid="9"/>')), /no object 9/],
    ["nothing to build", pack(model(object(1), "")), /no triangles/],
    [
      "a vertex that is not there",
      pack(model(object(1, mesh.replace('v1="0"', 'v1="99"')), item)),
      /vertex 99, which is not there/,
    ],
    ["an index below 0", pack(model(object(1, mesh.replace('v1="0"', 'v1="-1"')), item)), /v1 = -1/],
    ["a coordinate that is no number", pack(model(object(1, mesh.replace('x="0"', 'x="NaN"')), item)), /x = NaN/],
    ["a vertex without y", pack(model(object(1, mesh.replace(/ y="[^"]*"/, "")), item)), /vertex has no y/],
    [
      "a transform of eleven numbers",
      pack(model(object(1), '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0"/>')),
      /no transform/,
    ],
    [
      "a transform that flattens",
      pack(model(object(1), '<item objectid="1" transform="1 0 0 0 1 0 0 0 0 0 0 0"/>')),
      /flattens/,
    ],
    [
      "an object within itself",
      pack(model(object(1, components('<component objectid="1"/>')), item)),
      /deep in each other/,
    ],
    ["a million million copies", pack(model(object(1) + nested, '<item objectid="13"/>')), /more than/],
    [
      "elements nested 80 000 deep",
      pack(model("<a>".repeat(80_000) + "</a>".repeat(80_000), item)),
      /elements lie more than 256 deep/,
    ],
    ["parts without number", pack(model(object(1), item.repeat(100_001))), /more than 100000 parts/],
    [
      "many models of names that models do not have",
      pack(
        model(
          object(1, components(...others.map((name) => `<component objectid="7" p:path="/3D/${name}"/>`))),
          item,
          PRODUCTION,
        ),
        Object.fromEntries(others.map((name) => [`3D/${name}`, strToU8(model(object(7), ""))])),
      ),
      /more than 16 of its models have names/,
    ],
    ["a directory that announces more parts than it has room for", announcingParts(0xffffffff), /room for/],
    ["entities of its own", pack(bomb.replace('<object id="1">', '<object id="1" name="&b;">')), /entity/],
  ])("refuses %s", async (_, bytes, message) => {
    const said = await problem(bytes);
    expect(said).toMatch(/^mesh-file-broken/);
    expect(said).toMatch(message);
  });

  /** The package with the unpacked size that its directory gives for the model changed. */
  function announcing(size: number): Uint8Array {
    const bytes = pack(model(object(1), item) + " ".repeat(100_000));
    const view = new DataView(bytes.buffer);
    for (let at = 0; at < bytes.length - 4; at++) {
      // The directory's second entry; its size stands 24 bytes in.
      if (view.getUint32(at, true) === 0x02014b50 && bytes[at + 46] === "3".charCodeAt(0))
        view.setUint32(at + 24, size, true);
    }
    return bytes;
  }

  it("refuses a part that says it unpacks to gigabytes, before it unpacks it", async () => {
    expect(await problem(announcing(4e9))).toMatch(/unpack to 4000 MB, at most 400/);
  });

  it("unpacks no more than a part says it holds", async () => {
    expect(await problem(announcing(500))).toMatch(/^mesh-file-broken/);
  });

  it("reads thousands of models in one package", async () => {
    const names = Array.from({ length: 2000 }, (_, i) => `3D/Objects/${i}.model`);
    const placed = names.map((name, i) => `<component objectid="7" p:path="/${name}" transform="${at(3 * i)}"/>`);
    const bytes = pack(
      model(object(1, components(...placed)), item, PRODUCTION),
      Object.fromEntries(names.map((name) => [name, strToU8(model(object(7), ""))])),
    );
    const read = await readMesh(bytes, "a.3mf");
    expect(read.triangles.length / 3).toBe(12 * 2000);
    expect(meshBounds(read).max).toEqual([1 + 3 * 1999, 1, 1]);
  });
});
