/**
 * GLB, glTF 2.0 in one binary file: for looking at, on screens and in browsers. Lengths in glTF are metres: the node's
 * scale says so, and the positions stay float32 millimetres, the very numbers of the other files. The ring's top, +y, is
 * glTF's up, and its axis points to who looks at it. Vertices are split at creases, with their normals.
 */
import { AnnuletError } from "../../../base/errors.js";
import type { Mesh } from "../../../mesh/mesh.js";
import { creasedNormals, DEFAULT_CREASE } from "../../../mesh/normals.js";
import type { EncodeOptions, FileMaterial, Format } from "../format.js";
import { oneLine } from "../names.js";
import { requireFloat32 } from "./fill-facet.js";
import { shadedPrimitive } from "./shaded-primitive.js";

export const glb: Format = {
  name: "glb",
  extensions: [".glb"],
  carriesStones: true,
  unit: "metres, as glTF has it: the node scales millimetres by 0.001",
  write,
};

/** Metres in a millimetre. */
const MILLIMETRE = 0.001;

/** Silver grey, where no material is named. */
const PLAIN: FileMaterial = { name: "", colour: [0.8, 0.8, 0.8], metal: true };

/** How rough surfaces look, 0 to 1: a polished metal, a matt pattern. Chosen by eye. */
const ROUGHNESS = { metal: 0.25, pattern: 0.7 };

async function* write(mesh: Mesh, { name, material = PLAIN, stones = [] }: EncodeOptions): AsyncIterable<Uint8Array> {
  requireFloat32(mesh);
  if (mesh.triangles.length === 0) {
    throw new AnnuletError({ code: "mesh-malformed", message: "a GLB file holds no mesh without triangles" });
  }
  const { Document, WebIO } = await import("../gltf-library.js");
  const document = new Document();
  document.getRoot().getAsset().generator = "annulet";
  const buffer = document.createBuffer();
  const metal = document
    .createMaterial(oneLine(material.name))
    .setBaseColorFactor([...material.colour, 1])
    .setMetallicFactor(material.metal ? 1 : 0)
    .setRoughnessFactor(material.metal ? ROUGHNESS.metal : ROUGHNESS.pattern);
  const primitive = shadedPrimitive(document, buffer, creasedNormals(mesh, DEFAULT_CREASE)).setMaterial(metal);
  const title = oneLine(name);
  const node = document
    .createNode(title)
    .setMesh(document.createMesh(title).addPrimitive(primitive))
    .setScale([MILLIMETRE, MILLIMETRE, MILLIMETRE]);
  const scene = document.createScene(title).addChild(node);
  document.getRoot().setDefaultScene(scene);
  const io = new WebIO();
  if (stones.length > 0) {
    const { stonesNode, stoneExtensions } = await import("./glb-stones.js");
    scene.addChild(stonesNode(document, buffer, stones).setScale(node.getScale()));
    io.registerExtensions(stoneExtensions);
  }
  yield await io.writeBinary(document);
}
