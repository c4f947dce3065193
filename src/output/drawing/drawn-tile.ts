/**
 * The flat tile: what a drawing of the pattern shows, without building the ring.
 */

import { type Fit, FULL_COVER, type LaneFit } from "../../band/fit/fit.js";
import { laneFits } from "../../band/fit/fit-lanes.js";
import type { Profile } from "../../band/profile/profile.js";
import { type Develop, developAt } from "../../band/surface/develop.js";
import { measureStretch, type StretchReport } from "../../band/surface/stretch.js";
import type { BandSurface } from "../../band/surface/surface.js";
import { AnnuletError, type Warning } from "../../base/errors.js";
import { type FriezeGroup, type FriezeName, friezeGroup } from "../../base/frieze/symmetry.js";
import type { Point2 } from "../../base/math/point.js";
import type { Bead } from "../../beads/bead.js";
import type { BeadRunReport } from "../../beads/bead-report.js";
import type { PlacedRuns } from "../../beads/place-runs.js";
import { type Lane, lanesOf, noSuchLane } from "../../design/lanes.js";
import type { PatternSpec } from "../../design/pattern/pattern.js";
import type { Design } from "../../design/schema.js";
import type { Pattern } from "../../pattern/laid-out.js";
import { oneTile, spansOf } from "../../pattern/spans.js";
import { workSteps } from "../../pattern/work-steps.js";
import type { FlatBody } from "../../relief/flat-body.js";
import { outlineAbove } from "../../relief/image/raise-field.js";
import { type FlatRings, type TileOutlinesOptions, tileOutlines } from "../../relief/tile-outlines.js";
import type { ResolvedSize } from "../../size/size.js";

/** The parts of a pattern that are drawn as tiles of their own. */
export type TilePart = "tile" | "medallion" | "ornament";

/** Which tiles are shown, and how many. */
export interface TileQuestion {
  /** What is shown: the repeated tile, the medallion or the ornament at the pattern's ends. Default the tile. */
  readonly part?: TilePart;
  /** Name of the lane that is shown. Default the first, the lowest. */
  readonly lane?: string;
  /** Tiles side by side, 1 to those of a span. Default one cycle: 1 where tiles do not vary. */
  readonly tiles?: number;
}

/** A bead on the flat tile; lengths in mm. */
export interface FlatBead {
  /** (u, v) of the centre: its true place in space, mapped back on to the flat pattern. */
  readonly centre: Point2;
  readonly diameter: number;
  /** Whether it stands on the last tile's right border and is counted with the tile that follows. */
  readonly next: boolean;
}

/** A raised, sunk or pierced body on the tiles. */
export interface FlatRegion {
  /** Names of the regions in it. */
  readonly names: readonly string[];
  readonly mode: "raised" | "sunk" | "pierced";
  /**
   * mm above the seat; below it, negative, for what is sunk; undefined for what goes through. A height map is several
   * regions of its name: what of it reaches each of these heights.
   */
  readonly height: number | undefined;
  readonly rings: FlatRings;
}

/** The pattern of a design over one or more tiles: u from 0, v from the seat's middle; lengths in mm. */
export interface FlatTile extends DrawnTile {
  readonly warnings: readonly Warning[];
}

/** The same without what was said while it was worked out. */
export interface DrawnTile {
  readonly name: string;
  readonly part: TilePart;
  readonly group: FriezeGroup;
  readonly size: ResolvedSize;
  /** Of a medallion or an ornament with its own as the one tile. */
  readonly fit: Omit<Fit, "lanes">;
  /** Name of the lane; empty where the pattern has none. */
  readonly lane: string;
  /** Tiles round the band, and those that a medallion takes the place of. */
  readonly round: { readonly repeats: number; readonly medallion: number };
  /** Across the seat, or across the lane, mm. */
  readonly seatLength: number;
  /** Tiles shown. */
  readonly tiles: number;
  /** In the order in which they cover each other: what is cut comes after what it cuts, lower before higher. */
  readonly regions: readonly FlatRegion[];
  /** Beads with their centres on the tiles or their borders; those on the rails are beside the seat and not here. */
  readonly beads: readonly FlatBead[];
  /** What each run comes to on the whole ring. */
  readonly runs: readonly BeadRunReport[];
  readonly lambda: StretchReport;
  /** Height of the relief's top above the seat, and the surface there laid flat as it measures. */
  readonly top: { readonly height: number; readonly develop: Develop };
}

/** What a flat tile is drawn from. */
export interface TileSource {
  readonly design: Pick<Design, "name" | "pattern">;
  readonly size: ResolvedSize;
  readonly fit: Fit | undefined;
  readonly profile: Profile;
  readonly pattern: Pattern;
  readonly wrap: BandSurface;
  readonly beads: PlacedRuns;
}

/**
 * Draws tiles of a design that was laid out.
 *
 * @throws AnnuletError `no-pattern`; `no-such-lane`; `no-such-part`; `tiles-out-of-range`
 */
export function drawFlatTile(source: TileSource, question: TileQuestion = {}): DrawnTile {
  const { design, size, fit, profile, pattern, wrap, beads: placed } = source;
  if (fit === undefined || design.pattern === undefined) throw noPatternError();
  const { lane, fit: own } = chooseLane(design.pattern, fit, question.lane, profile.seatLength);
  const part = choosePart(lane, own, question.part ?? "tile");
  const tiles = question.tiles ?? Math.min(part.fit.cycle, part.most);
  const shown = wrap.keeps && !wrap.revolved ? nearTop(part, own, tiles) : part;
  requireTiles(tiles, shown.most);
  const onRail = new Set(placed.runs.filter((run) => run.onRail).flatMap((run) => run.beads));
  const { v, height: seatLength } = own;
  const stretch = { tileWidth: shown.fit.tileWidth, seatLength, tiles, origin: [shown.origin, v] } as const;
  return {
    name: design.name,
    part: shown.part,
    group: friezeGroup(shown.symmetry),
    size,
    fit: shown.fit,
    tiles,
    lane: lane.name,
    round: { repeats: own.repeats, medallion: own.medallion },
    seatLength,
    regions: flatRegions(pattern, stretch),
    beads: placed.beads
      .filter((bead) => !onRail.has(bead))
      .flatMap((bead) => flatBeads(bead, wrap, { ...shown, lane: own }, tiles)),
    runs: placed.reports,
    lambda: measureStretch(wrap, pattern.height),
    top: { height: pattern.height, develop: developAbout(v, developAt(wrap, pattern.height)) },
  };
}

/** Of each lane one tile, or one cycle, all tiles of a span, and its other parts. */
export function drawLanes(source: TileSource): LaneTiles[] {
  const { lanes = [] } = source.fit ?? {};
  const names = lanes.length === 0 ? [undefined] : lanes.map(({ name }) => name);
  return names.map((lane) => {
    const tile = drawFlatTile(source, { lane });
    const { parts, tiles } = partsOf(source, lane);
    return {
      tile,
      unrolled: drawFlatTile(source, { lane, tiles }),
      others: parts.map((part) => drawFlatTile(source, { lane, part })),
    };
  });
}

/** The parts that a lane has beside its tiles, and the tiles of one of its spans. */
function partsOf({ design, fit, profile }: TileSource, name: string | undefined) {
  if (fit === undefined || design.pattern === undefined) throw noPatternError();
  const { lane, fit: own } = chooseLane(design.pattern, fit, name, profile.seatLength);
  const parts: TilePart[] = [];
  if (lane.medallion !== undefined) parts.push("medallion");
  if (lane.ends?.form === "ornament") parts.push("ornament");
  return { parts, tiles: choosePart(lane, own, "tile").most };
}

/** One tile, and all of them, of a lane. */
export interface LaneTiles {
  readonly tile: DrawnTile;
  readonly unrolled: DrawnTile;
  /** Its medallion and the ornament at its ends, where it has them. */
  readonly others: readonly DrawnTile[];
}

/** The pattern's bodies from step to step of its work: what is raised in a step the lowest first. */
function flatRegions({ bodies }: Pattern, stretch: TileOutlinesOptions): FlatRegion[] {
  // Of a plain zone that is filled nothing is drawn: it only laps the tiles at the ends.
  const drawn = bodies.filter(({ filling }) => filling !== true);
  const steps = workSteps(drawn, ({ mode }) => mode).map(({ op, items }) => {
    const regions = items.flatMap((body) => regionsOf(body, stretch));
    return op === "add" ? regions.sort((a, b) => (a.height ?? 0) - (b.height ?? 0)) : regions;
  });
  // What stands in another part of the pattern does not show.
  return steps.flat().filter(({ rings }) => rings.length > 0);
}

function regionsOf(body: FlatBody, stretch: TileOutlinesOptions): FlatRegion[] {
  const { mode, names } = body;
  if (mode === "pierced") return [{ names, mode, height: undefined, rings: tileOutlines(body, stretch) }];
  const sign = mode === "sunk" ? -1 : 1;
  return contoursOf(body, stretch).map((one): FlatRegion => ({ ...one, mode, height: sign * one.height }));
}

/** Heights at which a height map is drawn, from its outline up: as many as shades of one colour are told apart. */
const CONTOURS = 5;

/** A body's outline; of a height map, what of it reaches each of several heights, the lowest first. */
function contoursOf({ names, height, surface, outline, seam, period }: FlatBody, stretch: TileOutlinesOptions) {
  const drawn = (at: number, polygons: FlatBody["outline"]) => {
    return { names, height: at, rings: tileOutlines({ outline: polygons, seam, period }, stretch) };
  };
  if (surface === undefined) return [drawn(height, outline)];
  const heights = Array.from({ length: CONTOURS - 1 }, (_, i) => (height * (i + 1)) / CONTOURS);
  const lowest = surface.top.points.reduce((least, [, , h]) => Math.min(least, h), height);
  const inner = heights.filter((at) => at > lowest).map((at) => drawn(at, outlineAbove(surface.top, at)));
  return [drawn(lowest, outline), ...inner];
}

/** A bead this near to a tile's border stands on it, mm: lines meet their images to within 5 µm. */
const ON_BORDER = 5e-3;

/** The bead where it shows on the tiles: on both ends where they meet. */
function flatBeads(
  { centre, radius }: Bead,
  wrap: BandSurface,
  { fit, most, goesOn, origin, lane }: Shown & { readonly lane: LaneFit },
  tiles: number,
): FlatBead[] {
  const [u, across] = wrap.inverse(...centre);
  const v = across - lane.v;
  // One lane among others shows what stands on it alone.
  if (lane.name !== "" && Math.abs(v) > lane.height / 2 + ON_BORDER) return [];
  const { round } = wrap;
  const end = tiles * fit.tileWidth;
  const followed = goesOn || tiles < most;
  return [u - origin - round, u - origin, u - origin + round]
    .filter((at) => at >= -ON_BORDER && at <= end + ON_BORDER)
    .map((at) => ({ centre: [at, v], diameter: 2 * radius, next: followed && at > end - ON_BORDER }));
}

/** The surface with v from the lane's middle line. */
function developAbout(middle: number, develop: Develop): Develop {
  const [, zero] = develop(0, middle);
  return (u, v) => {
    const [x, y] = develop(u, v + middle);
    return [x, y - zero];
  };
}

/** @throws AnnuletError `no-such-lane` */
function chooseLane(
  pattern: PatternSpec,
  fit: Fit,
  name: string | undefined,
  height: number,
): { lane: Lane; fit: LaneFit } {
  const lanes = lanesOf(pattern);
  const at = name === undefined ? 0 : lanes.findIndex((lane) => lane.name === name);
  if (at === -1 || name === "") throw noSuchLane(name, lanes, "lane");
  return { lane: lanes[at], fit: laneFits(fit, height)[at] };
}

/** A part of the pattern as tiles. */
interface Shown {
  readonly part: TilePart;
  readonly symmetry: FriezeName;
  readonly fit: Omit<Fit, "lanes">;
  /** u of its first tile, mm. */
  readonly origin: number;
  /** Tiles that it has, and whether the first follows on the last. */
  readonly most: number;
  readonly goesOn: boolean;
}

/** @throws AnnuletError `no-such-part` */
function choosePart({ symmetry, medallion, ends }: Lane, fit: LaneFit, part: TilePart): Shown {
  const { fit: span, starts, medallion: place } = spansOf(fit);
  const once = { part, most: 1, goesOn: false };
  if (part === "tile") {
    const goesOn = fit.cover === FULL_COVER && fit.medallion === 0;
    return { part, symmetry, fit: { ...fit, cycle: span.cycle }, origin: starts[0], most: span.repeats, goesOn };
  }
  if (part === "medallion" && medallion !== undefined && place !== undefined) {
    return { ...once, symmetry: medallion.symmetry, fit: { ...fit, ...place.fit }, origin: place.start };
  }
  if (part === "ornament" && ends?.form === "ornament") {
    const own = { ...fit, ...oneTile(fit, ends.tiles) };
    return { ...once, symmetry: ends.symmetry, fit: own, origin: fit.repeats * fit.tileWidth };
  }
  throw new AnnuletError({
    code: "no-such-part",
    message: `the pattern has no ${part} to show`,
    value: part,
    allowed: "tile, or a medallion or an ornament that the design has",
  });
}

/**
 * Tiles near the top instead of those where the pattern begins, which may be cut off at the seat's edge; beside a medallion the
 * first is there.
 */
function nearTop(shown: Shown, { medallion }: LaneFit, tiles: number): Shown {
  const { cycle, tileWidth } = shown.fit;
  if (shown.part !== "tile" || medallion > 0 || tiles >= shown.most) return shown;
  const skipped = cycle * Math.floor((shown.most - tiles) / 2 / cycle);
  return { ...shown, origin: shown.origin + skipped * tileWidth };
}

function requireTiles(tiles: number, most: number): void {
  if (Number.isInteger(tiles) && tiles >= 1 && tiles <= most) return;
  throw new AnnuletError({
    code: "tiles-out-of-range",
    message: `${tiles} tiles cannot be shown of a pattern with ${most}`,
    value: tiles,
    allowed: `a whole number from 1 to ${most}`,
  });
}

function noPatternError(): AnnuletError {
  return new AnnuletError({
    code: "no-pattern",
    message: "the design has no pattern, so there is no tile to show",
    path: "pattern",
    hint: 'add "pattern": {} for square tiles',
  });
}
