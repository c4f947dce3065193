import { describe, expect, it } from "vitest";
import { alloys, findAlloy } from "../../../src/measure/alloys/catalogue.js";
import { weighPiece } from "../../../src/measure/weights/weight-table.js";
import { failureOf } from "../../support/failure-of.js";

const resin = findAlloy("resin");
const wax = findAlloy("wax");

/** A piece that loses 5 % to finishing and shrinks by 1.5 % from pattern to casting, by 2 % from file to casting. */
const volumes = { finished: 570, cast: 600, pattern: 600 / 0.985 ** 3, master: 600 / 0.98 ** 3 };

const rowOf = (symbol: string, options: object = {}, pattern = resin) => {
  const row = weighPiece(volumes, { alloys, pattern, ...options }).rows.find((one) => one.symbol === symbol);
  if (row === undefined) throw new Error(`no row ${symbol}`);
  return row;
};

describe("the weights of a piece", () => {
  it("has a row for every metal and none for what patterns are made of", () => {
    const { rows } = weighPiece(volumes, { alloys, pattern: resin });
    expect(rows.map(({ symbol }) => symbol)).toEqual(
      alloys.filter(({ kind }) => kind !== "pattern").map(({ symbol }) => symbol),
    );
    expect(rows.length).toBe(alloys.length - 3);
  });

  it("are volume times density, by the published range where there is one", () => {
    const row = rowOf("au585-yellow");
    expect(row.finished).toBeCloseTo(0.57 * 13.07, 12);
    expect(row.finishedRange?.[0]).toBeCloseTo(0.57 * 12.9, 12);
    expect(row.finishedRange?.[1]).toBeCloseTo(0.57 * 13.68, 12);
    expect(rowOf("ag935").finishedRange).toBeNull();
    expect(row.cast - row.finished).toBeCloseTo(row.finishingLoss, 12);
    expect(row.finishingLoss).toBeCloseTo(0.03 * 13.07, 12);
  });

  it("melt the casting, its sprue and the button", () => {
    const row = rowOf("ag925", { sprue: 25, button: 3 });
    expect(row.sprue).toBeCloseTo(0.25 * row.cast, 12);
    expect(row.melt).toBeCloseTo(row.cast + row.sprue + 3, 12);
    expect(rowOf("ag925").melt).toBeCloseTo(1.1 * row.cast, 12);
  });

  it("are by the wax rule what the pattern's volume weighs in metal, whatever the pattern's density", () => {
    for (const pattern of [resin, wax]) {
      expect(rowOf("au750-white", {}, pattern).byPattern).toBeCloseTo((volumes.pattern * 14.64) / 1000, 10);
    }
    expect(rowOf("ag925").byPattern / rowOf("ag925").cast).toBeCloseTo(1 / 0.985 ** 3, 12);
  });

  it("meet the published worked examples: 5 g of wax and 10 % in 14 K, 71.89 g (riogrande.com); 5.5 g × 10.5, 57.75 g", () => {
    const piece = { finished: 5000, cast: 5000, pattern: 5000, master: 5000 };
    const { rows, pattern } = weighPiece(piece, { alloys, pattern: wax });
    expect(pattern.weight).toBe(5);
    // As printed, to the last decimal but one: 71.885.
    expect(rows.find(({ symbol }) => symbol === "au585-yellow")?.melt).toBeCloseTo(71.885, 9);
    const silver = { ...findAlloy("ag999"), density: 10.5 };
    expect(weighPiece(piece, { alloys: [silver], pattern: wax }).rows[0].melt).toBeCloseTo(57.75, 9);
  });

  it("tell the resin by its volume, and what the pattern weighs by the range of makes", () => {
    const { pattern } = weighPiece(volumes, { alloys, pattern: resin });
    expect(pattern.millilitres).toBeCloseTo(volumes.master / 1000, 12);
    expect(pattern.weight).toBeCloseTo((volumes.pattern * 1.09) / 1000, 12);
    expect(pattern.weightRange?.[1]).toBeCloseTo((volumes.pattern * 1.2) / 1000, 12);
  });
});

describe("the cost", () => {
  const options = { prices: { ag925: 1.5 }, currency: "shells (demo)" };

  it("is weight times the price that the user gives, and nothing where none is given", () => {
    const row = rowOf("ag925", options);
    expect(row.cost?.finished).toBeCloseTo(1.5 * row.finished, 12);
    expect(row.cost?.melt).toBeCloseTo(1.5 * row.melt, 12);
    expect(row.cost?.finishingLoss).toBeCloseTo(1.5 * row.finishingLoss, 12);
    expect(rowOf("au999", options)).toMatchObject({ price: null, cost: null });
    expect(weighPiece(volumes, { alloys, pattern: resin, ...options }).currency).toBe("shells (demo)");
    expect(weighPiece(volumes, { alloys, pattern: resin }).currency).toBeNull();
  });

  it.each([
    [{ sprue: -1 }, "costing.sprue"],
    [{ button: Number.NaN }, "costing.button"],
    [{ prices: { ag925: -2 } }, "costing.prices.ag925"],
  ])("refuses %j", (wrong, path) => {
    expect(failureOf(() => rowOf("ag925", wrong))).toMatchObject({ code: "allowance-invalid", path });
  });
});
