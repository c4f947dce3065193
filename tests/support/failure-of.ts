import { AnnuletError } from "../../src/base/errors.js";

/** The error that a call throws. */
export function failureOf(call: () => unknown): AnnuletError {
  try {
    call();
  } catch (error) {
    if (error instanceof AnnuletError) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
}
