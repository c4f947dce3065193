/**
 * What makes a row come to a number of stones.
 */
import type { Path } from "../state/json-text.js";

/** Writes the count; a gap that is told goes, since either stands for the other. @param group place of its group */
export function stoneValues(group: Path, count: number): (readonly [Path, unknown])[] {
  const place = [...group, "place"];
  return [
    [[...place, "count"], count],
    [[...place, "gap"], undefined],
  ];
}
