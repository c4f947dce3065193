/**
 * Reads the triangles of GLB, placed as the scene's nodes say, from metres. Nothing is fetched: what refers to other files
 * or needs an extension that changes the geometry is refused.
 */
import type { Document, GLTF, JSONDocument, Node, Primitive } from "@gltf-transform/core";
import type { ReadonlyMat4 } from "gl-matrix";
import { remembered } from "../../../base/math/remembered.js";
import type { Mesh } from "../../../mesh/mesh.js";
import { STONE_MARK } from "../file-stone.js";
import { WebIO } from "../gltf-library.js";
import { type GltfLists, gltfLists } from "./gltf-lists.js";
import { compose, MOST_PARTS, PlacedMeshes, scaleBy } from "./placed.js";
import { type Broken, type FileMesh, requireFewTriangles } from "./reader.js";

const MILLIMETRES_IN_METRE = 1000;

/** Bytes of a number of each glTF component type, and numbers of each accessor type that geometry uses. */
const COMPONENT_BYTES: Readonly<Record<number, number>> = { 5120: 1, 5121: 1, 5122: 2, 5123: 2, 5125: 4, 5126: 4 };
const TYPE_NUMBERS: Readonly<Record<string, number>> = {
  SCALAR: 1,
  VEC2: 2,
  VEC3: 3,
  VEC4: 4,
  MAT2: 4,
  MAT3: 9,
  MAT4: 16,
};

/** Under what name the library keeps the file's own binary part. */
const GLB_BUFFER = "@glb.bin";

/** Most numbers of all accessors: those of the most triangles that are read, each with three corners and three indices. */
const MOST_NUMBERS = 120_000_000;

/** @throws what `broken` makes */
export async function readGlb(bytes: Uint8Array, broken: Broken): Promise<FileMesh> {
  requireWhole(bytes, broken);
  const document = await readDocument(bytes, broken);
  const root = document.getRoot();
  const scene = root.getDefaultScene() ?? root.listScenes()[0];
  if (scene === undefined) throw broken("it has no scene");
  const placed = new PlacedMeshes(broken);
  let stones = 0;
  const meshOf = remembered(MOST_PARTS, (primitive: Primitive) => trianglesOf(primitive, broken));
  const waiting = scene.listChildren().map((node): [Node, ReadonlyMat4] => [node, scaleBy(MILLIMETRES_IN_METRE)]);
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const [node, outer] = next;
    placed.enter();
    if (node.getExtras().annulet === STONE_MARK) {
      stones += node.listChildren().length;
      continue;
    }
    const map = compose(outer, node.getMatrix());
    for (const primitive of node.getMesh()?.listPrimitives() ?? []) {
      const mesh = meshOf(primitive);
      if (mesh !== undefined) placed.add(mesh, map);
    }
    for (const child of node.listChildren()) waiting.push([child, map]);
  }
  return { ...placed.join(), stones };
}

const MAGIC = 0x46546c67;
const HEADER_BYTES = 12;
const CHUNK_HEADER_BYTES = 8;

/** The header's length and the chunks' lengths must be the file's. */
function requireWhole(bytes: Uint8Array, broken: Broken): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < HEADER_BYTES + CHUNK_HEADER_BYTES || view.getUint32(0, true) !== MAGIC) {
    throw broken("it is no GLB file");
  }
  const [version, length] = [view.getUint32(4, true), view.getUint32(8, true)];
  if (version !== 2) throw broken(`it is glTF ${version}; only glTF 2 is read`);
  if (length > bytes.length) throw broken(`it announces ${length} bytes but has ${bytes.length}`);
  let at = HEADER_BYTES;
  while (at + CHUNK_HEADER_BYTES <= length) at += CHUNK_HEADER_BYTES + view.getUint32(at, true);
  if (at !== length) throw broken("its chunks are not as long as the file");
}

async function readDocument(bytes: Uint8Array, broken: Broken): Promise<Document> {
  // The library reads whole words, so the bytes must begin at one.
  const aligned = bytes.byteOffset % 4 === 0 ? bytes : bytes.slice();
  const io = new WebIO();
  const binary = await io.binaryToJSON(aligned).catch((cause: unknown) => {
    throw broken(`it cannot be read: ${reasonOf(cause)}`, cause);
  });
  const json = gltfLists(binary.json, broken);
  requireTree(json, broken);
  requireNamed(json, broken);
  requireBacked(json, binary, broken);
  return io.readJSON({ json, resources: binary.resources }).catch((cause: unknown) => {
    throw broken(`it cannot be read: ${reasonOf(cause)}`, cause);
  });
}

/** Nodes must be a tree, or the walk would not end. */
function requireTree({ nodes, scenes }: GltfLists, broken: Broken): void {
  const parents = new Map<number, number>();
  for (const [parent, node] of nodes.entries()) {
    for (const child of node.children ?? []) {
      if (parents.has(child)) throw broken(`node ${child} has two parents`);
      if (child >= nodes.length) throw broken(`node ${parent} names node ${child}, which is not there`);
      parents.set(child, parent);
    }
  }
  for (const node of scenes.flatMap((scene) => scene.nodes ?? [])) {
    if (node >= nodes.length) throw broken(`a scene names node ${node}, which is not there`);
    if (parents.has(node)) throw broken(`node ${node} of the scene has a parent`);
  }
}

/** What is named must be there: the library would leave it out. */
function requireNamed({ scene = 0, scenes, nodes, meshes, accessors }: GltfLists, broken: Broken): void {
  const hold = (kind: string, index: number | undefined, list: readonly unknown[]): void => {
    if (index !== undefined && index >= list.length) throw broken(`it names ${kind} ${index}, which is not there`);
  };
  if (scenes.length > 0) hold("scene", scene, scenes);
  for (const { mesh } of nodes) hold("mesh", mesh, meshes);
  for (const { attributes, indices } of meshes.flatMap(({ primitives }) => primitives)) {
    hold("accessor", attributes.POSITION, accessors);
    hold("accessor", indices, accessors);
  }
}

/** Every number of an accessor must be in the file, and all of them together must be few enough to be read. */
function requireBacked(json: GltfLists, { resources }: JSONDocument, broken: Broken): void {
  const lengths = json.buffers.map(({ uri }) => resources[uri || GLB_BUFFER]?.byteLength ?? 0);
  let numbers = 0;
  const hold = (index: number, { bufferView, byteOffset = 0, count, componentType, type }: GLTF.IAccessor): void => {
    const view = json.bufferViews[bufferView ?? -1];
    const length = lengths[view?.buffer ?? -1] ?? 0;
    const element = COMPONENT_BYTES[componentType] * TYPE_NUMBERS[type];
    const most = view === undefined ? 0 : Math.min(view.byteLength, length - (view.byteOffset ?? 0));
    const stride = view?.byteStride ?? element;
    if (stride < element) throw broken(`accessor ${index} has entries that lie over one another`);
    const to = byteOffset + stride * (count - 1) + element;
    if (!(count >= 1 && to <= most)) throw broken(`accessor ${index} asks for more than its part of the file holds`);
    numbers += count * TYPE_NUMBERS[type];
    if (numbers > MOST_NUMBERS)
      throw broken(`its accessors have more than ${MOST_NUMBERS} numbers, the most that are read`);
  };
  for (const [i, accessor] of json.accessors.entries()) {
    const { sparse, count, componentType, type } = accessor;
    hold(i, accessor);
    if (sparse === undefined) continue;
    if (sparse.count > count) throw broken(`accessor ${i} changes more entries than it has`);
    hold(i, { ...sparse.indices, count: sparse.count, type: "SCALAR" });
    hold(i, { ...sparse.values, count: sparse.count, componentType, type });
  }
}

const { TRIANGLES, TRIANGLE_STRIP, TRIANGLE_FAN } = { TRIANGLES: 4, TRIANGLE_STRIP: 5, TRIANGLE_FAN: 6 } as const;

/** The triangles of a primitive; undefined for points and lines. */
function trianglesOf(primitive: Primitive, broken: Broken): Mesh | undefined {
  const mode = primitive.getMode();
  if (mode !== TRIANGLES && mode !== TRIANGLE_STRIP && mode !== TRIANGLE_FAN) return undefined;
  const points = primitive.getAttribute("POSITION")?.getArray();
  if (points == null) throw broken("a primitive has no positions");
  const positions = Float64Array.from(points);
  const count = positions.length / 3;
  const order = Uint32Array.from(primitive.getIndices()?.getArray() ?? Array.from({ length: count }, (_, i) => i));
  const wrong = order.find((vertex) => vertex >= count);
  if (wrong !== undefined) throw broken(`a triangle names vertex ${wrong}, which is not there`);
  if (mode === TRIANGLES) return { positions, triangles: order.subarray(0, order.length - (order.length % 3)) };
  const triangles = new Uint32Array(3 * Math.max(0, order.length - 2));
  requireFewTriangles(triangles.length / 3, broken);
  for (let i = 0; i + 2 < order.length; i++) {
    // Every second triangle of a strip runs the other way round.
    const odd = i % 2;
    const corners =
      mode === TRIANGLE_FAN
        ? [order[0], order[i + 1], order[i + 2]]
        : [order[i], order[i + 1 + odd], order[i + 2 - odd]];
    triangles.set(corners, 3 * i);
  }
  return { positions, triangles };
}

function reasonOf(cause: unknown): string {
  return cause instanceof Error ? cause.message : String(cause);
}
