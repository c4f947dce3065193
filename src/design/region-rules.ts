/**
 * Which fields of a region go with which mode: raised, sunk or pierced.
 */
import type { z } from "zod";
import { hasHeights } from "./art/height-rules.js";
import { complainTo } from "./complain.js";
import type { SectionSpec } from "./sections/section.js";

/** The fields that the mode decides on. */
export interface ModeFields {
  readonly mode: "raised" | "sunk" | "pierced";
  readonly height?: number | undefined;
  readonly depth?: number | undefined;
  readonly round: number;
  readonly section?: SectionSpec | undefined;
  readonly broken: number;
  readonly beneath?: boolean | undefined;
  readonly upright?: boolean | undefined;
  readonly image?: unknown;
  readonly texture?: unknown;
  readonly beads?: unknown;
  readonly ribbon?: { readonly weave?: unknown } | undefined;
  readonly edge?: unknown;
  readonly within?: unknown;
  readonly without?: unknown;
  readonly offset?: number | undefined;
}

/** The measures that a region has without a section, and those that it has beside one. */
const MEASURES = {
  raised: { alone: ["height", "round"], withSection: [] },
  sunk: { alone: ["depth", "round"], withSection: [] },
  pierced: { alone: ["broken"], withSection: ["broken"] },
} as const;

const ALL_MEASURES = ["height", "depth", "round", "broken"] as const;

/** Raises an issue at every field that is missing or out of place. */
export function checkModeFields(region: ModeFields, context: z.RefinementCtx): void {
  const { mode, section } = region;
  const complain = complainTo(context);
  const own: readonly string[] = MEASURES[mode][section === undefined ? "alone" : "withSection"];
  for (const field of ALL_MEASURES) {
    const given = region[field] !== undefined && region[field] !== 0;
    if (!given || own.includes(field)) continue;
    const beside = section !== undefined && mode !== "pierced" && field !== "broken";
    complain(field, beside ? "is given beside a section, which has its own" : `does not belong to a ${mode} region`);
  }
  if (region.ribbon?.weave !== undefined) {
    for (const field of ["edge", "within", "without"] as const) {
      if (region[field] !== undefined)
        complain(field, "does not belong to a woven ribbon, which is worked strand by strand");
    }
    if (region.offset !== undefined && region.offset !== 0) complain("offset", "does not belong to a woven ribbon");
    if (mode !== "raised") complain("mode", "must be raised where the ribbon is woven");
    if (region.beads !== undefined)
      complain("beads", "cannot follow a woven ribbon, which hides them where it passes under");
  }
  if (region.beneath === true) {
    if (mode !== "raised") complain("beneath", `does not belong to a ${mode} region`);
    if (hasHeights(region) || region.ribbon?.weave !== undefined)
      complain("beneath", "does not belong to an image, a texture or a woven ribbon");
  }
  if (region.upright === true) {
    if (mode === "pierced")
      complain("upright", "does not belong to a pierced region, whose walls stand along the radius");
    if (region.ribbon?.weave !== undefined)
      complain(
        "upright",
        "does not belong to a woven ribbon, which bridges others along the surface's normal: leave it out",
      );
    if (region.beads !== undefined)
      complain(
        "upright",
        "does not belong to a region that carries beads, which stand along the surface's normal: put them in the design's beads, along the same path",
      );
  }
  if (mode === "pierced") {
    if (section !== undefined) complain("section", "does not belong to a pierced region");
    if (region.beads !== undefined) complain("beads", "cannot stand on a pierced region; draw a run beside the hole");
    return;
  }
  const measure = MEASURES[mode].alone[0];
  if (section === undefined && region[measure] === undefined) complain(measure, "is missing");
}
