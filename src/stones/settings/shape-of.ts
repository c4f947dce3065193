/**
 * The shape of a stone as settings see it, from how it is cut.
 */
import type { Point2, Point3 } from "../../base/math/point.js";
import { remembered } from "../../base/math/remembered.js";
import { findCut } from "../../gems/cuts/catalogue.js";
import { outlinePoints } from "../../gems/outline.js";
import { heightsOf, type Stone } from "../../gems/stone.js";
import { stoneFacets } from "../../gems/stone-mesh.js";
import type { GirdleShape } from "./girdle-shape.js";

/** Points this near to the lowest are as low, and this near to the middle on it, mm: rounding. */
const AS_LOW = 1e-6;

/** A keel that rises to one end still lies in the lowest part of the pavilion (chosen: half of its depth). */
const KEEL_PART = 0.5;

/** Stones of different sizes whose shapes are remembered: those of long graded rows (chosen). */
const MOST_SHAPES = 256;

/** Shapes of stones, one for all that are cut alike and as large. @param tolerance as of `shapeOf` */
export function shapesOf(tolerance: number): (stone: Stone) => GirdleShape {
  const made = remembered(MOST_SHAPES, (key: string) => shapeOf(JSON.parse(key) as Stone, tolerance));
  return (stone) => made(JSON.stringify(stone));
}

/** @param tolerance how far the girdle's outline may lie inside the true one, mm */
export function shapeOf(stone: Stone, tolerance: number): GirdleShape {
  const { cut, length, width, narrow, proportions } = stone;
  const { crown, girdle: band, pavilion } = heightsOf(stone);
  const { outline } = findCut(cut);
  const girdle = outlinePoints(outline({ length, width, ...(narrow === undefined ? {} : { narrow }) }), tolerance);
  const { points: corners } = stoneFacets(stone, tolerance);
  const { keel, culet } = keelOf(corners);
  return {
    girdle,
    radius: cut === "round" ? width / 2 : undefined,
    length,
    width,
    keel: pavilion === 0 ? [0, 0] : keel,
    crown,
    band,
    pavilion,
    table: proportions.table * width,
    culet: pavilion === 0 ? 0 : culet,
    corners,
  };
}

/** What the pavilion narrows down to: the width of a flat culet and where its middle lies, or a point, or a keel along x. */
function keelOf(corners: readonly Point3[]): { readonly keel: Point2; readonly culet: number } {
  const lowest = Math.min(...corners.map(([, , z]) => z));
  const low = corners.filter(([, , z]) => z < lowest + AS_LOW);
  const culet = 2 * Math.max(...low.map(([, y]) => Math.abs(y)));
  const ridge = culet > AS_LOW ? low : corners.filter(([, y, z]) => Math.abs(y) < AS_LOW && z < KEEL_PART * lowest);
  const xs = ridge.map(([x]) => x);
  return { keel: [Math.min(...xs) + culet / 2, Math.max(...xs) - culet / 2], culet };
}
