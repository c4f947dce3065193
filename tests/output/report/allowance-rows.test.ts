import { describe, expect, it } from "vitest";
import { allowanceRows } from "../../../src/output/report/allowance-rows.js";

const column = (first: number, material: string) => ({
  bore: first,
  width: first + 1,
  thickness: first + 2,
  wall: first + 3,
  relief: material === "resin" ? null : first + 4,
  volume: first + 5,
  weight: first + 6,
  material,
});

describe("casting allowances as rows", () => {
  it("have each size once: finished, cast, master", () => {
    const columns = { finished: column(10, "ag925"), cast: column(20, "ag925"), master: column(30, "resin") };
    const rows = allowanceRows(
      columns,
      (value) => (value === null ? "none" : String(value)),
      (grams, symbol) => `${grams} of ${symbol}`,
    );
    expect(rows).toEqual([
      ["bore, mm", "10", "20", "30"],
      ["width, mm", "11", "21", "31"],
      ["thickness, mm", "12", "22", "32"],
      ["wall under the seat, mm", "13", "23", "33"],
      ["relief, mm", "14", "24", "none"],
      ["volume, mm³", "15", "25", "35"],
      ["weight, g", "16 of ag925", "26 of ag925", "36 of resin"],
      ["weighed in", "ag925", "ag925", "resin"],
    ]);
  });
});
