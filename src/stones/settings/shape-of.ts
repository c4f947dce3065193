/**
 * The shape of a stone as settings see it, from how it is cut.
 */
import type { Point2 } from "../../base/math/point.js";
import { findCut } from "../../gems/cuts/catalogue.js";
import { outlinePoints } from "../../gems/outline.js";
import { heightsOf, type Stone } from "../../gems/stone.js";
import { stoneFacets } from "../../gems/stone-mesh.js";
import type { StoneShape } from "./stone-shape.js";

/** Points this near to the lowest are as low, mm: rounding. */
const AS_LOW = 1e-6;

/** @param tolerance how far the girdle's outline may lie inside the true one, mm */
export function shapeOf(stone: Stone, tolerance: number): StoneShape {
  const { cut, length, width, narrow, proportions } = stone;
  const { crown, girdle: band, pavilion } = heightsOf(stone);
  const { outline } = findCut(cut);
  const girdle = outlinePoints(outline({ length, width, ...(narrow === undefined ? {} : { narrow }) }), tolerance);
  const { points: corners } = stoneFacets(stone, tolerance);
  const lowest = Math.min(...corners.map(([, , z]) => z));
  const low = corners.filter(([, , z]) => z < lowest + AS_LOW);
  const culet = 2 * Math.max(0, ...low.map(([, y]) => Math.abs(y)));
  const xs = low.map(([x]) => x);
  const keel: Point2 = [Math.min(...xs) + culet / 2, Math.max(...xs) - culet / 2];
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
