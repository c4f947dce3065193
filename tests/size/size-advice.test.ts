import { expect, it } from "vitest";
import { resolveSize } from "../../src/size/size.js";
import { sizeAdvice } from "../../src/size/size-advice.js";

const iso = resolveSize({ system: "iso", value: 54 });

it.each([
  [4.9, "flat", []],
  [5, "flat", ["size-advice-wide-band"]],
  [4, "comfort", ["size-advice-comfort-bore"]],
  [9, "comfort", ["size-advice-wide-band", "size-advice-comfort-bore"]],
] as const)("a %s mm band with a %s bore gets %j", (bandWidth, bore, codes) => {
  expect(sizeAdvice({ bandWidth, bore, size: iso }).map((note) => note.code)).toEqual(codes);
});

it("names the larger allowance from 8 mm on, in the design's own size system", () => {
  const said = (size: Parameters<typeof resolveSize>[0], bandWidth: number) =>
    sizeAdvice({ bandWidth, bore: "flat", size: resolveSize(size) })[0].message;
  // A US size is 0.032 in of diameter: 2.553 mm round.
  expect(said({ system: "us", value: 7 }, 7.9)).toContain(
    "take US, Canada (formula) 7¼ to 7½ instead of 7, 0.6 to 1.3 mm",
  );
  expect(said({ system: "us", value: 7 }, 8)).toContain("7½ to 8 instead of 7, 1.3 to 2.6 mm more");
  expect(said({ system: "iso", value: 54 }, 8)).toContain("take ISO 8653 55 to 57 instead of 54");
  // A letter is 1.25 mm round.
  expect(said({ system: "uk", value: "N" }, 6)).toContain("N½ to O instead of N");
  expect(said({ diameter: 17.2 }, 6)).toContain("many makers take 0.6 to 1.3 mm more round the finger.");
});

it("says of a comfort bore which smaller size it fits like", () => {
  const [note] = sizeAdvice({ bandWidth: 4, bore: "comfort", size: resolveSize({ system: "us", value: 7 }) });
  expect(note.message).toContain("like US, Canada (formula) 6¾ to 6½ and not 7, 0.6 to 1.3 mm less");
});

it("names no label where the system has none", () => {
  const [note] = sizeAdvice({ bandWidth: 6, bore: "flat", size: resolveSize({ system: "iso", value: 80 }) });
  expect(note.message).toContain("many makers take 0.6 to 1.3 mm more round the finger.");
});

it("says that sources disagree and that nothing was changed", () => {
  for (const note of sizeAdvice({ bandWidth: 9, bore: "comfort", size: iso })) {
    expect(note.message).toMatch(/Sources disagree .*the size was left as it is/);
  }
});

it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a width of %s", (bandWidth) => {
  expect(() => sizeAdvice({ bandWidth, bore: "flat", size: iso })).toThrow(
    expect.objectContaining({ code: "size-advice-width", path: "profile.width" }),
  );
});
