import { expect, it } from "vitest";
import { sizeAdvice } from "../../src/size/size-advice.js";

it.each([
  [4.9, "flat", []],
  [5, "flat", ["size-advice-wide-band"]],
  [4, "comfort", ["size-advice-comfort-bore"]],
  [9, "comfort", ["size-advice-wide-band", "size-advice-comfort-bore"]],
] as const)("a %s mm band with a %s bore gets %j", (bandWidth, bore, codes) => {
  expect(sizeAdvice({ bandWidth, bore }).map((note) => note.code)).toEqual(codes);
});

it("names the larger allowance from 8 mm on", () => {
  expect(sizeAdvice({ bandWidth: 7.9, bore: "flat" })[0].message).toContain("a quarter to half a size");
  expect(sizeAdvice({ bandWidth: 8, bore: "flat" })[0].message).toContain("half a size to a whole size");
});

it("says that sources disagree and that nothing was changed", () => {
  for (const note of sizeAdvice({ bandWidth: 9, bore: "comfort" })) {
    expect(note.message).toMatch(/Sources disagree .*the size was left as it is/);
  }
});

it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a width of %s", (bandWidth) => {
  expect(() => sizeAdvice({ bandWidth, bore: "flat" })).toThrow(
    expect.objectContaining({ code: "size-advice-width", path: "profile.width" }),
  );
});
