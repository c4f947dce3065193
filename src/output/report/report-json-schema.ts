/**
 * The report as JSON Schema, draft 2020-12, for programs that read it.
 */
import { z } from "zod";
import type { JsonSchema } from "../../design/json-schema.js";
import { shareParts } from "../../design/share-parts.js";
import { reportSchema } from "./report-schema.js";
import { REPORT_SCHEMA } from "./report-version.js";

/**
 * The schema of the report that `make` writes; every report carries its name as `$schema`.
 *
 * @example
 * const { properties = {} } = reportJsonSchema();
 * console.log(Object.keys(properties)); // report, name, closed …
 */
export function reportJsonSchema(): JsonSchema {
  const { $schema, ...rest } = z.toJSONSchema(reportSchema, { target: "draft-2020-12", io: "output" });
  return { $schema, $id: REPORT_SCHEMA, title: "annulet report", ...shareParts(rest) };
}
