/**
 * Axes of one place in the design: listed values, numbers in steps, materials.
 */
import { readPath } from "../../base/errors/document-path.js";
import { AnnuletError } from "../../base/errors.js";
import type { Plain } from "../../design/plain.js";
import type { Axis } from "./axis.js";
import { countSteps, type NumberSteps, numberAt } from "./number-steps.js";

/** Where the values go. */
export interface Place {
  /** In the design. */
  readonly path: string;
  /** Of the axis. Default the path's last name. */
  readonly name?: string | undefined;
}

/** @param where the axis stands in the plan, for errors */
export function listedAxis(place: Place, values: readonly Plain[], where: string): Axis {
  return ofPlace(place, values.length, (i) => values[i], where);
}

/** @throws AnnuletError `value-invalid` */
export function steppedAxis(place: Place, steps: NumberSteps, where: string): Axis {
  return ofPlace(place, countSteps(steps, where), (i) => numberAt(steps, i), where);
}

function ofPlace(
  { path, name = lastName(path, "") }: Place,
  length: number,
  at: (i: number) => Plain,
  where: string,
): Axis {
  requirePath(path, where);
  const named = name === "" ? lastName(path, where) : name;
  return {
    names: [named],
    length,
    at: (i) => ({ changes: [{ path, value: at(i) }], shown: { [named]: showValue(at(i)) } }),
  };
}

/** A value in a table. */
export function showValue(value: Plain): string {
  return typeof value === "string" ? value : JSON.stringify(value);
}

/** The last key of a path that is a name: `width` of `profile.width`, `height` of `pattern.regions[0].height`. */
export function lastName(path: string, otherwise: string): string {
  return (
    readPath(path)
      ?.findLast((key) => typeof key === "string" && /^[a-zA-Z][a-zA-Z0-9]*$/.test(key))
      ?.toString() ?? otherwise
  );
}

/** @throws AnnuletError `change-invalid` */
export function requirePath(path: string, where: string): void {
  if (readPath(path) !== undefined) return;
  throw new AnnuletError({
    code: "change-invalid",
    message: `${JSON.stringify(path)} is no path in a design`,
    path: where,
    value: path,
    allowed: "keys with dots between them and entries of lists in brackets, as pattern.regions[0].height",
  });
}
