/**
 * What a result is told by: a wrong one differs in its triangles, its volume, or does not close.
 */
import { checkSolid } from "../src/judge/gate.js";
import { type Mesh, triangleCount } from "../src/mesh/mesh.js";
import { signedVolume } from "../src/mesh/volume.js";

export interface Checksum {
  readonly triangles: number;
  /** mm³ */
  readonly volume: number;
  /** Whether the mesh is one solid, in double precision and rounded to float32. */
  readonly closed: boolean;
}

export function checksumOf(mesh: Mesh): Checksum {
  return { triangles: triangleCount(mesh), volume: signedVolume(mesh), closed: checkSolid(mesh).closed };
}
