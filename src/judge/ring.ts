/**
 * The ring's gate: closed, in one piece, and with no more handles than the design implies.
 */
import { AnnuletError, type Warn } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import { degrees } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";
import { type Ball, findBridges } from "./bridges.js";
import { atRegions, requireClosed, type SolidCheck } from "./gate.js";
import { isInPieces } from "./loose.js";

export interface RingGateOptions {
  /** Handles that the design implies: 1 for a band, one more for each clean hole. */
  readonly genus: number;
  /** The beads, to find the places where one bridges a gap. */
  readonly balls: readonly Ball[];
  /** How far the mesh may lie from the true surface, mm. */
  readonly tolerance: number;
  readonly warn: Warn;
  /** Names of the regions at places, for what is wrong there. Default: none are known. */
  readonly regionsAt?: (places: readonly Point3[]) => readonly string[];
}

/** Places of bridges that are told. */
const PLACES_SHOWN = 10;

/**
 * Judges a finished ring by what the gate found of it. A genus that differs from the design's is a warning with the places where beads bridge gaps.
 *
 * @throws AnnuletError `loose-pieces` where closed parts hang in the air, `not-closed`
 */
export function gateRing(
  mesh: Mesh,
  check: SolidCheck,
  { genus, balls, tolerance, warn, regionsAt = () => [] }: RingGateOptions,
): SolidCheck & { genus: number } {
  if (!check.closed) {
    requireOnePiece(check, regionsAt);
    requireClosed(check, regionsAt);
  }
  if (check.genus === undefined) throw new AnnuletError({ code: "not-closed", message: "the ring has no genus" });
  if (check.genus !== genus) {
    const angles = findBridges(mesh, balls, tolerance).map(({ centre: [x, y] }) => whole(degrees(Math.atan2(y, x))));
    const shown = angles.slice(0, PLACES_SHOWN);
    const at = shown.length === 0 ? "" : ` at ${shown.map((angle) => `${angle.toFixed(1)}°`).join(", ")}`;
    warn({
      code: "genus-differs",
      message: `the ring has ${check.genus} handles where the design implies ${genus}: ${check.genus > genus ? `parts bridge a gap${at}, which traps investment` : "parts close holes"}`,
      value: { genus: check.genus, angles: shown },
      allowed: `a genus of ${genus}`,
      hint:
        check.genus > genus
          ? "keep beads from touching across a gap: make them smaller, or move the runs apart"
          : "keep raised regions and beads clear of the holes",
    });
  }
  return { ...check, genus: check.genus };
}

/** Degrees from 0 to 360. */
function whole(angle: number): number {
  return angle - 360 * Math.floor(angle / 360);
}

/** A ring whose only fault is that it is in pieces has parts with nothing to stand on: that lies in the design. */
function requireOnePiece(check: SolidCheck, regionsAt: (places: readonly Point3[]) => readonly string[]): void {
  if (!isInPieces(check)) return;
  const { faults, components } = check;
  const places = faults.flatMap((fault) => fault.places);
  const regions = regionsAt(places);
  throw new AnnuletError({
    code: "loose-pieces",
    message: `${components - 1} part${components === 2 ? "" : "s"} of the ring touch${components === 2 ? "es" : ""} nothing: beads or relief hang over a pit or a hole, or beside the band${atRegions(regions)}`,
    value: { pieces: components, places: places.slice(0, PLACES_SHOWN) },
    allowed: "a ring in one piece",
    hint: "move them on to the metal, make the pit or hole smaller, or set the beads lower",
  });
}
