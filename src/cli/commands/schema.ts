/**
 * annulet schema: the JSON Schemas of the design document, the report and the plan of a range.
 */
import { AnnuletError, designJsonSchema, reportJsonSchema } from "../../index.js";
import { planJsonSchema } from "../../range/plan/plan-json-schema.js";
import type { Command } from "../command.js";
import { EXIT } from "../exit.js";
import { print } from "../io.js";
import { showSchema } from "../show-schema.js";

const SCHEMAS: Readonly<Record<string, () => object>> = {
  design: designJsonSchema,
  report: reportJsonSchema,
  plan: planJsonSchema,
};

export const schemaCommand: Command = {
  name: "schema",
  examples: [
    { line: "annulet schema > annulet.schema.json", does: "for editors that complete and check JSON" },
    { line: "annulet schema report", does: "for programs that read what make reports" },
    { line: "annulet schema plan", does: "for those who write plans of a range" },
  ],
  args: [{ name: "[of]", description: `${Object.keys(SCHEMAS).join(", ")}; default design` }],
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
