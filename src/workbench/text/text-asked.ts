/**
 * A place in the text that a view leads to.
 */
import { signal } from "@preact/signals";
import type { Path } from "../state/json-text.js";

/** The place that was asked for last; a new one each time, so that it is heard. */
export const textAsked = signal<{ readonly path: Path } | undefined>(undefined);

/** Opens the text and puts the caret on a value. */
export function leadToText(path: Path): void {
  textAsked.value = { path };
}
