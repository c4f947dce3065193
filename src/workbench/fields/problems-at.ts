/**
 * Which problems of the document belong to a field.
 */
import type { Problem } from "../../index.js";
import { type Path, pathOf } from "../state/json-text.js";
import { isInside } from "./place.js";

/** Problems of the field itself, and of anything in it. */
export function problemsIn(problems: readonly Problem[], path: Path): Problem[] {
  return problems.filter((problem) => problem.path !== undefined && isInside(pathOf(problem.path), path));
}

/**
 * Problems of a part itself, and of what is written in it under keys that have no control of their own.
 *
 * @param shown keys that have one
 */
export function problemsOnly(problems: readonly Problem[], path: Path, shown: readonly string[]): Problem[] {
  return problemsIn(problems, path).filter((problem) => {
    const next = pathOf(problem.path ?? "")[path.length];
    return next === undefined || !shown.includes(String(next));
  });
}
