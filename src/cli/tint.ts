/**
 * Colour, only where somebody is watching.
 */
import { styleText } from "node:util";
import type { Io, TextStream } from "./io.js";
import { ownSequences } from "./plain-text.js";

export type Tone = "red" | "yellow" | "green" | "bold" | "dim";

/**
 * The text in a tone, for `print` and `say`, if the stream is a terminal and `NO_COLOR` is not set; else as it is. Node itself would look at the
 * process's standard output, which may go to a file while somebody reads the talk.
 */
export function tint(io: Io, stream: TextStream, tone: Tone, text: string): string {
  if (stream.isTTY !== true || io.env.NO_COLOR) return text;
  const [on, off] = styleText(tone, " ", { validateStream: false }).split(" ");
  return `${ownSequences(on)}${text}${ownSequences(off)}`;
}
