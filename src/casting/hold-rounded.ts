/**
 * A solid whose points were turned or scaled: rounded to single precision they are others than those that passed the gate
 * before, and needles of a nanometre collapse.
 */
import { assertSolid, checkSolid } from "../judge/gate.js";
import type { Mesh } from "../mesh/mesh.js";
import { partCoincident } from "../union/part-coincident.js";
import { tidyMesh } from "../union/tidy-mesh.js";

/**
 * The mesh itself where it passes the gate; else as a file holds it, tidied there as the union does: what has become one
 * is collapsed, what has no height flipped away, sheets that touch are parted. No point moves by more than 2 µm.
 *
 * @throws AnnuletError `not-closed` where it does not pass even so
 */
export function holdRounded(mesh: Mesh): Mesh {
  if (checkSolid(mesh).closed) return mesh;
  const tidied = tidyMesh(rounded(mesh));
  if (checkSolid(tidied).closed) return tidied;
  const parted = tidyMesh(rounded(partCoincident(tidied)));
  assertSolid(parted);
  return parted;
}

/** Every coordinate as single precision has it; points that become equal stay apart by number. */
function rounded({ positions, triangles }: Mesh): Mesh {
  return { positions: Float64Array.from(Float32Array.from(positions)), triangles };
}
