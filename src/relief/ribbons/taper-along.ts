/**
 * Tapering ribbons along a region's lines, completed by symmetry.
 *
 * A line's pieces are joined as drawn and the taper goes from end to end of that. Its images carry their widths with them,
 * so the whole is as symmetric as the pattern. Where a line closes, or its end meets the start of an image of its own, the
 * taper goes out to half way and back, so that no step stands where they meet.
 */
import { AnnuletError } from "../../base/errors.js";
import type { StandsOn } from "../../design/cycle.js";
import type { RibbonSpec } from "../../design/pattern/ribbon.js";
import { type Chain, JOIN_REACH, joinLines, near } from "../../flat/chains.js";
import { type GridPath, type GridPoint, shiftPath } from "../../flat/grid.js";
import { type GridRegion, unite } from "../../flat/polygons.js";
import { imagesOf, type Strip, steps } from "../../flat/strip.js";
import type { Ribbon } from "../take-ribbon.js";
import { type TaperEnd, taperedRibbon, taperOf } from "./tapered-ribbon.js";

export interface TaperedLines {
  /** Closed and open lines as drawn, about the middle line of a row. */
  readonly closed: readonly GridPath[];
  readonly open: readonly GridPath[];
  /** The closed ones filled, and the open ones joined, on the strip. */
  readonly border: GridRegion;
  readonly chains: readonly Chain[];
  /** The tiles that carry them; undefined where all do. */
  readonly on: StandsOn | undefined;
}

/**
 * The ribbon on the lines; undefined where it does not taper.
 *
 * @param where the region's place in the document, for errors
 * @throws AnnuletError `taper-needs-centre` on the inside or outside of a closed line
 */
export function taperAlong(
  strip: Strip,
  ribbon: RibbonSpec,
  { closed, open, border, chains, on }: TaperedLines,
  where: string,
): Ribbon | undefined {
  const taper = taperOf(ribbon);
  if (taper === undefined) return undefined;
  if (closed.length > 0 && ribbon.side !== "centre") throw needsCentre(where);
  const { grid, arcTolerance } = strip;
  const drawn: Chain[] = [
    ...joinLines(open, steps(strip, JOIN_REACH)),
    ...closed.map((points) => ({ points, closed: true })),
  ];
  const first = Array.from({ length: strip.cycle }, (_, tile) => tile).find((tile) => on?.(tile) ?? true) ?? 0;
  const home = { x: first * grid.tile, y: strip.rowMiddles[0] };
  const region = drawn.flatMap((chain) => {
    const { points, closed: loop } = chain;
    const last = points.length - 1;
    const [before, after] = loop
      ? []
      : [
          beyond(strip, chains, [points[0], points[1]], home),
          beyond(strip, chains, [points[last], points[last - 1]], home),
        ];
    const end = (next: GridPoint | undefined): TaperEnd => (next === undefined ? ribbon.ends : { next });
    return taperedRibbon(chain, {
      taper,
      scale: grid.scale,
      arcTolerance,
      returns: loop || (after !== undefined && meetsStart(strip, points, home, on)),
      ends: [end(before), end(after)],
    });
  });
  const images = imagesOf(strip, region, { on }).map(({ path, flipped }) => (flipped ? [...path].reverse() : path));
  return { region: unite(images), centre: [...border.map((ring) => ({ points: ring, closed: true })), ...chains] };
}

function needsCentre(where: string): AnnuletError {
  return new AnnuletError({
    code: "taper-needs-centre",
    message: "a tapering ribbon cannot lie inside or outside of a closed line",
    path: `${where}.ribbon.side`,
    allowed: '"centre" on a closed line',
    hint: 'say "side": "centre", draw an open line, or leave the taper out',
  });
}

/**
 * The next point beyond the end of a drawn line where its images carry it on; undefined where it ends.
 *
 * @param line the end and the point next to it, as drawn
 * @param home where the first copy of what is drawn stands
 */
function beyond(strip: Strip, chains: readonly Chain[], line: GridPath, home: GridPoint): GridPoint | undefined {
  const [place, from] = shiftPath(line, home.x, home.y);
  const reach = steps(strip, JOIN_REACH);
  for (const { points, closed } of chains) {
    const at = points.findIndex((point) => near(point, place, reach));
    if (at === -1 || (!closed && (at === 0 || at === points.length - 1))) continue;
    const [before, after] = [points[(at + points.length - 1) % points.length], points[(at + 1) % points.length]];
    const next = near(before, from, reach) ? after : before;
    return { x: next.x - home.x, y: next.y - home.y };
  }
  return undefined;
}

/** Whether the start of an image of the line lies at its end. */
function meetsStart(strip: Strip, line: GridPath, home: GridPoint, on: StandsOn | undefined): boolean {
  const [place] = shiftPath([line[line.length - 1]], home.x, home.y);
  const reach = steps(strip, JOIN_REACH);
  return imagesOf(strip, [line], { on }).some(({ path: [start] }) => near(start, place, reach));
}
