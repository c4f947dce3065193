/**
 * Whether the two ends of a pattern that leaves the back plain stay apart there: one body that ran into itself would cross
 * itself.
 */
import type { BandSurface } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import { extent } from "../base/math/extent.js";
import { showLength } from "../base/units.js";
import type { FlatBody } from "../relief/flat-body.js";

/** Least way between the ends, mm; chosen: the least gap that flat work leaves open. */
const LEAST_GAP = 0.05;

const ROUND_DEGREES = 360;

/** Covers are told in tenths of a degree. */
const TOLD = 10;

/**
 * Checks that a body does not reach round the finger into itself.
 *
 * @throws AnnuletError `ends-meet` with the most that may be covered
 */
export function requireEndsApart(body: Pick<FlatBody, "outline" | "seam">, { round }: BandSurface): void {
  if (body.seam !== undefined) return;
  const [low, high] = extent(body.outline.flat(2).map(([u]) => u));
  const over = high - low + LEAST_GAP - round;
  if (!(over > 0)) return;
  const [start, end] = [acrossIn(body.outline, [low, low + over]), acrossIn(body.outline, [high - over, high])];
  // Side by side they pass each other.
  if (start[1] + LEAST_GAP < end[0] || end[1] + LEAST_GAP < start[0]) return;
  const less = Math.ceil((TOLD * ROUND_DEGREES * over) / round) / TOLD;
  throw new AnnuletError({
    code: "ends-meet",
    message: `the two ends of the pattern run into each other at the back: their slopes reach ${showLength(over)} too far`,
    path: "pattern.cover",
    allowed: `360, or at least ${less.toFixed(1)}° less than now`,
    hint: "cover less of the band, or all of it; or make the walls at the ends steeper",
  });
}

/** v from the lowest to the highest place of all sides that reach into a span along the band, mm. */
function acrossIn(outline: FlatBody["outline"], [from, to]: readonly [number, number]): readonly [number, number] {
  return extent(
    outline.flat().flatMap((ring) =>
      ring.flatMap(([u, v], i) => {
        const [nextU, nextV] = ring[(i + 1) % ring.length];
        if (Math.max(u, nextU) < from || Math.min(u, nextU) > to) return [];
        if (u === nextU) return [v, nextV];
        return [from, to].map((end) => v + (nextV - v) * Math.min(1, Math.max(0, (end - u) / (nextU - u))));
      }),
    ),
  );
}
