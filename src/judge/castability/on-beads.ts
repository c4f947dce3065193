/**
 * Which places of the solid lie on a bead.
 */
import type { Point3 } from "../../base/math/point.js";
import { PointGrid } from "../../base/math/point-grid.js";
import type { Bead } from "../../beads/bead.js";
import { distance } from "../wall-rays.js";
import type { JudgedPiece } from "./piece.js";

/** What is less than this below a surface stands on it, mm: facets lie that deep, and relief has its foot there. */
export const ABOVE = 0.02;

export type On = (point: Point3) => boolean;

export function onBeads({ beads, tolerance }: Pick<JudgedPiece, "beads" | "tolerance">): On {
  const grid = new PointGrid<Bead>(beads.reduce((most, { radius }) => Math.max(most, radius), 0) + ABOVE);
  for (const bead of beads) grid.add(bead.centre, bead);
  const reach = Math.max(ABOVE, 2 * tolerance);
  return (point) => grid.near(point).some(({ centre, radius }) => Math.abs(distance(point, centre) - radius) <= reach);
}
