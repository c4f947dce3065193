/**
 * What a ring size system is: a pair of maps between the labels a jeweller writes and the bore's circumference.
 */

/** A size system. Any value of this shape can stand beside the built-in ones. */
export interface SizeSystem {
  /** Name in documents, lower case: `iso`, `us`, `us-gauge`, `uk`, `japan`, `swiss`, `german`, `india`. */
  readonly name: string;
  /** Name in tables. */
  readonly title: string;
  /** Standard or handbook the numbers come from, with their certainty in words. */
  readonly source: string;
  /** What labels look like and their range, in words; shown by errors as what is allowed. */
  readonly labels: string;
  /** A label that is understood. */
  readonly example: string;
  /**
   * Inner circumference of a label, mm.
   *
   * @throws AnnuletError `size-unknown` for a label that cannot be read or lies outside the range
   */
  circumferenceOf(label: string | number): number;
  /**
   * Smallest and largest circumference that published charts have for a label, mm; undefined where they agree. Default:
   * nothing is known of other charts.
   *
   * @throws AnnuletError as `circumferenceOf`
   */
  spanOf?(label: string | number): readonly [number, number] | undefined;
  /**
   * The labels from one to another, both included where the step leads there. Default: the system cannot be stepped through.
   *
   * @param step in the system's own places, such as 0.5 for half sizes
   * @throws AnnuletError as `circumferenceOf`; `size-step-invalid` where the step leads to no label, or backwards
   */
  labelsBetween?(from: string | number, to: string | number, step: number): readonly string[];
  /** The label nearest to a circumference in mm, at the system's finest step; undefined outside its range. */
  labelOf(circumference: number): string | undefined;
}
