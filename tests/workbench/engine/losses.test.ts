import { expect, it } from "vitest";
import { Losses } from "../../../src/workbench/engine/losses.js";

it("allows two more tries for a text, and as many for the next one", () => {
  const losses = new Losses();
  expect([1, 2, 3, 4].map(() => losses.mayTryAgain("a"))).toEqual([true, true, false, false]);
  expect(losses.resting).toBe(true);
  expect([1, 2, 3].map(() => losses.mayTryAgain("b"))).toEqual([true, true, false]);
  expect(losses.mayTryAgain("a")).toBe(true);
  expect(losses.resting).toBe(false);
});
