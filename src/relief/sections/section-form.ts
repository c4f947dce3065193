/**
 * What a form of section gives: its line from the region's outline inwards.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Point2 } from "../../base/math/point.js";

/** What a section is drawn into. */
export interface SectionFrame {
  /** mm from the outline to the middle of the region's widest place. */
  readonly reach: () => number;
  /** Largest distance of the line's chords from its curves, mm. */
  readonly tolerance: number;
  /** Where the section stands in the document, for errors. */
  readonly path: string;
}

/**
 * A section as points (d, h): d mm inside the outline, outside where negative, ascending; h mm above the seat. It goes
 * on level behind its last point; below its first the wall goes straight down.
 */
export type SectionLine = readonly Point2[];

export interface SectionForm<Spec> {
  /** @throws AnnuletError `section-misfit` or `round-too-large`, with the largest value that fits */
  readonly draw: (spec: Spec, frame: SectionFrame) => SectionLine;
}

/** The height at a distance inside the outline, mm; 0 outside the line's foot. */
export function heightAt(line: SectionLine, distance: number): number {
  if (distance < line[0][0]) return 0;
  const next = line.findIndex(([d]) => d > distance);
  if (next === -1) return line[line.length - 1][1];
  const [[d0, h0], [d1, h1]] = [line[next - 1], line[next]];
  return h0 + ((h1 - h0) * (distance - d0)) / (d1 - d0);
}

/** A field of the section that does not fit the others or the region. */
export function misfit(
  { path }: SectionFrame,
  field: string,
  rest: { readonly message: string; readonly value: number; readonly allowed: string; readonly hint: string },
): AnnuletError {
  return new AnnuletError({ code: "section-misfit", path: `${path}.${field}`, ...rest });
}
