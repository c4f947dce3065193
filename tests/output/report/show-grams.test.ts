import { expect, it } from "vitest";
import { alloys, findAlloy } from "../../../src/measure/alloys/catalogue.js";
import { weighPiece } from "../../../src/measure/weights/weight-table.js";
import { densitySpan, showGrams } from "../../../src/output/report/show-grams.js";

const table = weighPiece(
  { finished: 400, cast: 420, master: 440, pattern: 430 },
  { alloys, pattern: findAlloy("resin") },
);
const show = (symbol: string, grams: number) => showGrams(grams, densitySpan(table, symbol));

it("prints no digit that the published densities do not give", () => {
  // 14 K red, 12.9 to 14.6 g/cm³: 5.304 g may be 5.16 to 5.84.
  expect(show("au585-red", 5.304)).toBe("5.3");
  // 18 K red, 15.18 to 15.19: 6.072 to 6.076.
  expect(show("au750-red", 6.072)).toBe("6.07");
  // Resin, 1.05 to 1.2: 0.4687 g may be 0.45 to 0.52.
  expect(show("resin", 0.4687)).toBe("0.47");
  expect(show("au585-red", 53.04)).toBe("53");
});

it("prints hundredths where one density is published, and of nothing", () => {
  expect(show("ag935", 5.1804)).toBe("5.18");
  expect(show("au585-red", 0)).toBe("0.00");
  expect(show("own-metal", 2.71)).toBe("2.71");
});
