/**
 * Which lanes are of height maps alone: those show nothing of a tile that is stretched. A texture is drawn in mm, and an image
 * has a warning of its own.
 */
import { hasHeights } from "./art/height-rules.js";
import { type Lane, lanesOf } from "./lanes.js";
import type { BeadRunSpec } from "./pattern/bead-run.js";
import type { PatternSpec } from "./pattern/pattern.js";

/** Names of the lanes that have images or textures and nothing that is drawn: of a pattern without lanes "". */
export function heightLanes(pattern: PatternSpec, runs: readonly BeadRunSpec[]): string[] {
  const lanes = lanesOf(pattern);
  const [{ name: lowest }] = lanes;
  const beaded = new Set(runs.map(({ along }) => drawnIn(along)).map((lane) => (lane === "" ? lowest : lane)));
  return lanes.filter((lane) => isOfHeights(lane) && !beaded.has(lane.name)).map(({ name }) => name);
}

/** The lane in which a run is drawn, "" where it names none; undefined of a run along the band. */
function drawnIn(along: BeadRunSpec["along"]): string | undefined {
  return typeof along === "object" && !("v" in along) ? (along.lane ?? "") : undefined;
}

/** A lane in which nothing is drawn yet may still get anything. */
function isOfHeights({ regions, medallion, ends }: Lane): boolean {
  const all = [...regions, ...(medallion?.regions ?? []), ...(ends?.form === "ornament" ? ends.regions : [])];
  return all.length > 0 && all.every(hasHeights);
}
