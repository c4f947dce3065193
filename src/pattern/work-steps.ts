/**
 * The order of work: what stands in a list beside each other and is all raised, or all cut, is worked at one time.
 */
import type { FlatBody } from "../relief/flat-body.js";

/** What is added to the band, or cut out of it, at one time. */
export interface WorkStep<Item> {
  readonly op: "add" | "cut";
  /** At least one. */
  readonly items: readonly Item[];
}

/**
 * A list in steps.
 *
 * @param modeOf whether an item is raised, sunk or pierced
 */
export function workSteps<Item>(list: readonly Item[], modeOf: (item: Item) => FlatBody["mode"]): WorkStep<Item>[] {
  const steps: { readonly op: "add" | "cut"; readonly items: Item[] }[] = [];
  for (const item of list) {
    const op = modeOf(item) === "raised" ? "add" : "cut";
    const last = steps.at(-1);
    if (last?.op === op) last.items.push(item);
    else steps.push({ op, items: [item] });
  }
  return steps;
}
