/**
 * The lines that beads follow: on regions, and along paths of the tile.
 */

import type { ShapeDrawer } from "../art/shapes/draw-shape.js";
import { AnnuletError } from "../base/errors.js";
import { FORGET, type Remember } from "../base/memory.js";
import { radians, showLength } from "../base/units.js";
import type { TilesSpec } from "../design/cycle.js";
import type { BeadRunSpec } from "../design/pattern/bead-run.js";
import { PATTERN_DEFAULTS } from "../design/pattern/defaults.js";
import { boxRing, type GridBox, ringBox } from "../flat/box.js";
import type { Chain } from "../flat/chains.js";
import { clipLines } from "../flat/clip-lines.js";
import type { GridPath } from "../flat/grid.js";
import { partAtEdges } from "../flat/part-at-edges.js";
import { type GridRegion, shrink } from "../flat/polygons.js";
import { type RunLine, runLines } from "../flat/runs.js";
import { repeatsOf, type Strip, steps } from "../flat/strip.js";
import { linesWithinSeat } from "../flat/within-seat.js";
import { type Art, completeLines, type LineSource } from "../relief/art.js";
import { cutLines } from "../relief/compose-region.js";
import type { DrawnRegion } from "../relief/drawn-region.js";
import { carryingHeight, requireCarried } from "../relief/region-section.js";

/** A bead run as lines on the flat seat. */
export interface BeadLines {
  /** Name for messages and reports. */
  readonly run: string;
  /** Where it stands in the document. */
  readonly path: string;
  readonly lines: readonly RunLine[];
  /** How often the lines are repeated round the band. */
  readonly copies: number;
  readonly bead: BeadSize;
  /** mm above the seat of the surface that carries the beads. */
  readonly height: number;
}

/** Size and spacing of a run's beads. */
export interface BeadSize {
  /** mm */
  readonly diameter: number;
  /** Wanted spacing over diameter. */
  readonly pitch: number;
  readonly count: number | undefined;
  /** Share of the diameter below the surface. */
  readonly embed: number;
  /** Diameter that the run goes over to, mm. */
  readonly to: number | undefined;
  /** Diameter of every second bead, mm. */
  readonly alternate: number | undefined;
  readonly corners: "pass" | "on" | "split";
  /** A corner is where the line turns by more than this, radians. */
  readonly cornerAngle: number;
  /** Whether one bead sits where the run meets others. */
  readonly shares: boolean;
}

/** What the document says of a run's beads. */
export type BeadSpec = Pick<
  BeadRunSpec,
  "diameter" | "pitch" | "count" | "embed" | "to" | "alternate" | "corners" | "cornerAngle" | "junctions"
>;

/**
 * A run's bead size with defaults filled in.
 *
 * @param path where the run stands in the document
 * @throws AnnuletError `bead-sizes` where beads should both graduate and alternate; `bead-count` where a number is given
 *   for a line that corners or junctions part
 */
export function beadSize(spec: BeadSpec, path: string): BeadSize {
  const defaults = PATTERN_DEFAULTS.bead;
  const { diameter, count, embed, to, alternate } = spec;
  const corners = spec.corners ?? defaults.corners;
  const shares = (spec.junctions ?? defaults.junctions) === "share";
  if (to !== undefined && alternate !== undefined) {
    throw new AnnuletError({
      code: "bead-sizes",
      message: "beads cannot both graduate and alternate in one run",
      path: `${path}.alternate`,
      value: alternate,
      allowed: '"to" or "alternate", not both',
      hint: "leave one of them out",
    });
  }
  if (count !== undefined && (corners !== "pass" || shares)) {
    throw new AnnuletError({
      code: "bead-count",
      message: "a number of beads cannot be kept where corners or junctions part the run",
      path: `${path}.count`,
      value: count,
      allowed: 'a "pitch"; "count" where corners are passed and junctions left',
      hint: 'say "pitch" instead of "count"',
    });
  }
  return {
    diameter,
    pitch: spec.pitch ?? defaults.pitch,
    count,
    embed,
    to,
    alternate,
    corners,
    shares,
    cornerAngle: radians(spec.cornerAngle ?? defaults.cornerAngle),
  };
}

/**
 * The bead lines of a region that carries beads. Those on its border follow what is drawn, not where the seat's edges cut
 * off the copies of a lattice.
 *
 * @param isCut whether it is made of such copies; default no
 * @param remember takes over lines of the same art on the strip. Default: follows them anew
 * @throws AnnuletError `no-centre-line` on the centre of a filled region; `beads-off-region` where nothing lies so far inside
 */
export function regionBeads(
  strip: Strip,
  { spec, path, name, art }: DrawnRegion,
  isCut = false,
  remember: Remember = FORGET,
): BeadLines[] {
  if (spec.beads === undefined) return [];
  const { on } = spec.beads;
  if (on === "centre" && spec.ribbon === undefined) {
    throw new AnnuletError({
      code: "no-centre-line",
      message: "a filled region has no centre line for its beads",
      path: `${path}.beads.on`,
      value: on,
      allowed: '"border", or mm inside the outline',
      hint: 'say "on": "border", or give the region a ribbon',
    });
  }
  const loops = (rings: GridRegion) => rings.map((points: GridPath) => ({ points, closed: true }));
  const border = () => {
    const outlines = outlineOf(art);
    if (!isCut) return loops(outlines);
    const { closed, open } = partAtEdges(outlines, (strip.rows * strip.rowStep) / 2);
    return [...loops(closed), ...open.map((points) => ({ points, closed: false }))];
  };
  const bead = beadSize(spec.beads, `${path}.beads`);
  const beneath = spec.beneath === true;
  const make = () => {
    const chains = on === "centre" ? art.centre : on === "border" ? border() : loops(inside(strip, art, on, path));
    const seat = [boxRing({ ...span(chains), low: -strip.halfSeat, high: strip.halfSeat })];
    return linesOf(strip, beneath ? cutLines(strip, chains, seat) : chains, bead);
  };
  // How large beads are matters only where a strip stops: all round the lines are the same for all of them.
  const by = ["bead lines", on, beneath, isCut, strip.periodic ? undefined : bead];
  const lines = remember(by, [art.region, art.border, art.centre], make);
  requireCarried(spec, lines, path);
  const height = carryingHeight(strip, spec, art.region, path);
  return [{ run: name, path: `${path}.beads`, bead, height, lines, copies: repeatsOf(strip) }];
}

/** From left to right of all lines, and a little more, grid steps. */
function span(chains: readonly Chain[]): Pick<GridBox, "left" | "right"> {
  const { left, right } = ringBox(chains.flatMap(({ points }) => points));
  return { left: left - 1, right: right + 1 };
}

/** The drawn border where there is one; the outline of a ribbon along an open line otherwise. */
function outlineOf(art: Art): GridRegion {
  return art.border.length > 0 ? art.border : art.region;
}

function inside(strip: Strip, art: Art, distance: number, path: string): GridRegion {
  const rings = shrink(outlineOf(art), steps(strip, distance), strip.arcTolerance);
  if (rings.length > 0) return rings;
  throw new AnnuletError({
    code: "beads-off-region",
    message: `nothing of the region lies ${showLength(distance)} inside its outline`,
    path: `${path}.beads.on`,
    value: distance,
    hint: "place the beads nearer to the outline",
  });
}

/**
 * The bead lines of the document's own runs along paths and shapes of the tile; other runs are left alone.
 *
 * @param drawerFor draws on the strip on which a run is worked that stands on such tiles
 */
export function tileRuns(
  runs: readonly TileRun[],
  drawerFor: (tiles: TilesSpec | undefined) => ShapeDrawer,
): BeadLines[] {
  return runs.flatMap(({ run, index: i }) => {
    const { along } = run;
    if (!followsTile(along)) return [];
    const path = `beads[${i}]`;
    const drawer = drawerFor(along.tiles);
    const { strip } = drawer;
    const chains = completeLines(strip, along, `${path}.along`, drawer);
    const kind = "path" in along ? "path" : "shape";
    const bead = beadSize(run, path);
    const lines = linesOf(strip, chains, bead);
    return [{ run: `${kind} ${i + 1}`, path, bead, height: run.height, lines, copies: repeatsOf(strip) }];
  });
}

/** A run of the document, and which it is of them. */
export interface TileRun {
  readonly run: BeadRunSpec;
  readonly index: number;
}

/** Whether a run follows what is drawn in the tile. */
export function followsTile(along: BeadRunSpec["along"]): along is Extract<BeadRunSpec["along"], LineSource> {
  return typeof along === "object" && !("v" in along);
}

/** A bead's centre keeps this many diameters from what it must be clear of: a tenth shows between them. */
const BEAD_CLEAR = 0.6;

/** From where to where beads stand on a strip that stops, grid steps. */
function beadStretch(strip: Strip, { diameter, to = 0, alternate = 0 }: BeadSize): [low: number, high: number] {
  const [low, high] = strip.stretch;
  if (strip.beadStop === undefined) return [low, high];
  const clear = Math.round(steps(strip, strip.beadStop + BEAD_CLEAR * Math.max(diameter, to, alternate)));
  return [low + clear, Math.max(low + clear, high - clear)];
}

function linesOf(strip: Strip, chains: readonly Chain[], bead: BeadSize): RunLine[] {
  const inside = linesWithinSeat(strip, chains);
  return runLines(strip, strip.periodic ? inside : clipLines(inside, ...beadStretch(strip, bead)));
}
