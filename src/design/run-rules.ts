/**
 * Which bead runs go with the pattern beside them: where a run stops, and that none drowns in a plain zone that is filled.
 */
import type { z } from "zod";
import type { BeadRunSpec } from "./pattern/bead-run.js";
import { FULL_COVER } from "./repeat-numbers.js";

/** The fields that decide. */
export interface RunFields {
  readonly pattern?: { readonly cover: number; readonly plain?: "open" | "filled" | undefined } | undefined;
  readonly beads: readonly Pick<BeadRunSpec, "along" | "over" | "junctions">[];
}

/** Raises an issue at runs that should stop with the pattern and cannot, and at those on the seat that should and do not. */
export function checkRuns({ pattern, beads }: RunFields, context: z.RefinementCtx): void {
  beads.forEach(({ along, over, junctions }, i) => {
    const complain = (field: string, message: string) =>
      context.addIssue({ code: "custom", path: ["beads", i, field], message });
    const inTiles = typeof along === "object" && !("v" in along);
    if (over !== undefined && inTiles) complain("over", "does not belong to a run in tiles, which ends with them");
    else if (over === "cover" && (pattern === undefined || pattern.cover === FULL_COVER)) {
      complain("over", "is the cover, which needs a pattern with a cover under 360");
    }
    if (over === "cover" && junctions === "share") {
      complain("junctions", "cannot be shared by a run that stops with the cover");
    }
    const onSeat = along === "seat-edge" || (typeof along === "object" && "v" in along);
    if (onSeat && pattern?.plain === "filled" && over !== "cover")
      complain("along", 'goes through the plain zone, which is filled: say "over": "cover"');
  });
}
