import { afterEach, expect, it, vi } from "vitest";
import { lettersSize } from "../../../src/workbench/strip/letters-size.js";

afterEach(() => void vi.unstubAllGlobals());

it.each([
  ["16px", 1],
  ["24px", 1.5],
  ["", 1],
  ["0px", 1],
])("letters of %s are %s of the usual", (fontSize, expected) => {
  vi.stubGlobal("getComputedStyle", () => ({ fontSize }));
  expect(lettersSize({} as Element)).toBe(expected);
});
