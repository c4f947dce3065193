import { expect, it } from "vitest";
import { describeAllowances } from "../../src/cli/allowances.js";
import { type Allowances, alloys } from "../../src/index.js";
import { findAlloy } from "../../src/measure/alloys/catalogue.js";
import { weighPiece } from "../../src/measure/weights/weight-table.js";

const column = (scale: number, material: string, relief: number | null = 0.3 * scale) => ({
  bore: 17 * scale,
  width: 6 * scale,
  thickness: 2 * scale,
  wall: 1.4 * scale,
  relief,
  volume: 500 * scale ** 3,
  weight: 5 * scale,
  material,
});

const volumes = { finished: 500, cast: 600, master: 700, pattern: 700 };
const weights = weighPiece(volumes, { alloys, pattern: findAlloy("resin") });

const allowances = (more: Partial<Allowances> = {}) =>
  ({
    any: true,
    finished: column(1, "ag925"),
    cast: column(1.1, "ag925"),
    master: column(1.2, "resin"),
    scale: { axial: 1.0125, radial: 1.0362694 },
    notes: ["First note.", "Second note."],
    ...more,
  }) as Allowances;

it("sets the three pieces side by side, each figure in its own row and column", () => {
  const lines = describeAllowances(allowances(), weights).split("\n");
  const cells = lines.map((line) => line.split(/\s{2,}/));
  const row = (name: string) =>
    cells
      .find(([first]) => first === name)
      ?.slice(1)
      .map(Number);
  expect(row("bore, mm")).toEqual([17, 18.7, 20.4]);
  expect(row("width, mm")).toEqual([6, 6.6, 7.2]);
  expect(row("thickness, mm")).toEqual([2, 2.2, 2.4]);
  expect(row("wall under the seat, mm")).toEqual([1.4, 1.54, 1.68]);
  expect(row("relief, mm")).toEqual([0.3, 0.33, 0.36]);
  expect(row("volume, mm³")).toEqual([500, 665.5, 864]);
  expect(row("weight, g")).toEqual([5, 5.5, 6]);
  expect(cells.find(([first]) => first === "weighed in")).toEqual(["weighed in", "ag925", "ag925", "resin"]);
  expect(lines.slice(-2)).toEqual(["First note.", "Second note."]);
});

it("says which factor lies along the finger axis and which across it", () => {
  expect(describeAllowances(allowances(), weights)).toContain(
    "1.03627 times the casting across the finger axis, 1.01250 times along it",
  );
});

it("shows no figure where there is no relief, and notes alone without allowances", () => {
  const bare = allowances({ finished: column(1, "ag925", null) });
  expect(describeAllowances(bare, weights)).toMatch(/relief, mm\s+\D+\s+0\.33/);
  expect(describeAllowances(allowances({ any: false }), weights)).toBe("First note.\nSecond note.");
});
