/**
 * annulet cautions: what whoever casts, wears or sells a ring should know.
 */
import { cautions } from "../../index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit.js";
import { print, printJson } from "../io.js";
import { tint } from "../tint.js";
import { wrapLines } from "../wrap-lines.js";

export const cautionsCommand: Command<{ json?: boolean }> = {
  name: "cautions",
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
