/**
 * The ring's gate: closed, in one piece, and with no more handles than the design implies.
 */
import { AnnuletError, type Warn } from "../errors.js";
import type { Mesh } from "../mesh/mesh.js";
import { type Ball, findBridges } from "./bridges.js";
import { assertSolid, type SolidCheck } from "./gate.js";

export interface RingGateOptions {
  /** Handles that the design implies: 1 for a band, one more for each clean hole. */
  readonly genus: number;
  /** The beads, to find the places where one bridges a gap. */
  readonly balls: readonly Ball[];
  /** How far the mesh may lie from the true surface, mm. */
  readonly tolerance: number;
  readonly warn: Warn;
}

/** Places of bridges that are told. */
const PLACES_SHOWN = 10;

/**
 * Checks a finished ring. A genus that differs from the design's is a warning with the places where beads bridge gaps.
 *
 * @throws AnnuletError `not-closed`
 */
export function gateRing(
  mesh: Mesh,
  { genus, balls, tolerance, warn }: RingGateOptions,
): SolidCheck & { genus: number } {
  const check = assertSolid(mesh);
  if (check.genus === undefined) throw new AnnuletError({ code: "not-closed", message: "the ring has no genus" });
  if (check.genus !== genus) {
    const bridges = findBridges(mesh, balls, tolerance);
    warn({
      code: "genus-differs",
      message: `the ring has ${check.genus} handles where the design implies ${genus}: ${check.genus > genus ? "parts bridge a gap, which traps investment" : "parts close holes"}`,
      value: { genus: check.genus, places: bridges.slice(0, PLACES_SHOWN).map(({ centre }) => centre) },
      allowed: `a genus of ${genus}`,
      hint:
        check.genus > genus
          ? "keep beads from touching across a gap: make them smaller, or move the runs apart"
          : "keep raised regions and beads clear of the holes",
    });
  }
  return { ...check, genus: check.genus };
}
