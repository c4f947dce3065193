/**
 * The designs that come with the package.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";

/** Name → document of every example; empty where the package was installed without them. */
export function exampleDesigns(): Record<string, unknown> {
  // Two folders up from sources and from what is built.
  const folder = new URL("../../examples/", import.meta.url);
  if (!existsSync(folder)) return {};
  const names = readdirSync(folder).filter((name) => /^[a-z]+-[a-z-]+\.json$/.test(name));
  return Object.fromEntries(names.map((name) => [name, JSON.parse(readFileSync(new URL(name, folder), "utf8"))]));
}
