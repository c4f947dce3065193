import { expect, it } from "vitest";
import { textFor, textsOf } from "../../../src/workbench/files/texts-of.js";

const two = {
  text: 3,
  pattern: { regions: [{ path: "M0 0" }, { text: { text: "AB" } }] },
  marks: [{ text: "925", font: "a.ttf" }],
};

it("finds every part that sets a text", () => {
  expect(textsOf(two)).toEqual([
    ["pattern", "regions", 1, "text"],
    ["marks", 0],
  ]);
  expect(textsOf(null)).toEqual([]);
  const round: Record<string, unknown> = { text: "a" };
  round.round = round;
  expect(textsOf(round)).toHaveLength(21);
});

it("tells which text a font is for", () => {
  expect(textFor(two, undefined)).toBeUndefined();
  expect(textFor(two, ["pattern", "regions", 1])).toEqual(["pattern", "regions", 1, "text"]);
  expect(textFor(two, ["marks", 0, "text"])).toEqual(["marks", 0]);
  expect(textFor({ marks: two.marks }, ["size"])).toEqual(["marks", 0]);
  expect(textFor({}, undefined)).toBeUndefined();
});
