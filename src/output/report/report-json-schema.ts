/**
 * The report as JSON Schema, draft 2020-12, for programs that read it.
 */
import { z } from "zod";
import type { JsonSchema } from "../../design/json-schema.js";
import { shareParts } from "../../design/share-parts.js";
import { reportSchema } from "./report-schema.js";

/**
 * The schema of the report that `make` writes; its version stands in the report's field `report`.
 *
 * @example
 * const { properties = {} } = reportJsonSchema();
 * console.log(Object.keys(properties)); // report, name, closed …
 */
export function reportJsonSchema(): JsonSchema {
  const { $schema, ...rest } = z.toJSONSchema(reportSchema, { target: "draft-2020-12", io: "output" });
  return { $schema, title: "annulet report", ...shareParts(rest) };
}
