import { expect, it } from "vitest";
import { degrees, MM_PER_INCH, MM3_PER_CM3, radians, showLength, TOP, TURN } from "../../src/base/units.js";

it("an inch is 25.4 mm (international yard and pound agreement, 1959), a cubic centimetre 10³ mm³", () => {
  expect(MM_PER_INCH).toBe(25.4);
  expect(MM3_PER_CM3).toBe(10 ** 3);
});

it("a turn is 360°, and the top of the ring points along +y", () => {
  expect(radians(360)).toBeCloseTo(TURN, 14);
  expect([Math.cos(TOP), Math.sin(TOP)]).toEqual([expect.closeTo(0, 15), 1]);
});

it("an angle there and back is itself", () => {
  for (const angle of [-720, -30, 0, 1e-9, 57.3, 359]) expect(degrees(radians(angle))).toBeCloseTo(angle, 10);
  expect(degrees(1)).toBeCloseTo(57.29577951308232, 12);
});

it("lengths are shown to the micrometre without zeros behind", () => {
  expect([1.5, 2, 0.0004, 0.0006, -0.25, 12.3456].map(showLength)).toEqual([
    "1.5 mm",
    "2 mm",
    "0 mm",
    "0.001 mm",
    "-0.25 mm",
    "12.346 mm",
  ]);
});
