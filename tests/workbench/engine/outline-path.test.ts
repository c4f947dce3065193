import { expect, it } from "vitest";
import { outlinePath } from "../../../src/workbench/engine/outline-path.js";

it("closes each outline, with y downwards", () => {
  const square = [
    [0, 0],
    [1.25, 0],
    [1.25, 2],
  ] as const;
  expect(outlinePath([square, [[-1, -0.5]]], 2)).toBe("M0.00 0.00L1.25 0.00L1.25 -2.00ZM-1.00 0.50Z");
  expect(outlinePath([], 3)).toBe("");
});
