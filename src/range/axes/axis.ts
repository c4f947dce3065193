/**
 * An axis of a range: a row of values, each made when it is asked for.
 */
import type { DocumentChange } from "../../design/change-document.js";

/** One value of an axis. */
export interface AxisValue {
  /** What it puts into the design. */
  readonly changes: readonly DocumentChange[];
  /** How it is told in names and tables, by the axis's names. */
  readonly shown: Readonly<Record<string, string>>;
}

export interface Axis {
  /** What names call it: one, or one for each column of rows. */
  readonly names: readonly string[];
  /** How many values it has, 1 or more. */
  readonly length: number;
  /** @param index 0 or more, below `length` */
  at(index: number): AxisValue;
}
