/**
 * The part of a shape on one side of a line, which goes on straight beyond its ends.
 */

import { AnnuletError } from "../../base/errors.js";
import type { Point2 } from "../../base/math/point.js";
import { findCrossing } from "../../base/math/polygon.js";
import { TURN } from "../../base/units.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import type { TrimShape } from "../../design/shapes/trim.js";
import { fromGrid, type GridPath, type GridPoint } from "../../flat/grid.js";
import { clipLinesTo, intersect } from "../../flat/polygons.js";
import { LEAF_MORE_TILES, readArt } from "../read-art.js";
import { requireSomething } from "./rules.js";
import type { ShapeFrame, ShapeNode } from "./shape-node.js";

export const trimShape: ShapeNode<TrimShape<ShapeSpec>> = {
  draw({ trim, of }, frame) {
    const drawn = frame.draw(of, ".of");
    const paths = [...drawn.closed, ...drawn.open];
    const side = sideOf(readLine(trim.along, frame), trim.keep, paths, frame);
    frame.budget.spendUnion([...paths, side], frame.where);
    const kept = {
      closed: intersect(drawn.closed, [side]),
      open: clipLinesTo(drawn.open, [side], "inside"),
    };
    return requireSomething(kept, frame.place(".trim"), `nothing of the shape lies ${trim.keep} of the line`);
  },
};

function readLine(along: string, frame: ShapeFrame): GridPath {
  const where = frame.place(".trim.along");
  const { closed, open } = readArt(
    frame.strip,
    { path: along, unit: frame.unit },
    frame.tolerance,
    where,
    LEAF_MORE_TILES,
  );
  frame.budget.spend(open, where);
  if (closed.length === 0 && open.length === 1) return open[0];
  throw new AnnuletError({
    code: "trim-line",
    message: "a shape is cut along one open line",
    path: where,
    value: along,
    allowed: "path data with one M and no Z",
  });
}

/** Radius of the circle that closes the kept side, over the farthest point's distance: its chords stay outside that. */
const ROOM = 2;

/** Corners of that circle. */
const CIRCLE_CORNERS = 16;

/** Everything on the kept side, as far as the shape reaches. */
function sideOf(line: GridPath, keep: "left" | "right", paths: readonly GridPath[], frame: ShapeFrame): GridPath {
  const walk = keep === "left" ? line : [...line].reverse();
  const centre = walk[0];
  const far = [...paths, walk]
    .flat()
    .reduce((most, { x, y }) => Math.max(most, Math.hypot(x - centre.x, y - centre.y)), 0);
  const radius = ROOM * far;
  const start = prolong(walk[1], walk[0], centre, radius);
  const end = prolong(walk[walk.length - 2], walk[walk.length - 1], centre, radius);
  const angle = ({ x, y }: GridPoint) => Math.atan2(y - centre.y, x - centre.x);
  const sweep = (angle(start) - angle(end) + TURN) % TURN;
  const arc = Array.from({ length: CIRCLE_CORNERS - 1 }, (_, i): GridPoint => {
    const at = angle(end) + (sweep * (i + 1)) / CIRCLE_CORNERS;
    return { x: Math.round(centre.x + radius * Math.cos(at)), y: Math.round(centre.y + radius * Math.sin(at)) };
  });
  const side = [start, ...walk, end, ...arc];
  refuseCrossing(fromGrid(frame.strip.grid, side), frame);
  return side;
}

/** Where the ray from `from` through `to` meets the circle. */
function prolong(from: GridPoint, to: GridPoint, centre: GridPoint, radius: number): GridPoint {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [x, y] = [to.x - centre.x, to.y - centre.y];
  const along = -(x * dx + y * dy);
  const reach = along + Math.sqrt(along ** 2 + radius ** 2 - x ** 2 - y ** 2);
  return { x: Math.round(to.x + reach * dx), y: Math.round(to.y + reach * dy) };
}

function refuseCrossing(side: readonly Point2[], frame: ShapeFrame): void {
  const crossing = findCrossing(side);
  if (crossing === undefined) return;
  throw new AnnuletError({
    code: "trim-line",
    message: "the line crosses itself, or would where it goes on beyond its ends, so that it has no two sides",
    path: frame.place(".trim.along"),
    allowed: "a line whose straight prolongations do not meet it or each other",
    hint: "draw the line on until its ends point apart",
  });
}
