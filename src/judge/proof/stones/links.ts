/**
 * What is cut away between two hollows that leave less than a leaf of metal between them.
 */
import { vec3 } from "gl-matrix";
import { acrossAt, axesBetween, halfPlanes, outlineSeen, pairsNear } from "./between-stones.js";
import { below } from "./span.js";
import type { StoneView } from "./stone-view.js";
import { type Axes, lineIn } from "./through.js";
import { LEAST_LEAF, ROOM } from "./told.js";
import { keptPieces, type ToldBody } from "./told-body.js";

/** Links end at even places across, so their ends are told to this, mm, or to so much of what is compared. */
const ENDS = 0.04;
const ENDS_SHARE = 1 / 64;

/** Into either hollow they go on by this, mm. */
const INTO = 0.04;

/** What is grown by the tolerance lies within that beside a link, mm (chosen). */
const BESIDE = 0.35;

export function linkBodies(views: readonly StoneView[]): ToldBody[] {
  if (views[0].placed.setting.ready === "pilot") return [];
  return pairsNear(views, ROOM + LEAST_LEAF).flatMap(([a, b]) => {
    const axes = axesBetween(a, b);
    const leaf = leafBetween(a, b, axes);
    return leaf === undefined ? [] : [linkBody(a, b, axes, leaf)];
  });
}

/** What lies between two hollows: from where to where across, how surely its ends are known, and along x where it is thinnest. */
interface Leaf {
  readonly from: number;
  readonly to: number;
  readonly ends: number;
  readonly middle: number;
}

/** Places across at which two hollows are compared. */
const PLACES = 256;

function leafBetween(a: StoneView, b: StoneView, axes: Axes & { readonly distance: number }): Leaf | undefined {
  const [spanA, spanB] = [a, b].map((view, i) => spanOf(view, axes, ((i === 0 ? -1 : 1) * axes.distance) / 2));
  const reach = Math.max(a.length, b.length) / 2 + ROOM;
  const near: { readonly y: number; readonly thick: number; readonly middle: number }[] = [];
  for (let i = 0; i <= PLACES; i++) {
    const y = reach * ((2 * i) / PLACES - 1);
    const [one, other] = [spanA(y), spanB(y)];
    if (one === undefined || other === undefined) continue;
    const thick = other[0] - one[1];
    if (thick < LEAST_LEAF) near.push({ y, thick, middle: (other[0] + one[1]) / 2 });
  }
  if (near.length === 0) return undefined;
  const { middle } = near.reduce((least, one) => (one.thick < least.thick ? one : least));
  const [from, to] = [near[0].y, near[near.length - 1].y];
  return { from, to, middle, ends: Math.max(ENDS, ENDS_SHARE * (to - from)) + (2 * reach) / PLACES };
}

/** From where to where along x a hollow goes, at a place across. */
function spanOf(
  view: StoneView,
  axes: Axes,
  middle: number,
): (y: number) => readonly [from: number, to: number] | undefined {
  if (view.radius === undefined) {
    const outline = halfPlanes(outlineSeen(view, ROOM, axes));
    return (y) => acrossAt(outline, y);
  }
  const wide = view.radius + ROOM;
  return (y) => {
    const half = Math.sqrt(wide * wide - y * y);
    return Number.isNaN(half) ? undefined : [middle - half, middle + half];
  };
}

function linkBody(a: StoneView, b: StoneView, axes: Axes, { from, to, ends, middle }: Leaf): ToldBody {
  const reach = Math.max(Math.abs(from), Math.abs(to));
  return {
    kind: "hollows",
    sphere: { centre: axes.at, radius: 2 * (a.width + b.width) + vec3.distance(a.placed.at, b.placed.at) },
    axis: { at: axes.at, out: axes.out, radius: reach + ends + Math.abs(middle) + BESIDE },
    line: (through) => lineIn(axes, through),
    pieces: keptPieces((grown) => {
      const half = LEAST_LEAF / 2 + INTO + ROOM + grown;
      const more = grown < 0 ? -ends : ends + grown;
      const clips = [
        below(1, 0, 0, middle + half),
        below(-1, 0, 0, half - middle),
        below(0, 1, 0, to + more),
        below(0, -1, 0, more - from),
      ];
      return [{ low: -(a.band + b.band) / 2 - grown, high: Number.POSITIVE_INFINITY, clips }];
    }),
  };
}
