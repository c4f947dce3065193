/**
 * A stone's hollow in closed form: a wall along the girdle, a cone to the pavilion's angle, a pilot, an opening.
 */
import type { Piece } from "./span.js";
import { inCone } from "./span.js";
import type { DrawnTogether, StoneView } from "./stone-view.js";
import { BELOW_CULET, bearingOpen, crownOpen, ROOM } from "./told.js";

export interface HollowSizes {
  /** Share of the width that the pilot has. */
  readonly pilot: number;
  /** Where the surface and the bore lie, in the stone's coordinates. */
  readonly bore: number;
  /** What lies higher is not its own, mm. */
  readonly above: number;
  /** Whether it narrows again over the girdle as the crown does. */
  readonly crowned?: boolean;
}

/** Depth of the cone on which the pavilion lies, from its upper edge to the keel. */
function depthOf({ width, pavilion, placed }: StoneView): number {
  return pavilion * ((width / 2 + ROOM) / ((width * (1 - placed.stone.proportions.culet)) / 2));
}

/** Height of the bearing's upper edge: where every corner of the pavilion keeps its room from the cone. */
export function edgeOf(view: StoneView): number {
  return view.pavilion === 0 ? -view.band - ROOM : view.coneEdge(ROOM, depthOf(view));
}

/** Height at which a hollow's cone is drawn together to a share of its upper outline. */
export function heightOfWidth(view: StoneView, share: number): number {
  return edgeOf(view) - (1 - share) * depthOf(view);
}

/** An opening's tool goes so far beyond the bore, mm (chosen: farther than any bore falls away under a stone). */
const BEYOND_BORE = 1;

/** Widths as shares of what the hollow's upper outline has. */
function shareOf({ width }: StoneView, size: number): number {
  return (size * width) / (width + 2 * ROOM);
}

/** A stone's hollow, grown by so many mm. */
export function hollowPieces(view: StoneView, sizes: HollowSizes, grown: number): Piece[] {
  const { pavilion, placed } = view;
  const isFlat = pavilion === 0 && placed.through === false;
  return [
    ...(placed.setting.ready === "pilot" ? [] : bearingPieces(view, sizes, grown)),
    ...(isFlat ? [] : pilotPieces(view, sizes, grown)),
  ];
}

/** The wall along the girdle, and the cone on which the pavilion lies. */
function bearingPieces(view: StoneView, { pilot, above, crowned = false }: HollowSizes, grown: number): Piece[] {
  const { placed, keel } = view;
  const depth = depthOf(view);
  const from = edgeOf(view) - (grown > 0 ? bearingOpen(placed.stone) : 0) - grown;
  const wall: Piece = { low: from, high: above + grown, clips: [view.beside(ROOM + grown)] };
  const walls = crowned ? underCrown(view, wall, grown) : [wall];
  if (depth === 0) return walls;
  const cone = { by: ROOM, keel, share: 1 - from / depth, slope: 1 / depth, grown };
  const low = from - (1 - shareOf(view, pilot)) * depth;
  return [...walls, { low, high: Math.min(from, above + grown), clips: [view.drawnTogether(cone)] }];
}

/** What of a wall lies below the crown's cone one room away, or over the table. */
function underCrown(view: StoneView, wall: Piece, grown: number): Piece[] {
  const { width, crown, placed } = view;
  const { table } = placed.stone.proportions;
  const slope = crown / ((width * (1 - table)) / 2);
  const lift = ROOM * (Math.hypot(1, slope) - slope) + (grown > 0 ? crownOpen(placed.stone) : 0) + grown;
  const least = (table * width + 2 * ROOM) / (width + 2 * ROOM);
  const height = slope * (width / 2 + ROOM);
  const keel: DrawnTogether["keel"] = [0, 0];
  const cone = { by: ROOM, keel, share: 1 + lift / height, slope: -1 / height, grown };
  return [
    {
      ...wall,
      high: Math.min(wall.high, lift + (1 - least) * height),
      clips: [...wall.clips, view.drawnTogether(cone)],
    },
    { ...wall, clips: [view.drawnTogether({ by: ROOM, keel, share: Math.min(1, least), grown })] },
  ];
}

/** The pilot and, below it, the opening with its broken edge. */
function pilotPieces(view: StoneView, { pilot, bore, above }: HollowSizes, grown: number): Piece[] {
  const { width, band, pavilion, keel } = view;
  const culet = -band - pavilion;
  const floor = culet - Math.min(BELOW_CULET, (culet - bore) / 2);
  const narrow = (size: number, slope = 0) =>
    view.drawnTogether({ by: ROOM, keel, share: shareOf(view, size), slope: shareOf(view, slope), grown });
  const blind: Piece = { low: floor - grown, high: above + grown, clips: [narrow(pilot)] };
  const opening = openingOf(view, pilot);
  if (opening === undefined) return [blind];
  const { wide, edge, round } = opening;
  // The edge in the bore is broken at 45°, from here down.
  const broken = bore + Math.min(edge, (floor - bore) / 2);
  const middle = (keel[0] + keel[1]) / 2;
  const radius = (wide * width) / 2 + grown;
  const sides = round
    ? { straight: inCone(middle, radius, 0), flared: inCone(middle, radius + broken, -1) }
    : { straight: narrow(wide), flared: narrow(wide + (2 * broken) / width, -2 / width) };
  const low = bore - BEYOND_BORE;
  return [
    blind,
    { low, high: floor + grown, clips: [sides.straight] },
    { low, high: Math.min(broken, floor + grown), clips: [sides.flared] },
  ];
}

/** Share of the width, how far its edge is broken, mm, and whether it is round; undefined of what is closed below. */
function openingOf({ placed: { through, setting }, radius }: StoneView, pilot: number) {
  if (through === false) return undefined;
  const { size, edge, shape } =
    through === true ? { size: setting.pilot, edge: 0.1, shape: "round" as const } : through;
  const wide = Math.min(size ?? setting.pilot, setting.form === "bezel" ? pilot : 1);
  return { wide, edge, round: shape === "round" || radius !== undefined };
}
