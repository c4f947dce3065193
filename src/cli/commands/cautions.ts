/**
 * annulet cautions: what whoever casts, wears or sells a ring should know.
 */
import { cautions } from "../../index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit-codes.js";
import { print, printJson } from "../io.js";
import { tint } from "../style.js";

/** Characters in a line of text: reads well, and fits the usual terminal of 80. */
const LINE_LENGTH = 76;

export const cautionsCommand: Command<{ json?: boolean }> = {
  name: "cautions",
  summary: "print what to know before casting, wearing or selling a ring",
  examples: [{ line: "annulet cautions", does: "safety and law, in short" }],
  args: [],
  options: [JSON_OPTION],
  async run({ options }, io) {
    if (options.json) printJson(io, cautions);
    else {
      const parts = cautions.map(({ topic, text }) => `${tint(io, io.stdout, "bold", topic)}\n${wrapLines(text)}`);
      print(io, parts.join("\n\n"));
    }
    return EXIT.done;
  },
};

/** Breaks text at spaces, each line indented by two. */
function wrapLines(text: string): string {
  const lines: string[] = [];
  let line = " ";
  for (const word of text.split(" ")) {
    if (line.length + 1 + word.length > LINE_LENGTH && line !== " ") {
      lines.push(line);
      line = " ";
    }
    line += ` ${word}`;
  }
  return [...lines, line].join("\n");
}
