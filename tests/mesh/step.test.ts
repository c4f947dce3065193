import { expect, it } from "vitest";
import { placeStep } from "../../src/mesh/step.js";
import { box } from "../support/meshes.js";

it("bodies that stand at one place are the same ones whatever sector is asked for, and keep clear of nothing", () => {
  const bodies = [box(), box([1, 1, 1], [5, 0, 0])];
  const step = placeStep("sprue", "cut", bodies);
  expect(step).toMatchObject({ name: "sprue", op: "cut", scope: "place", keepClear: undefined, small: false });
  expect(step.bodies()).toBe(bodies);
  expect(step.bodies({ from: 0, to: 0.1 })).toBe(bodies);
  expect(placeStep("sprue", "add", bodies).op).toBe("add");
});
