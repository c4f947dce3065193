/**
 * What messages can go to and come from.
 */
import type { OptionRule } from "../base/options.js";

/** A worker, the inside of one, or one end of a channel. */
export const PORT: OptionRule = { holds: isPort, allowed: "a Worker or a MessagePort" };

function isPort(value: unknown): boolean {
  const { postMessage, addEventListener, removeEventListener } = Object(value) as Partial<MessagePort>;
  return [postMessage, addEventListener, removeEventListener].every((method) => typeof method === "function");
}
