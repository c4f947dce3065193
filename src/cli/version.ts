/**
 * The version that the package's own description tells.
 */
import { readFileSync } from "node:fs";

/** The description lies two folders up from sources and from what is built. */
export function readVersion(): string {
  const { version } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
  return version;
}
