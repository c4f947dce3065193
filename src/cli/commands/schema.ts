/**
 * annulet schema: the JSON Schema of the design document.
 */
import { designJsonSchema } from "../../index.js";
import type { Command } from "../command.js";
import { EXIT } from "../exit-codes.js";
import { print } from "../io.js";
import { showSchema } from "../show-schema.js";

export const schemaCommand: Command = {
  name: "schema",
  summary: "print the JSON Schema of the design document",
  examples: [{ line: "annulet schema > annulet.schema.json", does: "for editors that complete and check JSON" }],
  args: [],
  options: [],
  async run(_, io) {
    print(io, showSchema(designJsonSchema()));
    return EXIT.done;
  },
};
