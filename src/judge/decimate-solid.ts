/**
 * Decimation that keeps the gate: the mesh with fewer triangles where it passes, the mesh as it was where it does not.
 */
import { AnnuletError, type Warn } from "../base/errors.js";
import { decimate } from "../mesh/decimate.js";
import type { Mesh } from "../mesh/mesh.js";

export interface DecimateSolidOptions {
  /** How far the surface may lie from what it was, mm. 0 leaves the mesh as it is. */
  readonly deviation: number;
  /** Whether a mesh passes the gate. */
  readonly accept: (mesh: Mesh) => boolean;
  readonly warn: Warn;
  readonly signal?: AbortSignal | undefined;
}

/** What decimation came to. */
export interface Decimation {
  readonly trianglesBefore: number;
  readonly trianglesAfter: number;
  /** No place of either surface is farther from the other than this, mm. */
  readonly deviation: number;
}

/** @returns the mesh, and what became of it; nothing where it is as it was. A mesh that does not pass is left to the gate. */
export async function decimateSolid(
  mesh: Mesh,
  { deviation, accept, warn, signal }: DecimateSolidOptions,
): Promise<{ readonly mesh: Mesh; readonly decimation: Decimation | undefined }> {
  if (requireDeviation(deviation) === 0 || !accept(mesh)) return { mesh, decimation: undefined };
  const { mesh: fewer, bound } = await decimate(mesh, { deviation, signal });
  if (!accept(fewer)) {
    warn({
      code: "decimation-refused",
      message: "with fewer triangles the ring would not be closed: it keeps them all",
      value: deviation,
      hint: "ask for a smaller deviation, or a coarser tolerance instead",
    });
    return { mesh, decimation: undefined };
  }
  const [trianglesBefore, trianglesAfter] = [mesh.triangles.length / 3, fewer.triangles.length / 3];
  return { mesh: fewer, decimation: { trianglesBefore, trianglesAfter, deviation: bound } };
}

/**
 * Hands back a deviation that is a length or 0.
 *
 * @throws AnnuletError `option-invalid`
 */
export function requireDeviation(deviation: number): number {
  if (deviation >= 0 && deviation < Number.POSITIVE_INFINITY) return deviation;
  throw new AnnuletError({
    code: "option-invalid",
    message: "the deviation of decimation is not a length",
    path: "decimate",
    value: deviation,
    allowed: "0 for none, or above, in mm",
  });
}
