import { expect, it } from "vitest";
import { readWritten, readWrittenSize } from "../../src/design/written-value.js";

it.each<[string, unknown]>([
  ["4.5", 4.5],
  ["true", true],
  ['["a"]', ["a"]],
  ["flat", "flat"],
  ["", ""],
  ["1,5", "1,5"],
])("%j is read as JSON, or else as text", (text, value) => {
  expect(readWritten(text)).toEqual(value);
});

it.each<[string, unknown]>([
  ["uk:P", { system: "uk", value: "P" }],
  [" ISO : 54 ", { system: "iso", value: "54" }],
  ["diameter:17.3", { diameter: 17.3 }],
  ["circumference:54", { circumference: 54 }],
  ["diameter:wide", undefined],
  ["54", undefined],
  ["uk:", undefined],
])("%j is read as a size", (text, size) => {
  expect(readWrittenSize(text)).toEqual(size);
});
