/**
 * A part of the work in the page's language.
 */
import { english, type WordKey } from "./english.js";
import { say } from "./language.js";

/** What the library calls a part, in words; a part without words by its own name. */
export function sayStage(stage: string): string {
  const key = `stage.${stage}`;
  return Object.hasOwn(english, key) ? say(key as WordKey) : stage;
}
