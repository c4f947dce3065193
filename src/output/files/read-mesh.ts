/**
 * Reads a mesh from STL (binary or text), OBJ, 3MF or GLB.
 */
import { AnnuletError } from "../../base/errors.js";
import { BYTES } from "../../base/options.js";
import { mergeEqualPoints, mergeRoundedPoints } from "../../mesh/merge.js";
import type { Mesh } from "../../mesh/mesh.js";
import { objReader } from "./reading/obj.js";
import type { Broken, FileMesh, MeshReader } from "./reading/reader.js";
import { stlReader } from "./reading/stl.js";

/** Those that need libraries are loaded when there is a file for them. */
const readers: readonly MeshReader[] = [
  stlReader,
  objReader,
  {
    extensions: [".3mf"],
    read: async (bytes, broken) => (await import("./reading/threemf.js")).readThreemf(bytes, broken),
  },
  { extensions: [".glb"], read: async (bytes, broken) => (await import("./reading/glb.js")).readGlb(bytes, broken) },
];

/** Endings of the files that are read, lower case, with the dot. */
export const readableEndings: readonly string[] = readers.flatMap((reader) => reader.extensions);

/**
 * Reads a file's bytes. Equal points become one vertex; triangles that repeat a vertex stay, for the gate to see. 3MF and
 * GLB say their unit; lengths in STL and OBJ are taken as mm. Stones that annulet wrote beside the metal are left out. At most 10
 * million triangles are read.
 *
 * @param fileName its ending tells the kind: .stl, .obj, .3mf or .glb
 * @throws AnnuletError `format-unknown` for another ending, `mesh-file-broken` with what is wrong
 *
 * @example
 * const { mesh, report } = await build(document, { detail: "draft" });
 * const bytes = await encodeMesh(formatForFile("ring.stl"), mesh, { name: report.name });
 * const again = await readMesh(bytes, "ring.stl");
 */
export async function readMesh(bytes: Uint8Array, fileName: string): Promise<Mesh> {
  return (await readMetal(bytes, fileName)).mesh;
}

/**
 * As `readMesh`, with the number of stones that were left out.
 *
 * @throws AnnuletError as `readMesh`
 */
export async function readMetal(bytes: Uint8Array, fileName: string): Promise<ReadMetal> {
  const reader = requireReadable(fileName);
  requireBytes(bytes);
  const broken: Broken = (what, cause) =>
    new AnnuletError({ code: "mesh-file-broken", message: `${fileName}: ${what}` }, { cause });
  if (bytes.length === 0) throw broken("the file is empty");
  // Some readers are loaded first; by then the caller may have filled the bytes with another file.
  const mesh = await reader.read(Uint8Array.from(bytes), broken);
  if ((mesh.triangles ?? mesh.positions).length === 0) throw broken("there are no triangles in it");
  requireFinite(mesh, broken);
  const { positions, indexOf } =
    mesh.positions instanceof Float32Array ? mergeRoundedPoints(mesh.positions) : mergeEqualPoints(mesh.positions);
  const triangles = mesh.triangles?.map((point) => indexOf[point]) ?? indexOf;
  return { mesh: { positions, triangles }, stones: mesh.stones ?? 0 };
}

/** What was read of a file, and how many of its stones were not. */
export interface ReadMetal {
  readonly mesh: Mesh;
  readonly stones: number;
}

/**
 * What reads a file of this name.
 *
 * @throws AnnuletError `format-unknown`
 */
export function requireReadable(fileName: string): MeshReader {
  const lower = typeof fileName === "string" ? fileName.toLowerCase() : "";
  const reader = readers.find(({ extensions }) => extensions.some((ending) => lower.endsWith(ending)));
  if (reader !== undefined) return reader;
  throw new AnnuletError({
    code: "format-unknown",
    message: "no mesh is read from files of this ending",
    value: fileName,
    allowed: readableEndings.join(", "),
  });
}

function requireBytes(bytes: unknown): void {
  if (BYTES.holds(bytes)) return;
  const { allowed } = BYTES;
  throw new AnnuletError({ code: "mesh-file-broken", message: "what is given is no file", value: bytes, allowed });
}

function requireFinite({ positions, triangles }: FileMesh, broken: Broken): void {
  for (let i = 0; i < positions.length; i++) {
    if (Number.isFinite(positions[i])) continue;
    const point = Math.floor(i / 3);
    const corner = triangles === undefined ? point : triangles.indexOf(point);
    if (corner === -1) throw broken("it has a point that is no point");
    throw broken(`triangle ${Math.floor(corner / 3) + 1} has a corner that is no point`);
  }
}
