/**
 * What tells designs apart: a digest of the design as canonical JSON (RFC 8785), its keys sorted by their UTF-16 code units.
 */
import { sha256 } from "../base/sha256.js";
import type { Design } from "./schema.js";

/**
 * SHA-256 of a design with its defaults filled in, 64 hexadecimal digits. Documents that mean the same have the same, however
 * they are written; `$schema`, which is for editors, does not count, and neither does what is in files that it names.
 */
export function digestOf({ $schema: _, ...design }: Design): string {
  return sha256(canonicalJson(design));
}

/** Numbers and texts are as `JSON.stringify` writes them (3.2.2). Fields that are undefined are not there. */
function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).filter(([, inner]) => inner !== undefined);
  // A sorted object would not do: names that are whole numbers come first in every object.
  const sorted = fields.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${sorted.map(([key, inner]) => `${JSON.stringify(key)}:${canonicalJson(inner)}`).join(",")}}`;
}
