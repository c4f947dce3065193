/**
 * What is wrong with the document, at its places in the text.
 */
import type { Problem } from "../../index.js";
import { type Misread, pathOf, placeOf } from "../state/json-text.js";
import { sayProblem } from "../words/say-problem.js";

/** A part of the text with what is wrong there. */
export interface TextMark {
  readonly from: number;
  readonly to: number;
  readonly message: string;
}

/** Where the text is no document that alone is told; else each problem at its field. */
export function marksIn(text: string, misread: Misread | undefined, problems: readonly Problem[]): TextMark[] {
  if (misread !== undefined) {
    const from = Math.min(misread.at, text.length);
    return [{ from, to: Math.min(from + 1, text.length), message: misread.message }];
  }
  return problems.map((problem) => {
    const { text: said, allowed, hint } = sayProblem(problem);
    const message = [said, allowed, hint].filter((part) => part !== undefined).join(" · ");
    return { ...placeOf(text, pathOf(problem.path ?? "")), message };
  });
}
