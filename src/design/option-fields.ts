/**
 * Fields of options that no document holds: functions, signals, bytes.
 */
import { z } from "zod";

/** A function of the caller's. */
export function functionField<Given extends (...args: never[]) => unknown>(description: string): z.ZodType<Given> {
  const isFunction = (value: unknown) => typeof value === "function";
  return z
    .custom<Given>(isFunction, { error: "is no function", params: { allowed: "a function" } })
    .describe(description);
}

/** What can be asked whether it is aborted, and tells when it is. */
export const signalField = z
  .custom<AbortSignal>(isSignal, { error: "is no signal", params: { allowed: "the signal of an AbortController" } })
  .describe("stops the work");

function isSignal(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return false;
  const { aborted, addEventListener, removeEventListener } = value as Partial<AbortSignal>;
  return (
    typeof aborted === "boolean" && typeof addEventListener === "function" && typeof removeEventListener === "function"
  );
}

/** Bytes, from this realm or another. */
export function isBytes(value: unknown): value is Uint8Array {
  return Object.prototype.toString.call(value) === "[object Uint8Array]";
}
