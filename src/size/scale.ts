/**
 * A size system made from a continuous scale: a label is read as a place on the scale, and the place has a
 * circumference. Labels are written at the scale's finest step, but any place between its ends can be read.
 */
import { safeText } from "../base/errors/safe-text.js";
import { AnnuletError } from "../base/errors.js";
import {
  A_FUNCTION,
  listOf,
  needed,
  numberAbove0,
  numberFrom,
  type OptionRules,
  requireFields,
  TEXT,
} from "../base/options.js";
import { chartSpan, type PublishedChart } from "./published-chart.js";
import type { SizeSystem } from "./size-system.js";

/** A continuous scale of sizes. */
export interface Scale extends Omit<SizeSystem, "circumferenceOf" | "labelOf" | "spanOf" | "labelsBetween"> {
  /** First and last place, both included. */
  readonly first: number;
  readonly last: number;
  /** Labels to a whole place: 1 for whole sizes, 4 for quarters. The map is linear from one step to the next. */
  readonly steps: number;
  /** The place a label means, or undefined where it cannot be read. */
  read(label: string | number): number | undefined;
  /** The label of a place that is on a step. */
  write(place: number): string;
  /** Circumference at a place, mm; rises with the place. */
  toCircumference(place: number): number;
  /** The inverse of `toCircumference`. */
  toPlace(circumference: number): number;
  /** Other charts that are published for it. Default none. */
  readonly charts?: readonly PublishedChart[];
}

/** Any number that is one. */
const PLACE = numberFrom(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);

const RULES: OptionRules<Scale> = {
  name: needed(TEXT),
  title: needed(TEXT),
  source: needed(TEXT),
  labels: needed(TEXT),
  example: needed(TEXT),
  first: needed(PLACE),
  last: needed(PLACE),
  steps: needed(numberAbove0("labels to a place")),
  read: needed(A_FUNCTION),
  write: needed(A_FUNCTION),
  toCircumference: needed(A_FUNCTION),
  toPlace: needed(A_FUNCTION),
  charts: listOf(
    isChart,
    "charts, {source, entries}, the entries two or more pairs of a place and a circumference, mm",
  ),
};

function isChart(value: unknown): boolean {
  const { source, entries } = Object(value) as Partial<PublishedChart>;
  return typeof source === "string" && Array.isArray(entries) && entries.length > 1 && entries.every(isEntry);
}

function isEntry(entry: unknown): boolean {
  return Array.isArray(entry) && entry.length === 2 && entry.every(Number.isFinite);
}

/** Rounding error that is let pass at the two ends of a scale, in places. */
const END_SLACK = 1e-9;

/**
 * Turns a scale into a size system of your own, in place of the built-in ones or beside them.
 *
 * @throws AnnuletError as `requireFields`
 *
 * @example
 * const millimetres = scaleSystem({
 *   name: "mm",
 *   title: "inner diameter",
 *   source: "ours",
 *   labels: "10 to 30",
 *   example: "17.5",
 *   first: 10,
 *   last: 30,
 *   steps: 10,
 *   read: Number,
 *   write: String,
 *   toCircumference: (place) => Math.PI * place,
 *   toPlace: (circumference) => circumference / Math.PI,
 * });
 * resolveSize({ system: "mm", value: 17.5 }, { systems: [millimetres] }).diameter; // 17.5 mm
 */
export function scaleSystem(scale: Scale): SizeSystem {
  requireFields("scale", scale, RULES);
  const { name, title, source, labels, example, first, last, steps, charts = [] } = scale;
  const placeOf = (label: string | number): number => {
    const readable = typeof label === "string" || typeof label === "number";
    const place = readable ? scale.read(label) : undefined;
    if (place !== undefined && place >= first && place <= last) return place;
    throw new AnnuletError({
      code: "size-unknown",
      message: `${title} has no size ${safeText(label)}.`,
      path: "size.value",
      value: label,
      allowed: labels,
      hint: `Write it like ${example}, or give the bore itself: {"diameter": mm} or {"circumference": mm}.`,
    });
  };
  return {
    name,
    title,
    source,
    labels,
    example,
    circumferenceOf: (label) => scale.toCircumference(placeOf(label)),
    spanOf(label) {
      const place = placeOf(label);
      return chartSpan(scale.toCircumference(place), place, charts);
    },
    labelsBetween(from, to, step) {
      const [low, high] = [placeOf(from), placeOf(to)];
      const stride = requireStride(step, steps);
      if (low > high) throw backwards(from, to);
      const count = Math.floor((high - low) / stride + END_SLACK) + 1;
      return Array.from({ length: count }, (_, i) => scale.write(Math.round((low + i * stride) * steps) / steps));
    },
    labelOf(circumference) {
      if (typeof circumference !== "number") return undefined;
      const place = scale.toPlace(circumference);
      if (!(place >= first - END_SLACK && place <= last + END_SLACK)) return undefined;
      return scale.write(Math.round(place * steps) / steps);
    },
  };
}

/** @throws AnnuletError `size-step-invalid` where a step does not lead from label to label */
function requireStride(step: number, steps: number): number {
  const strides = step * steps;
  if (strides > 1 - END_SLACK && Math.abs(strides - Math.round(strides)) < END_SLACK) return step;
  const finest = 1 / steps;
  throw new AnnuletError({
    code: "size-step-invalid",
    message: "The step leads to no label of this size system.",
    value: step,
    allowed: `${finest}, or a multiple of it`,
  });
}

function backwards(from: string | number, to: string | number): AnnuletError {
  const message = `The size ${safeText(from)} is larger than ${safeText(to)}.`;
  return new AnnuletError({ code: "size-step-invalid", message, value: from, hint: "begin with the smaller one" });
}
