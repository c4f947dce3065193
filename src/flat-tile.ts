/**
 * The flat tile: what a drawing of the pattern shows, without building the ring.
 */

import { AnnuletError, type Warning } from "./errors.js";
import type { FileSource } from "./files.js";
import { layOut } from "./lay-out.js";
import type { Point2 } from "./math/point.js";
import { type Fit, FULL_COVER } from "./pattern/fit.js";
import type { Pattern } from "./pattern/pattern.js";
import { type FriezeGroup, friezeGroup } from "./pattern/symmetry.js";
import { type FlatRings, type TileOutlinesOptions, tileOutlines } from "./pattern/tile-outlines.js";
import type { ResolvedSize } from "./sizing/size.js";
import type { Bead } from "./solids/bead.js";
import type { BeadRunReport } from "./solids/bead-report.js";
import { MAX_BEADS, placeRuns } from "./solids/place-runs.js";
import { Stages } from "./stages.js";
import { TURN } from "./units.js";
import { type Develop, developAt } from "./wrap/develop.js";
import { measureStretch, type StretchReport } from "./wrap/stretch.js";
import type { Wrap } from "./wrap/wrap.js";

export interface FlatTileOptions {
  /** Tiles side by side, 1 to the design's repeats. Default one cycle: 1 where tiles do not vary. */
  readonly tiles?: number;
  /** Most beads that are placed round the band. Default 20 000. */
  readonly maxBeads?: number;
  /** The files that the design names, SVG drawings: name → text, or a function that gives one. Default: none. */
  readonly files?: FileSource;
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
  /** mm above the seat; below it, negative, for what is sunk; undefined for what goes through. */
  readonly height: number | undefined;
  readonly rings: FlatRings;
}

/** The pattern of a design over one or more tiles: u from 0, v from the seat's middle; lengths in mm. */
export interface FlatTile {
  readonly name: string;
  readonly group: FriezeGroup;
  readonly size: ResolvedSize;
  readonly fit: Fit;
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
  readonly warnings: readonly Warning[];
}

/**
 * Works a design out up to its flat pattern and bead places.
 *
 * @param document the design document: an object, or JSON text
 * @throws AnnuletError as `build` up to the pattern and the beads; `no-pattern`; `tiles-out-of-range`
 */
export async function flatTile(document: unknown, options: FlatTileOptions = {}): Promise<FlatTile> {
  const { maxBeads = MAX_BEADS } = options;
  const stages = new Stages({});
  const { design, size, fit, profile, pattern, wrap } = await layOut(document, stages, options.files);
  if (fit === undefined || design.pattern === undefined) throw noPatternError();
  const tiles = options.tiles ?? Math.min(fit.cycle, fit.repeats);
  requireTiles(tiles, fit);
  const placed = placeRuns({ profile, wrap, pattern, beadRuns: design.beads, maxBeads, warn: stages.warn });
  const onRail = new Set(placed.runs.filter((run) => run.onRail).flatMap((run) => run.beads));
  const stretch = { tileWidth: fit.tileWidth, seatLength: profile.seatLength, tiles };
  return {
    ...{ name: design.name, group: friezeGroup(design.pattern.symmetry), size, fit, tiles },
    seatLength: profile.seatLength,
    regions: flatRegions(pattern, stretch),
    beads: placed.beads.filter((bead) => !onRail.has(bead)).flatMap((bead) => flatBeads(bead, wrap, fit, tiles)),
    runs: placed.reports,
    lambda: measureStretch(wrap, pattern.height),
    top: { height: pattern.height, develop: developAt(wrap, pattern.height) },
    warnings: stages.warnings,
  };
}

/** The pattern's bodies from step to step of its work: what is raised in a step, then what is cut after it. */
function flatRegions({ reliefs, carvings }: Pattern, stretch: TileOutlinesOptions): FlatRegion[] {
  const raised = (from: number, to: number) =>
    reliefs
      .slice(from, to)
      .sort((a, b) => a.height - b.height)
      .map(
        ({ names, height, ...shape }): FlatRegion => ({
          names,
          mode: "raised",
          height,
          rings: tileOutlines(shape, stretch),
        }),
      );
  const steps = carvings.flatMap(({ after, sunk, pierced }, i) => [
    ...raised(carvings[i - 1]?.after ?? 0, after),
    ...sunk.map(({ names, height, ...shape }): FlatRegion => {
      return { names, mode: "sunk", height: -height, rings: tileOutlines(shape, stretch) };
    }),
    ...pierced.map(({ names, mouth, seam }): FlatRegion => {
      return { names, mode: "pierced", height: undefined, rings: tileOutlines({ outline: mouth, seam }, stretch) };
    }),
  ]);
  return [...steps, ...raised(carvings.at(-1)?.after ?? 0, reliefs.length)];
}

/** A bead this near to a tile's border stands on it, mm: lines meet their images to within 5 µm. */
const ON_BORDER = 5e-3;

/** The bead where it shows on the tiles: on both ends where they meet. */
function flatBeads({ centre, radius }: Bead, wrap: Wrap, fit: Fit, tiles: number): FlatBead[] {
  const [u, v] = wrap.inverse(...centre);
  const round = TURN * wrap.referenceRadius;
  const end = tiles * fit.tileWidth;
  const followed = fit.cover === FULL_COVER || tiles < fit.repeats;
  return [u - round, u, u + round]
    .filter((at) => at >= -ON_BORDER && at <= end + ON_BORDER)
    .map((at) => ({ centre: [at, v], diameter: 2 * radius, next: followed && at > end - ON_BORDER }));
}

function requireTiles(tiles: number, fit: Fit): void {
  if (Number.isInteger(tiles) && tiles >= 1 && tiles <= fit.repeats) return;
  throw new AnnuletError({
    code: "tiles-out-of-range",
    message: `${tiles} tiles cannot be shown of a pattern with ${fit.repeats}`,
    value: tiles,
    allowed: `a whole number from 1 to ${fit.repeats}`,
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
