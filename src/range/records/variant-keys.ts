/**
 * What tells variants apart: digests of all that a variant follows from.
 */
import { canonicalText } from "../../base/canonical.js";
import { sha256 } from "../../base/sha256.js";
import { VERSION } from "../../base/version.js";
import type { PlainObject } from "../../design/plain.js";
import type { Plan } from "../plan/plan-schema.js";

/** What is written of each variant, and how. */
export type Making = Pick<Plan, "outputs" | "piece" | "pictureWidth">;

/** Name in the design → SHA-256 of the file; `missing` where there is none. */
export type FileDigests = Readonly<Record<string, string>>;

/** Of the design as it is built. */
export function makingKey(design: string, files: FileDigests, { outputs, piece, pictureWidth }: Making): string {
  return sha256(canonicalText([VERSION, design, sorted(files), [...outputs].sort(), piece, pictureWidth]));
}

/** The same before the variant is planned, for which its design need not be read: what is as it was need not be looked at. */
export function sourceText(
  plan: Pick<Plan, "family" | "leaveOut"> & Making,
  document: PlainObject,
  files: FileDigests,
): string {
  const { family, leaveOut, outputs, piece, pictureWidth } = plan;
  return JSON.stringify([VERSION, document, sorted(files), family, leaveOut, outputs, piece, pictureWidth]);
}

function sorted(files: FileDigests): readonly (readonly [string, string])[] {
  return Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1));
}
