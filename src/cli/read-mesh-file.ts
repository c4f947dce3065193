/**
 * Reads a mesh file that a command names.
 */
import { basename } from "node:path";
import { readFile } from "../disk/read-file.js";
import { type Mesh, readMesh } from "../index.js";
import { readableEndings, requireReadable } from "../toolbox/index.js";

/** Largest mesh file, bytes: text of this size is near the longest string the engine holds. */
const MAX_MESH_BYTES = 500e6;

/** Whether a path's ending says that it holds a mesh. */
export function isMeshFile(path: string): boolean {
  return readableEndings.some((ending) => path.toLowerCase().endsWith(ending));
}

/**
 * The mesh of a file; its ending is looked at before its bytes.
 *
 * @throws AnnuletError those of `readFile` and `readMesh`
 */
export async function readMeshFile(path: string): Promise<Mesh> {
  return readMesh(readMeshBytes(path), basename(path));
}

/**
 * The bytes of a mesh file; its ending is looked at first.
 *
 * @throws AnnuletError those of `readFile`, and of `readMesh` for its ending
 */
export function readMeshBytes(path: string): Uint8Array {
  requireReadable(path);
  return readFile(path, MAX_MESH_BYTES);
}
