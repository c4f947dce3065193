/**
 * What a region whose heights are given, by an image or a texture, may say beside it.
 */
import type { z } from "zod";
import { complainTo } from "../complain.js";

/** The fields that say where heights come from. */
export interface HeightSources {
  readonly image?: unknown;
  readonly texture?: unknown;
}

/** Whether a region is a height map, which has no outline: an image or a texture. */
export function hasHeights({ image, texture }: HeightSources): boolean {
  return image !== undefined || texture !== undefined;
}

/** The fields that an image or a texture decides on. */
export interface HeightFields extends HeightSources {
  readonly map?:
    | { readonly over: "tile" | "band"; readonly seam: unknown; readonly smooth?: number | undefined }
    | undefined;
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

/** Raises an issue at every field that does not go with an image or a texture, and at a map without one. */
export function checkHeightFields(region: HeightFields, context: z.RefinementCtx): void {
  const complain = complainTo(context);
  const { map } = region;
  if (!hasHeights(region)) {
    if (map !== undefined) complain("map", "belongs to an image or a texture, and none is given");
    return;
  }
  const one = region.image !== undefined ? "an image" : "a texture";
  if (region.mode === "pierced") complain("mode", `of ${one} is raised or sunk`);
  if (region.round !== 0) {
    complain("round", `does not belong to ${one}${region.image !== undefined ? ": smooth its map" : ""}`);
  }
  if (region.section !== undefined) complain("section", `does not belong to ${one}, which is its own`);
  if (map?.over === "band" && region.tiles !== undefined) {
    complain("tiles", `do not belong to ${one} over the band, which fills all of them`);
  }
  for (const field of ["edge", "ribbon", "offset", "within", "without"] as const) {
    if (region[field] !== undefined) complain(field, `does not belong to ${one}, which has no outline`);
  }
  if (region.beads !== undefined) complain("beads", `do not belong to ${one}; draw a run of their own`);
  if (region.image !== undefined) return;
  const ofMap = (field: string, message: string) => context.addIssue({ code: "custom", path: ["map", field], message });
  if (map?.smooth !== undefined) ofMap("smooth", "belongs to an image: a texture is drawn as smooth as it is");
  if (map !== undefined && map.seam !== "exact") ofMap("seam", "belongs to an image: a texture meets itself exactly");
}
