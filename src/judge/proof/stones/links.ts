/**
 * What is cut away between two round hollows that leave less than a leaf of metal between them.
 */
import { vec3 } from "gl-matrix";
import { below } from "./span.js";
import type { StoneView } from "./stone-view.js";
import { type Axes, lineIn } from "./through.js";
import { LEAST_LEAF, ROOM } from "./told.js";
import { keptPieces, type ToldBody } from "./told-body.js";

/** Links end at even places across, so their ends are told to this, mm. */
const ENDS = 0.04;

/** Into either hollow they go on by this, mm. */
const INTO = 0.04;

/** What is grown by the tolerance lies within that beside a link, mm (chosen). */
const BESIDE = 0.35;

export function linkBodies(views: readonly StoneView[]) {
  const bodies: ToldBody[] = [];
  const untold: { readonly centre: readonly [number, number, number]; readonly radius: number }[] = [];
  if (views[0].placed.setting.ready === "pilot") return { bodies, untold };
  for (const [i, a] of views.entries()) {
    for (const b of views.slice(i + 1)) {
      const far = vec3.distance(a.placed.at, b.placed.at);
      if (far > a.length + b.length) continue;
      if (a.radius !== undefined && b.radius !== undefined) {
        if (far < a.radius + b.radius + 2 * ROOM + LEAST_LEAF) bodies.push(roundLink(a, b));
      } else {
        const [x, y, z] = vec3.lerp([0, 0, 0], a.placed.at, b.placed.at, 1 / 2);
        untold.push({ centre: [x, y, z], radius: a.width });
      }
    }
  }
  return { bodies, untold };
}

function roundLink(a: StoneView, b: StoneView): ToldBody {
  const out = vec3.normalize([0, 0, 0], vec3.add([0, 0, 0], a.placed.out, b.placed.out));
  const way = vec3.subtract([0, 0, 0], b.placed.at, a.placed.at);
  const along = vec3.normalize([0, 0, 0], vec3.scaleAndAdd([0, 0, 0], way, out, -vec3.dot(way, out)));
  const across = vec3.cross([0, 0, 0], out, along);
  const distance = vec3.dot(way, along);
  const lean = vec3.dot(vec3.subtract([0, 0, 0], b.placed.out, a.placed.out), along);
  const at = vec3.scaleAndAdd(
    [0, 0, 0],
    vec3.lerp([0, 0, 0], a.placed.at, b.placed.at, 1 / 2),
    out,
    (lean * distance) / 8,
  );
  const [ra, rb] = [(a.radius ?? 0) + ROOM, (b.radius ?? 0) + ROOM];
  const middle = (ra - rb) / 2;
  const axes = { at, along, across, out } as unknown as Axes;
  const reach = linkReach(ra, rb, distance);
  // The larger of both circles, twice: where these part by a leaf no link reaches.
  const far = Math.sqrt(Math.max(0, Math.max(ra, rb) ** 2 - ((distance - LEAST_LEAF) / 2) ** 2));
  return {
    kind: "hollows",
    sphere: { centre: axes.at, radius: 2 * (a.width + b.width) },
    axis: { at: axes.at, out: axes.out, radius: far + Math.abs(middle) + BESIDE },
    line: (through) => lineIn(axes, through),
    pieces: keptPieces((grown) => {
      const half = LEAST_LEAF / 2 + INTO + ROOM + grown;
      const wide = reach - (grown < 0 ? ENDS : 0) + Math.max(0, grown);
      const clips = [
        below(1, 0, 0, middle + half),
        below(-1, 0, 0, half - middle),
        below(0, 1, 0, wide),
        below(0, -1, 0, wide),
      ];
      return [{ low: -(a.band + b.band) / 2 - grown, high: Number.POSITIVE_INFINITY, clips }];
    }),
  };
}

/** Halvings that find how far across a link goes: to far below what its ends are told to. */
const HALVINGS = 20;

/** How far across two circles so far apart leave less than a leaf between them. */
function linkReach(ra: number, rb: number, distance: number): number {
  const leaf = (y: number) => distance - Math.sqrt(ra * ra - y * y) - Math.sqrt(rb * rb - y * y);
  let [low, high] = [0, Math.min(ra, rb)];
  if (leaf(high) < LEAST_LEAF) return high;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (leaf(middle) < LEAST_LEAF) low = middle;
    else high = middle;
  }
  return low;
}
