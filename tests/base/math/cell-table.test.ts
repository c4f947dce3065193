import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CellTable } from "../../../src/base/math/cell-table.js";
import { SEED } from "../../band/profile/specs.js";

const listOf = (table: CellTable, [x, y, z]: readonly [number, number, number]) => {
  const found: number[] = [];
  for (let item = table.first(x, y, z); item !== -1; item = table.next(item)) found.push(item);
  return found;
};

describe("CellTable", () => {
  it("gives the items of a cell in the order in which they came, as a map of lists does", () => {
    // So few numbers that cells are met again, and one that only 32 bits tell from 0.
    const number = fc.constantFrom(-(2 ** 31), -2, -1, 0, 1, 2, 2 ** 31 - 1);
    const cell = fc.tuple(number, number, number);
    fc.assert(
      fc.property(fc.array(cell, { maxLength: 400 }), cell, (cells, other) => {
        const table = new CellTable();
        const lists = new Map<string, number[]>();
        cells.forEach((one, i) => {
          table.add(...one);
          lists.set(String(one), [...(lists.get(String(one)) ?? []), i]);
        });
        for (const one of [...cells, other]) expect(listOf(table, one)).toEqual(lists.get(String(one)) ?? []);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it("keeps cells apart whose hashes end alike, however many there are", () => {
    // The last 24 bits of these numbers, and so of their hashes, are 0.
    const table = new CellTable();
    const cells = Array.from({ length: 256 }, (_, i): [number, number, number] => [(i - 128) * 2 ** 24, 0, 0]);
    for (const cell of cells) table.add(...cell);
    cells.forEach((cell, i) => {
      expect(listOf(table, cell)).toEqual([i]);
    });
    expect(listOf(table, [1, 0, 0])).toEqual([]);
  });
});
