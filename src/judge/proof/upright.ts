/**
 * What a column that stands along the seat's normal holds of a body whose heights go along the radius: asked place by place,
 * each by its own foot on the seat, since a leaning column crosses walls.
 */
import type { SurfaceLine } from "../../band/surface/surface.js";
import type { Stand } from "./columns.js";
import type { Heights } from "./height-index.js";
import { added, cutOut, type Held, type Stretch } from "./held.js";
import { type Found, footAt, placeAt, stepsAlong } from "./walk-column.js";

/** Places that are asked along a column (chosen: 0.05 mm apart on what is 1 mm high). */
const PLACES = 24;

export interface UprightColumn {
  readonly mode: "raised" | "sunk";
  readonly line: SurfaceLine;
  readonly stand: Stand;
  /** From where to where along the column the body may reach, mm. */
  readonly stretch: Stretch;
  /** Heights over v, of what is sunk depths; undefined beside the body. */
  readonly heightsAt: (v: number) => Heights | undefined;
}

/** How far a place is within the body: below its least and its greatest top; beside it neither. */
interface Within extends Found {
  readonly surely: number;
  readonly maybe: number;
}

/** A column with an upright body added to it or cut out of it. */
export function withUpright(held: Held, column: UprightColumn): Held {
  const change = column.mode === "raised" ? added : cutOut;
  let result = held;
  for (const [before, here] of stepsAlong(column.stretch, PLACES, (t) => withinAt(column, t))) {
    const maybe = stretchOf(before, here, "maybe");
    if (maybe !== undefined) result = change(result, surelyIn(before, here, maybe), maybe);
  }
  return result;
}

function withinAt({ mode, line, stand, heightsAt }: UprightColumn, t: number): Within {
  const beside = { t, surely: Number.NEGATIVE_INFINITY, maybe: Number.NEGATIVE_INFINITY };
  const [w, r] = placeAt(stand, t);
  const v = footAt(line, w);
  const heights = heightsAt(v);
  if (heights === undefined) return beside;
  const h = (r - line.point(v, 0)[1]) * line.normal(v)[1] * (mode === "raised" ? 1 : -1);
  return { t, surely: heights.low - h, maybe: heights.high - h };
}

/** What of the way from one place to the next lies within; undefined where nothing does. At a wall all of it may. */
function stretchOf(a: Within, b: Within, which: "surely" | "maybe"): Stretch | undefined {
  const [one, other] = [a[which], b[which]];
  if (one <= 0 && other <= 0) return undefined;
  if (one > 0 && other > 0) return [a.t, b.t];
  const jumps = !Number.isFinite(one) || !Number.isFinite(other);
  if (jumps) return which === "maybe" ? [a.t, b.t] : undefined;
  const root = a.t + ((b.t - a.t) * one) / (one - other);
  return one > 0 ? [a.t, root] : [root, b.t];
}

/** The same for sure; where it is nothing, an empty span at the end that lies within, if one does. */
function surelyIn(a: Within, b: Within, maybe: Stretch): Stretch {
  const surely = stretchOf(a, b, "surely");
  if (surely !== undefined) return surely;
  const at =
    a.maybe > 0 && b.maybe <= 0 ? maybe[0] : b.maybe > 0 && a.maybe <= 0 ? maybe[1] : (maybe[0] + maybe[1]) / 2;
  return [at, at];
}
