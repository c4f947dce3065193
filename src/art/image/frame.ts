/**
 * How an image lies on the seat: the field's place and steps, the tiles that carry it, and how far it is stretched.
 */
import { AnnuletError, type Warn } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import type { MapSpec } from "../../design/art/image-map.js";
import { type StandsOn, standsOn } from "../../design/cycle.js";
import type { RegionSpec } from "../../design/pattern/region.js";
import { EDGE_WALL } from "../../flat/cut-place.js";
import type { Strip } from "../../flat/strip.js";
import { type HeightField, stepsFor } from "./height-field.js";
import { IMAGE_LIMITS } from "./image-limits.js";
import type { Picture } from "./read-picture.js";

export interface ReadFieldOptions {
  readonly strip: Strip;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  /** How far raised relief goes on beneath the rails, mm; 0 where there are none. */
  readonly underRail: number;
  /** Where the region stands in the document. */
  readonly path: string;
  readonly warn: Warn;
}

/** Where the field lies, and how its samples stand on the image. */
export interface Frame extends Omit<HeightField, "heights"> {
  /** Tiles along the field; undefined where one image fills all that the pattern covers. */
  readonly tiles: number | undefined;
  /** The tiles that carry the image; undefined where all do. */
  readonly on: StandsOn | undefined;
  readonly step: readonly [u: number, v: number];
}

/** The default distance of samples in tolerances: the cubic between pixels is far below one off there. */
const STEP_TOLERANCES = 8;

/** Steps in the size of a texture. Chosen: a pit of 0.8 sizes is then about five steps wide. */
const TEXTURE_STEPS = 6;

/** What is lower than half a tolerance is not there. */
const LEVEL_SHARE = 0.5;

/** But no wall is lower than this, mm: twice the edges that are tidied away after the union. */
const LEAST_LEVEL = 4e-3;

/** Rounding at the strip's edge, mm: a thousand grid steps. */
const EDGE_SLACK = 1e-3;

/** @throws AnnuletError `resolution-too-fine`, `tile-not-in-cycle` */
export function frameOf(
  spec: RegionSpec,
  map: MapSpec,
  { strip, tolerance, underRail, path }: ReadFieldOptions,
): Frame {
  const { tileWidth, repeats, periodic, grid } = strip;
  const half = strip.halfSeat / grid.scale;
  const reach = spec.mode === "sunk" ? half - EDGE_WALL - EDGE_SLACK : half + underRail;
  const on = standsOn(spec.tiles, strip.drawnCycle, `${path}.tiles`);
  const once = map.over === "band";
  const tiles = !periodic ? repeats : on === undefined ? 1 : strip.cycle;
  const right = (once ? repeats : tiles) * tileWidth;
  const area = repeats * tileWidth * 2 * reach;
  const finest = Math.sqrt(area / IMAGE_LIMITS.samples);
  const wanted = map.resolution ?? Math.max(defaultStep(spec, tolerance), finest);
  if (wanted < finest) throw tooFine(wanted, finest, `${path}.map.resolution`);
  // Each tile has a whole number of steps, so that all are alike.
  const columns = once ? stepsFor(right, wanted) : tiles * stepsFor(tileWidth, wanted);
  const rows = stepsFor(2 * reach, wanted);
  return {
    left: 0,
    right,
    low: -reach,
    high: reach,
    columns,
    rows,
    on,
    tiles: once ? undefined : tiles,
    copies: periodic ? Math.round((repeats * tileWidth) / right) : 1,
    step: [right / columns, (2 * reach) / rows],
    repeats: periodic,
    level: Math.max(LEVEL_SHARE * tolerance, LEAST_LEVEL),
  };
}

/** Of a texture no coarser than its detail, also at a tolerance that is. */
function defaultStep({ texture }: RegionSpec, tolerance: number): number {
  const step = STEP_TOLERANCES * tolerance;
  return texture === undefined ? step : Math.min(step, texture.size / TEXTURE_STEPS);
}

/** Whether tiles meet their mirror images: at their left and right ends, or along, at their upper and lower ones. */
export function isMirrored({ group }: Strip, { tiles }: Frame, along: boolean): boolean {
  return tiles !== undefined && group.operations.some(({ flipX, flipY }) => flipX === !along && flipY === along);
}

/** Pixels may be longer than wide on the seat by this share before it is told. */
const STRETCH_TOLD = 0.1;

/** Warns `image-stretched` where the image's proportions are not those of what it fills. */
export function warnStretch(
  { tiles, right }: Frame,
  { name, width, height }: Picture,
  { strip, path, warn }: ReadFieldOptions,
) {
  const [along, across] =
    tiles === undefined ? [right, (2 * strip.halfSeat) / strip.grid.scale] : [strip.tileWidth, strip.tileHeight];
  const stretch = along / width / (across / height);
  if (Math.abs(Math.log(stretch)) <= Math.log(1 + STRETCH_TOLD)) return;
  warn({
    code: "image-stretched",
    message: `${name} is stretched: it is ${width} by ${height} pixels and fills ${showLength(along)} by ${showLength(across)}, so its pixels are ${stretch.toFixed(2)} times as long as wide`,
    path: `${path}.image`,
    value: stretch,
    hint: `${Math.round((height * along) / across)} by ${height} pixels would be true`,
  });
}

function tooFine(value: number, finest: number, path: string): AnnuletError {
  return new AnnuletError({
    code: "resolution-too-fine",
    message: `samples every ${showLength(value)} would be more than ${IMAGE_LIMITS.samples} round the band`,
    path,
    value,
    allowed: `at least ${showLength(Math.ceil(finest * 1000) / 1000)}`,
    hint: "a caster shows a few hundredths of a millimetre at best",
  });
}
