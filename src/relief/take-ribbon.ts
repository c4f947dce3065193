/**
 * Ribbons: bands on a shape's border and along lines, one or several side by side, with the lines they are centred on.
 */
import { AnnuletError } from "../base/errors.js";
import { largestWhere } from "../base/math/largest.js";
import { showLength } from "../base/units.js";
import type { RibbonSpec } from "../design/pattern/ribbon.js";
import type { Chain } from "../flat/chains.js";
import type { GridPath } from "../flat/grid.js";
import {
  contains,
  type GridRegion,
  offset,
  ribbonAlong,
  ribbonAround,
  ringArea,
  subtract,
  unite,
} from "../flat/polygons.js";
import { clearRing, makeOnce, type Strip, steps } from "../flat/strip.js";
import { parallelTo } from "./ribbons/parallel.js";

/** A ribbon and its centre lines. */
export interface Ribbon {
  readonly region: GridRegion;
  readonly centre: readonly Chain[];
}

/** Open lines that close into loops are a border only where the ribbon lies on one side of them, or there is none. */
export function takesSides(ribbon: RibbonSpec | undefined): boolean {
  return ribbon === undefined || ribbon.side === "inside" || ribbon.side === "outside";
}

/** Half of all that lies side by side on a line's centre, mm. */
export function halfSpan({ width, copies }: Pick<RibbonSpec, "width" | "copies">): number {
  return copies === undefined ? width / 2 : (copies.count * (width + copies.gap) - copies.gap) / 2;
}

/**
 * The ribbon on the shape's border and along the lines.
 *
 * @param where the region's place in the document, for errors
 * @throws AnnuletError `ribbon-too-wide`, `copies-too-wide`
 */
export function takeRibbon(
  strip: Strip,
  ribbon: RibbonSpec,
  shape: GridRegion,
  lines: readonly Chain[],
  where: string,
): Ribbon {
  const border = shape.length === 0 ? { region: [], centre: [] } : ribbonOnBorder(strip, ribbon, shape, where);
  const width = steps(strip, ribbon.width);
  const along = lines.length === 0 ? [] : besideLines(strip, ribbon, lines, where);
  const open = along.filter((line) => !line.closed).map(({ points }) => points);
  const loops = along.filter((line) => line.closed).map(({ points }) => points);
  const region = unite([
    ...border.region,
    ...makeOnce(strip, open, (paths) => ribbonAlong(paths, width, ribbon.join, ribbon.ends, strip.arcTolerance)),
    ...makeOnce(strip, loops, (paths) => ribbonAround(paths, width, ribbon.join, strip.arcTolerance)),
  ]);
  return { region, centre: [...border.centre, ...along] };
}

/** The ribbons' places across a line, mm from its middle. */
function placesAcross({ width, copies }: RibbonSpec): number[] {
  if (copies === undefined) return [0];
  const { count, gap } = copies;
  return Array.from({ length: count }, (_, i) => (i - (count - 1) / 2) * (width + gap));
}

/** The lines that the copies of a ribbon are centred on. */
function besideLines(strip: Strip, ribbon: RibbonSpec, lines: readonly Chain[], where: string): readonly Chain[] {
  if (ribbon.copies === undefined) return lines;
  const parallel = (closed: boolean, mm: number) => {
    const paths = lines.filter((line) => line.closed === closed).map(({ points }) => points);
    const moved = makeOnce(strip, paths, (own) =>
      own.map((points) => {
        const line = { points, closed };
        return (parallelTo(line, steps(strip, mm), ribbon.join, strip.arcTolerance) ?? fail(line, mm)).points;
      }),
    );
    return moved.map((points): Chain => ({ points, closed }));
  };
  const fail = (line: Chain, mm: number): never => {
    const fits = (distance: number) =>
      parallelTo(line, steps(strip, Math.sign(mm) * distance), ribbon.join, strip.arcTolerance) !== undefined;
    throw copiesTooWide(ribbon, largestWhere(0, Math.abs(mm), fits), where);
  };
  return placesAcross(ribbon).flatMap((mm) => [...parallel(false, mm), ...parallel(true, mm)]);
}

function copiesTooWide(ribbon: RibbonSpec, largest: number, where: string): AnnuletError {
  return new AnnuletError({
    code: "copies-too-wide",
    message: `the line turns too tightly for ${ribbon.copies?.count} ribbons side by side: the outermost one would fold over itself`,
    path: `${where}.ribbon.copies`,
    value: ribbon.copies,
    allowed: `outermost centre lines at most ${showLength(Math.floor(largest * 1000) / 1000)} from the middle`,
    hint: "make the ribbons or the gaps narrower, take fewer of them, or let the line turn more gently",
  });
}

function ribbonOnBorder(strip: Strip, ribbon: RibbonSpec, shape: GridRegion, where: string): Ribbon {
  const { arcTolerance } = strip;
  const width = steps(strip, ribbon.width);
  const loops = (rings: GridRegion) => rings.map((points): Chain => ({ points, closed: true }));
  if (ribbon.side === "centre" && ribbon.copies === undefined) {
    return { region: ribbonAround(shape, width, ribbon.join, arcTolerance), centre: loops(shape) };
  }
  const sign = ribbon.side === "outside" ? 1 : -1;
  const move = (distance: number) => offset(shape, distance, ribbon.join, arcTolerance);
  // From the border outwards, or from the innermost of those centred on it.
  const begin = ribbon.side === "centre" ? steps(strip, halfSpan(ribbon)) : 0;
  const pitch = width + steps(strip, ribbon.copies?.gap ?? 0);
  const ribbons = Array.from({ length: ribbon.copies?.count ?? 1 }, (_, i): Ribbon => {
    const [near, far] = [begin + sign * i * pitch, begin + sign * (i * pitch + width)];
    const [inner, outer] = sign < 0 ? [far, near] : [near, far];
    const rest = move(inner);
    if (inner < 0) checkRibbonFits(strip, ribbon, shape, { rest, reach: -inner, where });
    return { region: subtract(move(outer), rest), centre: loops(move((inner + outer) / 2)) };
  });
  return { region: ribbons.flatMap(({ region }) => region), centre: ribbons.flatMap(({ centre }) => centre) };
}

/** What a ribbon leaves of its shape. */
interface Left {
  readonly rest: GridRegion;
  /** How far the ribbon reaches in, grid steps. */
  readonly reach: number;
  readonly where: string;
}

/** Every outer ring of the shape must keep an inside once a ribbon is taken from it. */
function checkRibbonFits(
  strip: Strip,
  ribbon: RibbonSpec,
  shape: GridRegion,
  { rest: inner, reach, where }: Left,
): void {
  const swallowed = (rest: GridRegion, ring: GridPath) =>
    !rest.some((other) => ringArea(other) > 0 && contains(ring, other[0]));
  const lost = shape.find((ring) => ringArea(ring) > 0 && clearRing(strip, ring) && swallowed(inner, ring));
  if (lost === undefined) return;
  const largest = largestWhere(0, reach, (distance) => {
    const rest = offset(shape, -distance, ribbon.join, strip.arcTolerance);
    return shape.every((ring) => ringArea(ring) < 0 || !clearRing(strip, ring) || !swallowed(rest, ring));
  });
  const room = Math.floor((largest / strip.grid.scale) * 1000) / 1000;
  const several = ribbon.copies !== undefined;
  throw new AnnuletError({
    code: "ribbon-too-wide",
    message: several
      ? `${ribbon.copies?.count} ribbons side by side fill their region: nothing is left inside`
      : `a ribbon ${showLength(ribbon.width)} wide fills its region: nothing is left inside`,
    path: several ? `${where}.ribbon.copies` : `${where}.ribbon.width`,
    value: several ? ribbon.copies : ribbon.width,
    allowed: several ? `to reach at most ${showLength(room)} in from the border` : `at most ${showLength(room)}`,
    hint: "make the ribbon narrower, draw the region larger, or leave the ribbon out to fill it",
  });
}
