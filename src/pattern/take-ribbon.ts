/**
 * Ribbons: bands of constant width on a shape's border and along lines, with the lines they are centred on.
 */
import { AnnuletError } from "../errors.js";
import { largestWhere } from "../math/largest.js";
import { showLength } from "../units.js";
import type { Chain } from "./chains.js";
import type { GridPath } from "./grid.js";
import { contains, type GridRegion, offset, ribbonAlong, ribbonAround, ringArea, subtract, unite } from "./polygons.js";
import type { RibbonSpec } from "./schema.js";
import { clearRing, makeOnce, type Strip, steps } from "./strip.js";

/** A ribbon and its centre lines. */
export interface Ribbon {
  readonly region: GridRegion;
  readonly centre: readonly Chain[];
}

/** Open lines that close into loops are a border only where the ribbon lies on one side of them, or there is none. */
export function takesSides(ribbon: RibbonSpec | undefined): boolean {
  return ribbon === undefined || ribbon.side === "inside" || ribbon.side === "outside";
}

/**
 * The ribbon on the shape's border and along the lines.
 *
 * @param where the region's place in the document, for errors
 * @throws AnnuletError `ribbon-too-wide`
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
  const open = lines.filter((line) => !line.closed).map(({ points }) => points);
  const loops = lines.filter((line) => line.closed).map(({ points }) => points);
  const region = unite([
    ...border.region,
    ...makeOnce(strip, open, (paths) => ribbonAlong(paths, width, ribbon.join, ribbon.ends, strip.arcTolerance)),
    ...makeOnce(strip, loops, (paths) => ribbonAround(paths, width, ribbon.join, strip.arcTolerance)),
  ]);
  return { region, centre: [...border.centre, ...lines] };
}

function ribbonOnBorder(strip: Strip, ribbon: RibbonSpec, shape: GridRegion, where: string): Ribbon {
  const { arcTolerance } = strip;
  const width = steps(strip, ribbon.width);
  const loops = (rings: GridRegion) => rings.map((points): Chain => ({ points, closed: true }));
  if (ribbon.side === "centre") {
    return { region: ribbonAround(shape, width, ribbon.join, arcTolerance), centre: loops(shape) };
  }
  const sign = ribbon.side === "outside" ? 1 : -1;
  const far = offset(shape, sign * width, ribbon.join, arcTolerance);
  if (sign < 0) checkRibbonFits(strip, ribbon, shape, far, where);
  return {
    region: sign < 0 ? subtract(shape, far) : subtract(far, shape),
    centre: loops(offset(shape, (sign * width) / 2, ribbon.join, arcTolerance)),
  };
}

/** Every outer ring of the shape must keep an inside once the ribbon is taken from it. */
function checkRibbonFits(strip: Strip, ribbon: RibbonSpec, shape: GridRegion, inner: GridRegion, where: string): void {
  const swallowed = (rest: GridRegion, ring: GridPath) =>
    !rest.some((other) => ringArea(other) > 0 && contains(ring, other[0]));
  const lost = shape.find((ring) => ringArea(ring) > 0 && clearRing(strip, ring) && swallowed(inner, ring));
  if (lost === undefined) return;
  const largest = largestWhere(0, ribbon.width, (width) => {
    const rest = offset(shape, -steps(strip, width), ribbon.join, strip.arcTolerance);
    return shape.every((ring) => ringArea(ring) < 0 || !clearRing(strip, ring) || !swallowed(rest, ring));
  });
  throw new AnnuletError({
    code: "ribbon-too-wide",
    message: `a ribbon ${showLength(ribbon.width)} wide fills its region: nothing is left inside`,
    path: `${where}.ribbon.width`,
    value: ribbon.width,
    allowed: `at most ${showLength(Math.floor(largest * 1000) / 1000)}`,
    hint: "make the ribbon narrower, draw the region larger, or leave the ribbon out to fill it",
  });
}
