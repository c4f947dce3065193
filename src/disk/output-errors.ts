/**
 * Errors about files that cannot be written.
 */

import { AnnuletError } from "../base/errors.js";
import { reasonOf } from "./reason-of.js";

/**
 * @param message a whole sentence, or one that the system's reason completes
 * @param cause the system's error
 * @param written the files that are in place already, when some may be
 */
export function outputError(
  code: string,
  path: string,
  message: string,
  cause?: unknown,
  written?: readonly string[],
): AnnuletError {
  const sentence = cause === undefined ? message : `${message}: ${reasonOf(cause)}.`;
  const state =
    written === undefined ? "" : written.length === 0 ? " Nothing was written." : ` Written: ${written.join(", ")}.`;
  return new AnnuletError({ code, message: sentence + state, value: path }, { cause });
}
