/**
 * The section of a region as its document gives it, and the height at which it carries beads.
 */
import { AnnuletError } from "../errors.js";
import type { GridRegion } from "./polygons.js";
import type { RunLine } from "./runs.js";
import type { RegionSpec } from "./schema.js";
import { sectionLine } from "./section.js";
import type { SectionSpec } from "./sections/index.js";
import { heightAt } from "./sections/section-form.js";
import type { Strip } from "./strip.js";

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
 * A section that falls towards the outline does so at the ends of an open ribbon too, and leaves beads there in the air.
 *
 * @throws AnnuletError `beads-off-region`
 */
export function requireCarried(spec: RegionSpec, lines: readonly RunLine[], path: string): void {
  const form = spec.section?.form ?? "flat";
  if (form === "flat" || spec.beads?.on !== "centre" || lines.every(({ kind }) => kind !== "open")) return;
  throw new AnnuletError({
    code: "beads-off-region",
    message: `beads along an open ribbon would stand in the air at its ends, where its ${form} section changes its height`,
    path: `${path}.beads.on`,
    value: spec.beads.on,
    allowed: "a flat section, or a line that closes or runs round",
    hint: 'make the section flat, let the ribbon run round, or draw the beads as a run of their own with "along": {"path": …}',
  });
}
