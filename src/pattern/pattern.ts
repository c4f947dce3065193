/**
 * The flat pattern, complete: raised and cut bodies and the lines of bead runs, from the document's regions.
 *
 * The list of regions is an order of work: what is cut goes through the band and what was raised before it; what comes
 * later is laid over it.
 */

import { type Fit, FULL_COVER, type LaneFit } from "../band/fit/fit.js";
import { laneFits } from "../band/fit/fit-lanes.js";
import type { Profile } from "../band/profile/profile.js";
import { AnnuletError } from "../base/errors.js";
import type { Pausing } from "../base/pausing.js";
import { showLength } from "../base/units.js";
import { followsTile, type TileRun } from "../beads/bead-lines.js";
import type { RailFoot } from "../beads/seat-edge.js";
import { type Lane, lanesOf, noSuchLane } from "../design/lanes.js";
import type { BeadRunSpec } from "../design/pattern/bead-run.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import type { Motion } from "../flat/motion.js";
import { STAY } from "../flat/motion.js";
import { type Area, type AreaOptions, completeArea } from "./complete-area.js";
import { completeAt, requireCuttable } from "./kept-size.js";
import type { Pattern } from "./laid-out.js";
import { joinPatterns, placePattern } from "./move.js";
import { oneTile, spansOf } from "./spans.js";

export interface PatternOptions extends Omit<AreaOptions, "rails" | "railFoot" | "seatLength"> {
  readonly profile: Pick<Profile, "seatLength"> & {
    readonly rails?: RailFoot | undefined;
    /** As `seatLengths` where tiles keep their size on a band that tapers. Default: they narrow, or the band does not. */
    readonly lengths?: readonly number[] | undefined;
  };
}

/** The document's own bead runs at their places in its list; those that follow no tile may be left out as undefined. */
export type TileRunList = readonly (BeadRunSpec | undefined)[];

interface LaneOptions extends AreaOptions {
  readonly lengths: readonly number[] | undefined;
}

/** Completes the pattern of a design. Of `runs` those that follow no tile are left alone. */
export function* completePattern(
  spec: PatternSpec,
  runs: TileRunList,
  fit: Fit,
  options: PatternOptions,
): Pausing<Pattern> {
  const lanes = lanesOf(spec);
  const fits = laneFits(fit, options.profile.seatLength);
  const named = ownRuns(runs, lanes);
  const { lengths } = options.profile;
  if (lengths !== undefined) requireCuttable(lanes);
  const railFoot = options.profile.rails;
  const railed = railFoot !== undefined;
  const patterns: Pattern[] = [];
  for (const [i, lane] of lanes.entries()) {
    const rails = [railed && i === 0, railed && i === lanes.length - 1] as const;
    const own = yield* completeLane(lane, fits[i], named[i], {
      ...options,
      rails,
      railFoot,
      seatLength: fits[i].height,
      lengths,
    });
    patterns.push(lanes.length === 1 ? own : placePattern(own, [{ ...STAY, v: fits[i].v }]));
  }
  requireApart(patterns, lanes);
  return patterns.length === 1 ? patterns[0] : joinPatterns(patterns);
}

/** Completes a lane, v from its middle line. */
function* completeLane(lane: Lane, fit: LaneFit, runs: readonly TileRun[], options: LaneOptions): Pausing<Pattern> {
  const { shapes, symmetry, medallion, ends, where } = lane;
  const { fit: span, starts, medallion: apart } = spansOf(fit);
  const place = (area: Area, own: readonly TileRun[], places: readonly Motion[]) =>
    completeAt(area, places, { fit, lengths: options.lengths, complete: (one) => completeArea(one, own, options) });
  const main = { fit: span, symmetry, shapes, ends, ...inDocument(lane, where, lane) };
  const patterns = [
    yield* place(
      main,
      runs,
      starts.map((u) => ({ ...STAY, u })),
    ),
  ];
  const alone = { shapes, single: true, ends: undefined };
  if (medallion !== undefined && apart !== undefined) {
    const { symmetry: own } = medallion;
    const area = { ...alone, fit: apart.fit, symmetry: own, ...inDocument(medallion, `${where}.medallion`, lane) };
    patterns.push(yield* place(area, [], [{ ...STAY, u: apart.start }]));
  }
  if (ends?.form === "ornament") {
    const u = fit.repeats * fit.tileWidth;
    requireRoomBeyond(fit, ends.tiles, `${where}.ends.tiles`);
    const { symmetry: own } = ends;
    const area = { ...alone, fit: oneTile(fit, ends.tiles), symmetry: own, ...inDocument(ends, `${where}.ends`, lane) };
    patterns.push(
      yield* place(
        area,
        [],
        [
          { ...STAY, u },
          { ...STAY, mirrored: true },
        ],
      ),
    );
  }
  return patterns.length === 1 ? patterns[0] : joinPatterns(patterns);
}

function inDocument(
  { regions }: Pick<Area, "regions">,
  where: string,
  lane: Lane,
): Pick<Area, "regions" | "where" | "label"> {
  const owner = where === lane.where ? [] : [where.slice(lane.where.length + 1)];
  return { regions, where, label: [...(lane.name === "" ? [] : [lane.name]), ...owner, "region"].join(" ") };
}

/** The document's runs that follow what is drawn in tiles, lane by lane. */
function ownRuns(runs: TileRunList, lanes: readonly Lane[]): TileRun[][] {
  const found = lanes.map((): TileRun[] => []);
  runs.forEach((run, index) => {
    if (run === undefined || !followsTile(run.along)) return;
    const { lane } = run.along;
    const at = lane === undefined ? 0 : lanes.findIndex(({ name }) => name === lane);
    if (at === -1) throw noSuchLane(lane, lanes, `beads[${index}].along.lane`);
    found[at].push({ run, index });
  });
  return found;
}

/** Bodies of neighbouring lanes that come nearer than this would meet in a line, mm. */
const LANES_APART = 0.01;

/** @throws AnnuletError `lanes-touch` where the bodies of neighbouring lanes meet at their common edge */
function requireApart(patterns: readonly Pattern[], lanes: readonly Lane[]): void {
  const spans = patterns.map(({ bodies }) => {
    const raised = bodies.filter(({ mode }) => mode === "raised");
    return raised.flatMap(({ outline }) => outline.flat(2).map(([, v]) => v));
  });
  for (let i = 1; i < spans.length; i++) {
    const [below, above] = [
      spans[i - 1].reduce((a, b) => Math.max(a, b), -Infinity),
      spans[i].reduce((a, b) => Math.min(a, b), Infinity),
    ];
    if (above - below >= LANES_APART) continue;
    throw new AnnuletError({
      code: "lanes-touch",
      message: `what is raised in ${lanes[i - 1].name} and in ${lanes[i].name} meets between them`,
      path: "pattern.gap",
      value: Number((above - below).toFixed(4)),
      allowed: `at least ${showLength(LANES_APART)} between them`,
      hint: "set a gap, or draw the art of one of them clear of its edge",
    });
  }
}

/** Ornaments stand beyond the ends, both in the plain zone. */
function requireRoomBeyond({ cover, repeats, tileWidth }: LaneFit, wide: number, path: string): void {
  const most = Math.floor(((FULL_COVER / cover - 1) * repeats) / 2);
  if (wide <= most) return;
  throw new AnnuletError({
    code: "ornament-misfit",
    message: `two ornaments of ${showLength(wide * tileWidth)} do not fit into the plain zone`,
    path,
    value: wide,
    allowed: most > 0 ? `1 to ${most}` : "none: the plain zone is narrower than two tiles",
    hint: "make the ornaments narrower, or cover less of the band",
  });
}

/**
 * The pattern of a band without one.
 *
 * @throws AnnuletError `no-pattern` where a bead run follows a path of the tile that is not there
 */
export function noPattern(runs: TileRunList): Pattern {
  const lost = runs.findIndex((run) => run !== undefined && followsTile(run.along));
  const along = runs[lost]?.along;
  if (along === undefined) return { bodies: [], beadLines: [], height: 0, repeats: 1, holes: 0 };
  throw new AnnuletError({
    code: "no-pattern",
    message: "the bead run follows what is drawn in the tile, but the design has no pattern and so no tile",
    path: `beads[${lost}].along.${typeof along === "object" && "shape" in along ? "shape" : "path"}`,
    allowed: '"rail", "seat-edge" or {"v": …} on a band without pattern',
    hint: 'add "pattern": {} for a tile as square as the seat is long',
  });
}
