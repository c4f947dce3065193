/**
 * What is measured on the flat pattern: lines, gaps, islands, grooves; and the beads.
 */

import type { Point2 } from "../../base/math/point.js";
import { RULES, type RuleName } from "../../design/rules/rule-set.js";
import { boxRing, ringBox } from "../../flat/box.js";
import { type GridRegion, offset, ringArea, subtract } from "../../flat/polygons.js";
import type { Pattern } from "../../pattern/laid-out.js";
import { type FlatArt, type FlatArtOptions, flatArt } from "../details/flat-art.js";
import { type NarrowPlace, narrowest } from "../details/narrow.js";
import { flatPlace, narrowedPattern } from "../details/narrowed-pattern.js";
import { type JudgedPiece, type Measured, type Place, worst } from "./piece.js";

type ArtRule = Extract<RuleName, "line" | "gap" | "island" | "post" | "groove" | "groove-depth" | "bead">;

export type ArtMeasures = Readonly<Record<ArtRule, Measured | undefined>>;

/** Limits up to which is looked, in each rule's unit: what is kept by far is not measured. */
export type ArtLimits = Readonly<Record<"line" | "gap" | "groove" | "groove-depth", number>>;

/** Places that are told of each. */
const PLACES = 10;

/** What the art measures; on a band that tapers the worse of what it measures at the top and where the band is narrowest. */
export function measureArt(piece: JudgedPiece, limits: ArtLimits): ArtMeasures {
  const { pattern, profile, wrap } = piece;
  const measures = measureFlat(piece, pattern, limits, { around: wrap.round, seatLength: profile.seatLength });
  const narrow = narrowedPattern(pattern, profile, wrap);
  if (narrow === undefined) return measures;
  const there = measureFlat(piece, narrow.pattern, limits, {
    around: wrap.round * narrow.along,
    seatLength: profile.seatLength * narrow.across,
  });
  const worse = (rule: ArtRule): Measured | undefined => {
    const [here, other] = [measures[rule], there[rule]];
    if (rule === "bead" || other === undefined) return here;
    if (worst(RULES[rule].keep, [here, other]) === here) return here;
    const back = (place: Place): Place => ("flat" in place ? { flat: flatPlace(place.flat, narrow, wrap) } : place);
    return { ...other, places: other.places.map(back) };
  };
  return {
    line: worse("line"),
    gap: worse("gap"),
    island: worse("island"),
    groove: worse("groove"),
    post: worse("post"),
    "groove-depth": worse("groove-depth"),
    bead: worse("bead"),
  };
}

function measureFlat(piece: JudgedPiece, pattern: Pattern, limits: ArtLimits, size: FlatArtOptions): ArtMeasures {
  const { profile } = piece;
  const art = flatArt(pattern, size);
  const width = (region: GridRegion, limit: number) => narrowWidth(art, region, limit);
  const railed = profile.rails !== undefined;
  const sunk = art.sunk.flatMap(({ region }) => region);
  return {
    line: width(art.raised, limits.line),
    gap: art.raised.length === 0 ? undefined : width(besides(art, art.raised, railed), limits.gap),
    island: smallestIsland(art),
    post: mostSlender(art),
    groove: width(sunk, limits.groove),
    "groove-depth": deepest(art, railed, limits["groove-depth"]),
    bead: smallestBead(piece),
  };
}

function narrowWidth(art: FlatArt, region: GridRegion, limit: number): Measured | undefined {
  const found = narrowest(region, limit, { scale: art.grid.scale, within: art.core });
  if (found === undefined) return undefined;
  const more = found.tip ? { more: "half a millimetre from the point that it runs out to" } : {};
  return { figure: found.width, places: placesOf(art, found.places), ...more };
}

function placesOf({ start }: FlatArt, places: readonly NarrowPlace[]): Place[] {
  return places.slice(0, PLACES).map(({ at: [u, v] }) => ({ flat: [u + start, v] }));
}

/** How far a band without rails goes on beyond its seat, mm: no gap is there. */
const BEYOND = 5;

/** Gaps narrower than twice this are closed, mm: no printer and no mould shows them. Chosen. */
const HAIRLINE = 5e-3;

/** What of the seat is not in a region; rails close it on both sides. */
function besides({ grid, length, halfSeat }: FlatArt, region: GridRegion, railed: boolean): GridRegion {
  const reach = Math.round((railed ? halfSeat : halfSeat + BEYOND) * grid.scale);
  const seat = boxRing({ left: 0, right: Math.round(length * grid.scale), low: -reach, high: reach });
  const hairline = HAIRLINE * grid.scale;
  return offset(offset(subtract([seat], region), -hairline, "miter", hairline), hairline, "miter", hairline);
}

/** The smallest part that stands alone and lies whole within the span. */
function smallestIsland(art: FlatArt): Measured | undefined {
  const whole = islandsOf(art, art.raised);
  if (whole.length === 0) return undefined;
  const [{ across }] = whole;
  const alike = whole.filter((one) => one.across < across * ALIKE);
  return { figure: across, places: placedAt(art, alike) };
}

/** The part that is highest for its diameter: each height's islands, as they stand on lower ones too. */
function mostSlender(art: FlatArt): Measured | undefined {
  const slender = art.levels.flatMap(({ height, region }): Measured[] => {
    const [least, ...others] = islandsOf(art, region);
    if (least === undefined) return [];
    const alike = [least, ...others].filter((one) => one.across < least.across * ALIKE);
    const more = `${height.toFixed(2)} mm high and ${least.across.toFixed(2)} mm across`;
    return [{ figure: height / least.across, places: placedAt(art, alike), more }];
  });
  return worst("at most", slender);
}

interface Island {
  readonly at: Point2;
  /** Diameter of the circle of its area, mm. */
  readonly across: number;
}

/** The parts of a region that lie whole within the span, each once, smallest first. */
function islandsOf({ grid: { scale }, core, length }: FlatArt, region: GridRegion): Island[] {
  return region
    .filter((ring) => ringArea(ring) > 0)
    .map((ring) => ({ box: ringBox(ring), area: ringArea(ring) / scale ** 2 }))
    .filter(({ box: { left, right } }) => left > 0 && right < Math.round(length * scale))
    .map(({ box: { left, right, low, high }, area }) => ({
      at: [(left + right) / 2 / scale, (low + high) / 2 / scale] as const,
      across: 2 * Math.sqrt(area / Math.PI),
    }))
    .filter(({ at: [u] }) => u >= core[0] && u < core[1])
    .sort((a, b) => a.across - b.across);
}

function placedAt({ start }: FlatArt, islands: readonly Island[]): Place[] {
  return islands.slice(0, PLACES).map(({ at: [u, v] }) => ({ flat: [u + start, v] as const }));
}

/** Islands up to this much larger than the smallest are told beside it. */
const ALIKE = 1.05;

/** The gap or sunk line that is deepest for its width. */
function deepest(art: FlatArt, railed: boolean, limit: number): Measured | undefined {
  const grooves = [
    ...art.levels.map(({ height, region }) => ({ depth: height, region: besides(art, region, railed) })),
    ...art.sunk,
  ];
  return grooves
    .flatMap(({ depth, region }): Measured[] => {
      const found = narrowest(region, depth / limit, { scale: art.grid.scale, within: art.core, tips: false });
      if (found === undefined) return [];
      const more = `${depth.toFixed(2)} mm deep and ${found.width.toFixed(2)} mm wide`;
      return [{ figure: depth / found.width, places: placesOf(art, found.places), more }];
    })
    .reduce<Measured | undefined>(
      (most, one) => (most === undefined || one.figure > most.figure ? one : most),
      undefined,
    );
}

function smallestBead({ runs, beads }: JudgedPiece): Measured | undefined {
  if (runs.length === 0 || beads.length === 0) return undefined;
  const smallest = beads.reduce((least, bead) => (bead.radius < least.radius ? bead : least));
  const run = runs.find(({ diameterMin }) => Math.abs(diameterMin - 2 * smallest.radius) < SAME_DIAMETER);
  return {
    figure: 2 * smallest.radius,
    places: [{ space: smallest.centre }],
    ...(run === undefined ? {} : { more: `in ${run.run}` }),
  };
}

/** Rounding, mm. */
const SAME_DIAMETER = 1e-6;
