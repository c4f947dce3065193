/**
 * Fields of options that no document holds: functions, signals, bytes.
 */
import { z } from "zod";
import { BYTES, SIGNAL } from "../base/options.js";

/** A function of the caller's. */
export function functionField<Given extends (...args: never[]) => unknown>(description: string): z.ZodType<Given> {
  const isFunction = (value: unknown) => typeof value === "function";
  return z
    .custom<Given>(isFunction, { error: "is no function", params: { allowed: "a function" } })
    .describe(description);
}

/** What can be asked whether it is aborted, and tells when it is. */
export const signalField = z
  .custom<AbortSignal>(SIGNAL.holds, { error: "is no signal", params: { allowed: SIGNAL.allowed } })
  .describe("stops the work");

/** Bytes, from this realm or another. */
export function isBytes(value: unknown): value is Uint8Array {
  return BYTES.holds(value);
}
