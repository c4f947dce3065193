/**
 * Which bead runs go with the pattern beside them.
 */
import type { z } from "zod";
import type { BeadRunSpec } from "./pattern/bead-run.js";

/** The fields that decide. */
export interface RunFields {
  readonly pattern?: { readonly plain?: "open" | "filled" | undefined } | undefined;
  readonly beads: readonly Pick<BeadRunSpec, "along">[];
}

/** Raises an issue at runs on the seat that would drown in a plain zone that is filled. */
export function checkRuns({ pattern, beads }: RunFields, context: z.RefinementCtx): void {
  beads.forEach(({ along }, i) => {
    const onSeat = along === "seat-edge" || (typeof along === "object" && "v" in along);
    if (!onSeat || pattern?.plain !== "filled") return;
    context.addIssue({
      code: "custom",
      path: ["beads", i, "along"],
      message: "goes round on the seat, through the plain zone, which is filled",
    });
  });
}
