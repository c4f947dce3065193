/**
 * The rows of a group, from what its stones say of their places in them.
 */
import type { RowPlace } from "../placed-stone.js";

/** Stones one after another, as numbers; closed where the first follows the last. */
export interface Row {
  readonly stones: readonly number[];
  readonly closed: boolean;
}

/** Fewer do not go round. */
const LEAST_ROUND = 3;

/** The rows; a stone that stands alone is one by itself. */
export function rowsOf(stones: readonly { readonly row: RowPlace | undefined }[]): Row[] {
  const rows = new Map<string, { readonly index: number; readonly stone: number; readonly closed: boolean }[]>();
  stones.forEach(({ row }, stone) => {
    const key = row === undefined ? `alone ${stone}` : `row ${row.row}`;
    const list = rows.get(key) ?? [];
    list.push({ index: row?.index ?? 0, stone, closed: row?.closed ?? false });
    rows.set(key, list);
  });
  return [...rows.values()].map((list) => {
    const inOrder = list.sort((a, b) => a.index - b.index);
    const closed = inOrder[0].closed && inOrder.length >= LEAST_ROUND;
    return { stones: inOrder.map(({ stone }) => stone), closed };
  });
}
