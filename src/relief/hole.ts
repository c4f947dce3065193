/**
 * A pierced region: its outline, and the outlines of its edges where they are broken.
 *
 * Breaking by a round of radius b widens the hole by b (1 − sin φ) at b (1 − cos φ) below the surface, φ from 0 to 90°.
 */
import { chordCount } from "../base/math/curve.js";
import type { GridRegion } from "../flat/polygons.js";
import { offset } from "../flat/polygons.js";
import { type Strip, steps } from "../flat/strip.js";
import { type ReliefPolygon, stackLevels } from "./section.js";

/** A hole's flat outlines over one period of the strip, or over the whole of it. */
export interface HoleShape {
  readonly names: readonly string[];
  /** Where it stands in the document. */
  readonly path: string;
  /** The broken edge: bands whose points are (u, v, mm below the surface), of the seat as of the bore. */
  readonly edge: readonly ReliefPolygon[];
  /** The outline at the surfaces; h is 0. */
  readonly mouth: readonly ReliefPolygon[];
  /** The outline between the broken edges; h is their depth. */
  readonly wall: readonly ReliefPolygon[];
  /** u of the two sides that neighbouring tiles share, mm; undefined where the shape ends by itself. */
  readonly seam: readonly [left: number, right: number] | undefined;
  /** mm, radius of the broken edges. */
  readonly broken: number;
  /** How often it comes round the band, where it has a seam. Default: as often as the pattern's unit. */
  readonly copies?: number;
}

export interface HoleOptions {
  /** mm */
  readonly broken: number;
  readonly names: readonly string[];
  readonly path: string;
}

/**
 * The broken edge begins this far below the surface, mm: there it lies along it, and where the facets of both meet in the
 * file's single precision would decide on the outline.
 */
const LIP = 3e-3;

/** The outlines of the holes of a region. */
export function pierceRegion(
  strip: Strip,
  region: GridRegion,
  { broken, names, path }: HoleOptions,
): HoleShape | undefined {
  if (region.length === 0) return undefined;
  const count = broken === 0 ? 0 : chordCount(broken, Math.PI / 2, strip.artTolerance);
  const levels = Array.from({ length: count + 1 }, (_, i) => {
    const angle = count === 0 ? Math.PI / 2 : (Math.PI / 2) * (i / count);
    // The last one is the outline itself, to the step.
    const out = i === count ? 0 : broken * (1 - Math.sin(angle));
    return {
      rings: offset(region, steps(strip, out), "round", strip.arcTolerance),
      inset: -out,
      h: i === 0 ? Math.min(LIP, broken / 2) : broken * (1 - Math.cos(angle)),
    };
  });
  const { bands, outline, last, seam } = stackLevels(strip, levels);
  return { names, path, edge: bands, mouth: outline, wall: last, seam, broken };
}
