/**
 * What a region with an image may say beside it.
 */
import type { z } from "zod";
import { complainTo } from "../complain.js";

/** The fields that an image decides on. */
export interface ImageFields {
  readonly image?: string | undefined;
  readonly map?: { readonly over: "tile" | "band" } | undefined;
  readonly tiles?: unknown;
  readonly mode: "raised" | "sunk" | "pierced";
  readonly round: number;
  readonly section?: unknown;
  readonly ribbon?: unknown;
  readonly edge?: unknown;
  readonly beads?: unknown;
  readonly offset?: unknown;
  readonly within?: unknown;
  readonly without?: unknown;
}

/** Raises an issue at every field that does not go with an image, and at a map without one. */
export function checkImageFields(region: ImageFields, context: z.RefinementCtx): void {
  const complain = complainTo(context);
  if (region.image === undefined) {
    if (region.map !== undefined) complain("map", "belongs to an image, and none is given");
    return;
  }
  if (region.mode === "pierced") complain("mode", "of an image is raised or sunk");
  if (region.round !== 0) complain("round", "does not belong to an image: smooth its map");
  if (region.section !== undefined) complain("section", "does not belong to an image, which is its own");
  if (region.edge !== undefined) complain("edge", "does not belong to an image, which has no outline");
  if (region.ribbon !== undefined) complain("ribbon", "does not belong to an image, which has no outline");
  if (region.map?.over === "band" && region.tiles !== undefined) {
    complain("tiles", "do not belong to an image over the band, which fills all of them");
  }
  for (const field of ["offset", "within", "without"] as const) {
    if (region[field] !== undefined) complain(field, "does not belong to an image, which has no outline");
  }
  if (region.beads !== undefined) complain("beads", "do not belong to an image; draw a run of their own");
}
