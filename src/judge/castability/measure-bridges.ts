/**
 * Handles of the solid that the design does not imply, and the beads that make them.
 */
import { findBridges } from "../bridges.js";
import type { JudgedPiece, Measured } from "./piece.js";

/** Undefined where the ring has just the handles that its design implies. */
export function measureBridges({ mesh, beads, tolerance, handles }: JudgedPiece): Measured | undefined {
  const more = handles.found - handles.implied;
  if (more === 0) return undefined;
  const bridges = more > 0 ? findBridges(mesh, beads, tolerance) : [];
  const places = bridges.map(({ centre }) => ({ space: centre }));
  const count = `${handles.found} where the design implies ${handles.implied}`;
  const which = places.length === 0 ? "" : `; beads that touch across a gap: ${places.length}`;
  return { figure: Math.abs(more), places, more: `${count}${more > 0 ? which : ": parts close holes"}` };
}
