/**
 * What any mesh must be before its numbers mean something: whole triples, finite coordinates, indices in range.
 */
import { AnnuletError } from "../base/errors.js";
import type { Mesh } from "./mesh.js";

/**
 * Throws when the arrays do not hold whole triples.
 *
 * @throws AnnuletError `mesh-malformed`
 */
export function requireTriples(mesh: Mesh): void {
  requireArrays(mesh);
  for (const field of ["positions", "triangles"] as const) {
    if (mesh[field].length % 3 !== 0) {
      throw new AnnuletError({
        code: "mesh-malformed",
        message: `the mesh's ${field} do not come in threes`,
        value: mesh[field].length,
        allowed: "a length that is a multiple of 3",
      });
    }
  }
}

/** A caller in JavaScript may pass anything. */
function requireArrays(mesh: unknown): void {
  const { positions, triangles } = Object(mesh) as Partial<Mesh>;
  const areNumbers = (values: unknown) => ArrayBuffer.isView(values) && !(values instanceof DataView);
  if (areNumbers(positions) && areNumbers(triangles)) return;
  throw new AnnuletError({
    code: "mesh-malformed",
    message: "what is given is no mesh",
    allowed: "an object with positions, a Float64Array, and triangles, a Uint32Array",
  });
}

/**
 * Throws unless every coordinate is finite and every index names a vertex.
 *
 * @throws AnnuletError `mesh-malformed`, with the first vertex or triangle that is wrong
 */
export function requireSound(mesh: Mesh): void {
  requireTriples(mesh);
  const { positions, triangles } = mesh;
  const vertices = positions.length / 3;
  for (let i = 0; i < positions.length; i++) {
    if (!Number.isFinite(positions[i])) {
      throw new AnnuletError({
        code: "mesh-malformed",
        message: `coordinate ${"xyz"[i % 3]} of vertex ${Math.floor(i / 3)} is not a number`,
        value: positions[i],
        allowed: "finite lengths in mm",
      });
    }
  }
  for (let i = 0; i < triangles.length; i++) {
    if (triangles[i] >= vertices) {
      throw new AnnuletError({
        code: "mesh-malformed",
        message: `triangle ${Math.floor(i / 3)} names a vertex that is not there`,
        value: triangles[i],
        allowed: `0 to ${vertices - 1}`,
      });
    }
  }
}
