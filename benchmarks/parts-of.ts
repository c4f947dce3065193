/**
 * The bodies of a design, by the first half of a build.
 */
import { openInside } from "../src/ring/open-ring.js";
import type { Parts } from "../src/solids/parts.js";

export async function partsOf(document: unknown): Promise<Parts> {
  const { answers } = await openInside(document).ask(["parts"]);
  return answers.parts;
}
