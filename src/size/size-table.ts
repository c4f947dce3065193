/**
 * One bore in every size system, side by side.
 */
import { BORE_CIRCUMFERENCE, requireBore } from "./bore-range.js";
import { type SizeSystemOptions, systemsOf } from "./catalogue.js";

/** The nearest label of one system. Where the system does not reach the bore, all that follows `title` is undefined. */
export interface SizeRow {
  /** Name of the system. */
  readonly system: string;
  readonly title: string;
  readonly label: string | undefined;
  /** Circumference of that label, mm. */
  readonly circumference: number | undefined;
  /** Diameter of that label, mm. */
  readonly diameter: number | undefined;
  /** The label's circumference less the bore's, mm: above 0 where the label is the larger. */
  readonly difference: number | undefined;
  /** Smallest and largest circumference of that label in published charts, mm; undefined where they agree. */
  readonly span: readonly [number, number] | undefined;
}

/**
 * The nearest label of every system.
 *
 * @param circumference mm, 15.71 to 188.5
 * @throws AnnuletError `size-out-of-range`, `option-unknown`, `option-invalid`
 *
 * @example
 * for (const row of sizeTable(54)) console.log(row);
 */
export function sizeTable(circumference: number, options: SizeSystemOptions = {}): SizeRow[] {
  const bore = requireBore(circumference, BORE_CIRCUMFERENCE, "size.circumference");
  return systemsOf(options).map((system) => {
    const label = system.labelOf(bore);
    const nearest = label === undefined ? undefined : system.circumferenceOf(label);
    return {
      system: system.name,
      title: system.title,
      label,
      circumference: nearest,
      diameter: nearest === undefined ? undefined : nearest / Math.PI,
      difference: nearest === undefined ? undefined : nearest - bore,
      span: label === undefined ? undefined : system.spanOf?.(label),
    };
  });
}
