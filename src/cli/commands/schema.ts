/**
 * annulet schema: the JSON Schemas of the design document and of the report.
 */
import { AnnuletError, designJsonSchema, reportJsonSchema } from "../../index.js";
import type { Command } from "../command.js";
import { EXIT } from "../exit.js";
import { print } from "../io.js";
import { showSchema } from "../show-schema.js";

const SCHEMAS: Readonly<Record<string, () => object>> = { design: designJsonSchema, report: reportJsonSchema };

export const schemaCommand: Command = {
  name: "schema",
  examples: [
    { line: "annulet schema > annulet.schema.json", does: "for editors that complete and check JSON" },
    { line: "annulet schema report", does: "for programs that read what make reports" },
  ],
  args: [{ name: "[of]", description: `${Object.keys(SCHEMAS).join(" or ")}; default design` }],
  options: [],
  async run({ args: [of = "design"] }, io) {
    const schema = Object.hasOwn(SCHEMAS, of) ? SCHEMAS[of] : undefined;
    if (schema === undefined) {
      throw new AnnuletError({
        code: "usage",
        message: `there is no schema ${JSON.stringify(of)}`,
        value: of,
        allowed: Object.keys(SCHEMAS).join(", "),
      });
    }
    print(io, showSchema(schema()));
    return EXIT.done;
  },
};
