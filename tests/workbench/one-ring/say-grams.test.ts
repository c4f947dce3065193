import { expect, test } from "vitest";
import { sayGrams } from "../../../src/workbench/one-ring/say-grams.js";

test("a weight is one number where densities agree to the tenth of a gram, else two", () => {
  expect(sayGrams([9.44, 9.36])).toBe("9.4 g");
  expect(sayGrams([9.3, 9.7])).toBe("9.3 to 9.7 g");
});
