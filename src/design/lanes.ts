/**
 * Lanes: patterns side by side across the seat. A pattern without lanes is one lane as high as the seat.
 */
import { AnnuletError } from "../base/errors.js";
import type { FitSpec } from "./pattern/fit.js";
import { laneName } from "./pattern/lane-name.js";
import type { PatternSpec } from "./pattern/pattern.js";

/** A lane as the document describes it, with what it shares with the others filled in. */
export interface Lane extends Pick<PatternSpec, "symmetry" | "cycle" | "shapes" | "regions" | "medallion" | "ends"> {
  /** Name for messages and reports; empty where the pattern is one. */
  readonly name: string;
  /** Where it stands in the document. */
  readonly where: string;
  readonly fit: FitSpec;
  /** Its share of the seat, against the other lanes'. */
  readonly share: number;
}

/** The lanes of a pattern, the lowest first. */
export function lanesOf(pattern: PatternSpec): Lane[] {
  const { lanes } = pattern;
  return lanes === undefined
    ? [{ ...pattern, name: "", where: "pattern", share: 1 }]
    : severalLanes({ ...pattern, lanes });
}

/** The lanes of a pattern that has some. */
export function severalLanes({
  lanes,
  fit,
  shapes,
}: Pick<PatternSpec, "fit" | "shapes"> & { readonly lanes: NonNullable<PatternSpec["lanes"]> }): Lane[] {
  return lanes.map((lane, i) => ({
    ...lane,
    name: laneName(lane, i),
    where: `pattern.lanes[${i}]`,
    shapes,
    fit: { ...lane.fit, hold: fit.hold, taper: fit.taper },
  }));
}

/** What to say of a lane that is not there. */
export function noSuchLane(lane: unknown, lanes: readonly Lane[], path: string): AnnuletError {
  return new AnnuletError({
    code: "no-such-lane",
    message: `there is no lane ${JSON.stringify(lane)}`,
    path,
    value: lane,
    allowed: lanes.length === 1 ? "none: the pattern has no lanes" : lanes.map(({ name }) => name).join(", "),
  });
}
