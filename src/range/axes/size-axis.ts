/**
 * The axis of finger sizes: labels of a system from one to another, or bores in mm.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Plain } from "../../design/plain.js";
import { findSizeSystem } from "../../size/catalogue.js";
import { type AxisSpec, MEASURES } from "../plan/plan-schema.js";
import type { Axis } from "./axis.js";
import { countSteps, numberAt } from "./number-steps.js";

type SizeSpecOfPlan = Extract<AxisSpec, { size: unknown }>["size"];

/**
 * @param path of the axis in the plan, for errors
 * @throws AnnuletError `size-unknown`, `size-step-invalid`, `value-invalid`, each with its path
 */
export function sizeAxis(spec: SizeSpecOfPlan, path: string): Axis {
  const { system } = spec;
  const measure = MEASURES.find((name) => name === system);
  if (measure !== undefined) return measuredAxis(measure, spec, path);
  const labels = "values" in spec ? spec.values : placed(path, () => stepLabels(spec));
  return ofSizes(labels.length, (i) => {
    const label = labels[i];
    return { size: { system, value: asWritten(label) }, shown: String(label) };
  });
}

const NUMBER = /^\d+(\.\d+)?$/;

/** A label that is a number is written as one, as designs have it: so that equal designs are told to be equal. */
export function asWritten(label: string | number): string | number {
  return typeof label === "string" && NUMBER.test(label) ? Number(label) : label;
}

function stepLabels(spec: Exclude<SizeSpecOfPlan, { values: unknown }>): readonly (string | number)[] {
  const system = findSizeSystem(spec.system);
  return system.labelsBetween?.(spec.from, spec.to, spec.step) ?? [];
}

function measuredAxis(measure: (typeof MEASURES)[number], spec: SizeSpecOfPlan, path: string): Axis {
  if ("values" in spec) {
    return ofSizes(spec.values.length, (i) => ({ size: { [measure]: spec.values[i] }, shown: String(spec.values[i]) }));
  }
  const steps = { from: millimetres(spec.from, path), to: millimetres(spec.to, path), step: spec.step };
  return ofSizes(countSteps(steps, path), (i) => {
    const mm = numberAt(steps, i);
    return { size: { [measure]: mm }, shown: String(mm) };
  });
}

function millimetres(value: string | number, path: string): number {
  if (typeof value === "number") return value;
  throw new AnnuletError({
    code: "value-invalid",
    message: "must be a number of mm",
    path,
    value,
    allowed: "a number",
  });
}

function ofSizes(length: number, sizeAt: (index: number) => { readonly size: Plain; readonly shown: string }): Axis {
  return {
    names: ["size"],
    length,
    at(index) {
      const { size, shown } = sizeAt(index);
      return { changes: [{ path: "size", value: size }], shown: { size: shown } };
    },
  };
}

/** Tells where in the plan a size stands that its system does not take. */
function placed<Result>(path: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    throw new AnnuletError(
      error.problems.map((problem) => ({ ...problem, path })),
      { cause: error },
    );
  }
}
