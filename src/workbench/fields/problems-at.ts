/**
 * Which problems of the document belong to a field.
 */
import type { Warning } from "../../entries/worker.js";
import type { Problem } from "../../index.js";
import { type Path, pathOf } from "../state/json-text.js";
import { isInside } from "./place.js";

/** Problems of the field itself, and of anything in it. */
export function problemsIn<Told extends Pick<Problem, "path">>(problems: readonly Told[], path: Path): Told[] {
  return problems.filter((problem) => problem.path !== undefined && isInside(pathOf(problem.path), path));
}

/** Warnings about stones: they say which of many are meant, so they are told at their fields too. */
export function stoneWarnings(warnings: readonly Warning[]): Warning[] {
  return warnings.filter(({ path }) => path !== undefined && /^stones\b/.test(path));
}

/**
 * Problems of a part itself, and of what is written in it under keys that have no control of their own.
 *
 * @param shown keys that have one
 */
export function problemsOnly<Told extends Pick<Problem, "path">>(
  problems: readonly Told[],
  path: Path,
  shown: readonly string[],
): Told[] {
  return problemsIn(problems, path).filter((problem) => {
    const next = pathOf(problem.path ?? "")[path.length];
    return next === undefined || !shown.includes(String(next));
  });
}
