/** The plan as JSON Schema, draft 2020-12, so that editors complete and check it. */
import { z } from "zod";
import type { JsonSchema } from "../../design/json-schema.js";
import { planSchema } from "./plan-schema.js";

/** The schema of what is written: fields with a default may be left out. */
export function planJsonSchema(): JsonSchema {
  const { $schema, ...rest } = z.toJSONSchema(planSchema, { target: "draft-2020-12", io: "input" });
  return { $schema, title: "annulet plan of a range", ...rest } as JsonSchema;
}
