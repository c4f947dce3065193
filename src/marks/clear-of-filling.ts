/**
 * Marks on the seat keep clear of a plain zone that is filled: what is cut into the seat there would be a hollow within the
 * metal, and what is raised would drown in it.
 */
import type { BandSurface } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import { extent } from "../base/math/extent.js";
import { TURN } from "../base/units.js";
import type { FlatBody } from "../relief/flat-body.js";
import type { Marks } from "./marks.js";

/** From θ to θ, from the start angle, radians. */
function spanOf({ outline }: FlatBody, radius: number): readonly [number, number] {
  const [low, high] = extent(outline.flat(2).map(([u]) => u));
  return [low / radius, high / radius];
}

/**
 * @param filling the pattern's, undefined where the plain zone is open
 * @throws AnnuletError `mark-in-filling` with the text or field that reaches into it
 */
export function requireClearOfFilling(
  { marks, field }: Marks,
  filling: FlatBody | undefined,
  wrap: Pick<BandSurface, "referenceRadius">,
): void {
  if (filling === undefined) return;
  const [from, to] = spanOf(filling, wrap.referenceRadius);
  const fieldOnSeat =
    field?.free === undefined
      ? []
      : [{ body: field.free, radius: field.surface.wrap.referenceRadius, path: field.free.path }];
  const onSeat = marks
    .filter(({ surface }) => surface.name === "seat")
    .map(({ body, surface }) => ({ body, radius: surface.wrap.referenceRadius, path: body.path }));
  for (const { body, radius, path } of [...onSeat, ...fieldOnSeat]) {
    const [low, high] = spanOf(body, radius);
    // Turned so that it begins no more than one turn after the filling does.
    const start = low - TURN * Math.floor((low - from) / TURN);
    if (start >= to && start + high - low <= from + TURN) continue;
    throw new AnnuletError({
      code: "mark-in-filling",
      message: `${body.names.join(", ")} on the seat reaches into the plain zone, which is filled up to the rails`,
      path,
      allowed: "a place among the pattern, a rail or the bore",
      hint: 'move it by its angle, put it on a rail or into the bore, or say "plain": "open"',
    });
  }
}
