/**
 * The section of a region as its document gives it, and the height at which it carries beads.
 */
import { AnnuletError } from "../base/errors.js";
import type { RegionSpec } from "../design/pattern/region.js";
import type { SectionSpec } from "../design/sections/section.js";
import type { GridRegion } from "../flat/polygons.js";
import type { RunLine } from "../flat/runs.js";
import type { Strip } from "../flat/strip.js";
import { taperOf } from "./ribbons/tapered-ribbon.js";
import { sectionLine } from "./section.js";
import { heightAt } from "./sections/section-form.js";

/** A region's section and where it stands in the document. Height and round, or depth and round, are a flat one's. */
export function sectionOf(spec: RegionSpec, path: string): { readonly section: SectionSpec; readonly path: string } {
  if (spec.section !== undefined) return { section: spec.section, path: `${path}.section` };
  const height = (spec.mode === "sunk" ? spec.depth : spec.height) ?? 0;
  return { section: { form: "flat", height, round: spec.round, bevel: 0, draft: 0 }, path };
}

/** mm above the seat of the surface that carries a region's beads: of a sunk one, its floor, below the seat. */
export function carryingHeight(strip: Strip, spec: RegionSpec, region: GridRegion, path: string): number {
  const { section, path: where } = sectionOf(spec, path);
  const sign = spec.mode === "sunk" ? -1 : 1;
  if (section.form === "flat") return sign * section.height;
  return sign * heightAt(sectionLine(strip, region, section, where), insideBy(spec));
}

/** mm from the region's outline in to its bead line. */
function insideBy({ beads, ribbon }: RegionSpec): number {
  const width = ribbon?.width ?? 0;
  if (beads?.on === "centre") return width / 2;
  if (beads?.on === "border") return ribbon?.side === "centre" ? width / 2 : 0;
  const inside = beads?.on ?? 0;
  return ribbon === undefined ? inside : Math.max(0, Math.min(inside, width - inside));
}

/**
 * Where a region's beads would not stand on it: a section that falls towards the outline does so at the ends of an open
 * ribbon too; along a tapering one its height changes; and between ribbons side by side there is a gap.
 *
 * @throws AnnuletError `beads-off-region`
 */
export function requireCarried(spec: RegionSpec, lines: readonly RunLine[], path: string): void {
  const { ribbon, beads } = spec;
  if (beads === undefined || ribbon === undefined) return;
  const complain = (message: string, allowed: string, hint: string) => {
    return new AnnuletError({
      code: "beads-off-region",
      message,
      path: `${path}.beads.on`,
      value: beads.on,
      allowed,
      hint,
    });
  };
  const alone = 'draw the beads as a run of their own with "along": {"path": …}';
  if (ribbon.copies !== undefined && beads.on !== "centre" && (beads.on !== "border" || ribbon.side === "centre")) {
    throw complain(
      "beads beside the centre lines of several ribbons would stand in the gaps between them",
      '"centre"; "border" on ribbons inside or outside of it',
      `say "on": "centre", or ${alone}`,
    );
  }
  const form = spec.section?.form ?? "flat";
  if (form === "flat") return;
  if (taperOf(ribbon) !== undefined) {
    throw complain(
      `beads on a tapering ribbon would not follow its ${form} section, whose height changes with the width`,
      "a flat section, or a ribbon of one width",
      `make the section flat, or ${alone}`,
    );
  }
  if (beads.on !== "centre" || lines.every(({ kind }) => kind !== "open")) return;
  throw complain(
    `beads along an open ribbon would stand in the air at its ends, where its ${form} section changes its height`,
    "a flat section, or a line that closes or runs round",
    `make the section flat, let the ribbon run round, or ${alone}`,
  );
}
