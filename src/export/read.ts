/**
 * Reads a mesh from STL (binary or text), OBJ, 3MF or GLB.
 */
import { AnnuletError } from "../errors.js";
import { mergeEqualPoints, mergeRoundedPoints } from "../mesh/merge.js";
import type { Mesh } from "../mesh/mesh.js";
import { glbReader } from "./reading/glb.js";
import { objReader } from "./reading/obj.js";
import type { Broken, MeshReader } from "./reading/reader.js";
import { stlReader } from "./reading/stl.js";
import { threemfReader } from "./reading/threemf.js";

const readers: readonly MeshReader[] = [stlReader, objReader, threemfReader, glbReader];

/** Endings of the files that are read, lower case, with the dot. */
export const readableEndings: readonly string[] = readers.flatMap((reader) => reader.extensions);

/**
 * Reads a file's bytes. Equal points become one vertex; triangles that repeat a vertex stay, for the gate to see. 3MF and
 * GLB say their unit; lengths in STL and OBJ are taken as mm. At most 10 million triangles are read.
 *
 * @param fileName its ending tells the kind: .stl, .obj, .3mf or .glb
 * @throws AnnuletError `format-unknown` for another ending, `mesh-file-broken` with what is wrong
 */
export async function readMesh(bytes: Uint8Array, fileName: string): Promise<Mesh> {
  const reader = requireReadable(fileName);
  const broken: Broken = (what, cause) =>
    new AnnuletError({ code: "mesh-file-broken", message: `${fileName}: ${what}` }, { cause });
  if (bytes.length === 0) throw broken("the file is empty");
  const mesh = await reader.read(bytes, broken);
  if (mesh.triangles.length === 0) throw broken("there are no triangles in it");
  requireFinite(mesh, broken);
  // Where nothing is lost by rounding, half the bits tell points apart.
  const { positions, indexOf } = isSingle(mesh.positions)
    ? mergeRoundedPoints(mesh.positions)
    : mergeEqualPoints(mesh.positions);
  const triangles = new Uint32Array(mesh.triangles.length);
  for (let i = 0; i < triangles.length; i++) triangles[i] = indexOf[mesh.triangles[i]];
  return { positions, triangles };
}

function isSingle(positions: Float64Array): boolean {
  for (let i = 0; i < positions.length; i++) if (Math.fround(positions[i]) !== positions[i]) return false;
  return true;
}

/**
 * What reads a file of this name.
 *
 * @throws AnnuletError `format-unknown`
 */
export function requireReadable(fileName: string): MeshReader {
  const lower = fileName.toLowerCase();
  const reader = readers.find(({ extensions }) => extensions.some((ending) => lower.endsWith(ending)));
  if (reader !== undefined) return reader;
  throw new AnnuletError({
    code: "format-unknown",
    message: "no mesh is read from files of this ending",
    value: fileName,
    allowed: readableEndings.join(", "),
  });
}

function requireFinite({ positions, triangles }: Mesh, broken: Broken): void {
  for (let i = 0; i < positions.length; i++) {
    if (Number.isFinite(positions[i])) continue;
    const triangle = Math.floor(triangles.indexOf(Math.floor(i / 3)) / 3) + 1;
    throw broken(
      triangle === 0 ? "it has a point that is no point" : `triangle ${triangle} has a corner that is no point`,
    );
  }
}
