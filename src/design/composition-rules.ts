/**
 * Which of a pattern's fields go together: ends need a place where the pattern stops, lanes bring art of their own.
 */
import type { z } from "zod";
import type { CycleSpec } from "./cycle.js";
import { laneName } from "./pattern/lane-name.js";
import { FULL_COVER } from "./repeat-numbers.js";

/** The fields that a lane has, or a pattern without lanes. */
interface LaneFields {
  readonly fit: { readonly repeats: unknown; readonly rows: number; readonly aspect: number };
  readonly symmetry: string;
  readonly cycle: CycleSpec;
  readonly regions: readonly unknown[];
  readonly medallion?: unknown;
  readonly ends?: { readonly form: string } | undefined;
}

/** The fields that decide. */
export interface CompositionFields extends LaneFields {
  readonly cover: number;
  readonly plain?: "open" | "filled" | undefined;
  readonly lanes?: readonly (LaneFields & { readonly name?: string | undefined })[] | undefined;
}

/** Raises an issue where ends are described that are not there, where art stands beside lanes, and where lanes share a name. */
export function checkComposition(pattern: CompositionFields, context: z.RefinementCtx): void {
  const { cover, plain, lanes } = pattern;
  if (plain === "filled" && cover === FULL_COVER) {
    context.addIssue({ code: "custom", path: ["plain"], message: "is filled, which needs a cover under 360" });
  }
  checkEnds(pattern, cover, [], context);
  if (lanes === undefined) return;
  lanes.forEach((lane, i) => {
    checkEnds(lane, cover, ["lanes", i], context);
    const name = laneName(lane, i);
    const same = lanes.findIndex((other, j) => laneName(other, j) === name);
    if (same < i)
      context.addIssue({ code: "custom", path: ["lanes", i, "name"], message: "is another lane's name too" });
  });
  const beside = (path: readonly string[]) =>
    context.addIssue({ code: "custom", path: [...path], message: "is given beside lanes: put it in a lane" });
  if (pattern.regions.length > 0) beside(["regions"]);
  for (const field of ["medallion", "ends"] as const) if (pattern[field] !== undefined) beside([field]);
  if (pattern.symmetry !== "p1") beside(["symmetry"]);
  if (pattern.cycle !== 1) beside(["cycle"]);
  const { repeats, rows, aspect } = pattern.fit;
  if (repeats !== "auto") beside(["fit", "repeats"]);
  if (rows !== 1) beside(["fit", "rows"]);
  if (aspect !== 1) beside(["fit", "aspect"]);
}

function checkEnds(
  { medallion, ends }: LaneFields,
  cover: number,
  path: readonly (string | number)[],
  context: z.RefinementCtx,
): void {
  const complain = (message: string) => context.addIssue({ code: "custom", path: [...path, "ends"], message });
  if (ends === undefined || ends.form === "cut" || cover < FULL_COVER) return;
  if (ends.form === "ornament") complain("are ornaments beyond the pattern, which needs a cover under 360");
  else if (medallion === undefined) complain("are described, but the pattern goes all the way round");
}
