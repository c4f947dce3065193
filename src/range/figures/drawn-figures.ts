/**
 * Figures for which the pattern has to be drawn, some tenths of a second each: asked for only where a plan bounds them.
 */
import type { FileSource } from "../../base/files.js";
import type { Design } from "../../design/schema.js";
import { flatArt } from "../../judge/details/flat-art.js";
import { narrowest } from "../../judge/details/narrow.js";
import { openInside } from "../../ring/open-ring.js";

/** Least and largest spacing over diameter of all runs of beads; undefined where there are none. */
export async function beadRatios(
  design: Design,
  files: FileSource,
  signal?: AbortSignal,
): Promise<readonly [number, number] | undefined> {
  const runs = await openInside(design, { files }).beads({ signal });
  if (runs.length === 0) return undefined;
  return [Math.min(...runs.map(({ ratioMin }) => ratioMin)), Math.max(...runs.map(({ ratioMax }) => ratioMax))];
}

/** How narrow the drawn pattern is where it is narrower than a limit, mm; undefined where it nowhere is. */
export async function narrowestDetail(
  design: Design,
  limit: number,
  { files, signal }: { readonly files: FileSource; readonly signal?: AbortSignal | undefined },
): Promise<number | undefined> {
  const { answers } = await openInside(design, { files }).ask(["pattern", "wrap"], { signal });
  const { pattern, wrap } = answers;
  if (pattern.bodies.length === 0) return undefined;
  const art = flatArt(pattern, { around: wrap.round, seatLength: wrap.seatLength });
  return narrowest(art.raised, limit, { scale: art.grid.scale, within: art.core })?.width;
}
