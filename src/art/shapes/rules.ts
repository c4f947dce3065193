/**
 * What the nodes of a shape ask of their operands and results.
 */
import { AnnuletError } from "../../base/errors.js";
import type { DrawnPaths } from "../read-art.js";

/**
 * @param what what becomes of lines alone: `takes nothing away`
 * @throws AnnuletError `shape-open` where the operand is made of lines, or holds some
 */
export function requireRegion(operand: DrawnPaths, where: string, what: string): void {
  if (operand.open.length === 0) return;
  throw new AnnuletError({
    code: "shape-open",
    message: `an open line has no inside, so it ${what}`,
    path: where,
    allowed: "shapes whose paths all end in Z",
    hint: "end the path with Z",
  });
}

/** @throws AnnuletError `shape-empty` where nothing is left */
export function requireSomething(drawn: DrawnPaths, where: string, message: string): DrawnPaths {
  if (drawn.closed.length + drawn.open.length > 0) return drawn;
  throw new AnnuletError({
    code: "shape-empty",
    message,
    path: where,
    allowed: "shapes that leave something",
    hint: "check their places and their unit",
  });
}
