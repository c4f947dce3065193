/**
 * Marks of findings that lie over each other on the screen are one mark, which tells all of their numbers.
 */
import type { ScreenPoint } from "./flat-view.js";

/** A place of a finding on the screen. */
export interface FindingSpot {
  readonly at: ScreenPoint;
  /** As on the ring's balloons, from 1. */
  readonly number: number;
  readonly severity: string;
  readonly message: string;
}

/** A mark: where its first place is. */
export interface FindingMark {
  readonly at: ScreenPoint;
  readonly numbers: readonly number[];
  /** Of its gravest finding, which comes first. */
  readonly severity: string;
  readonly messages: readonly string[];
}

/** @param spots the gravest first @param near places nearer to each other than this are one, CSS pixels */
export function layOutFindings(spots: readonly FindingSpot[], near: number): readonly FindingMark[] {
  const marks: FindingMark[] = [];
  for (const { at, number, severity, message } of spots) {
    const i = marks.findIndex((mark) => Math.hypot(mark.at[0] - at[0], mark.at[1] - at[1]) < near);
    const there = marks[i];
    if (there === undefined) marks.push({ at, numbers: [number], severity, messages: [message] });
    else if (!there.numbers.includes(number)) {
      marks[i] = { ...there, numbers: [...there.numbers, number], messages: [...there.messages, message] };
    }
  }
  return marks;
}
