import { expect, it } from "vitest";
import { nameStance } from "../../../src/output/report/name-stance.js";

it.each([
  ["built", null, "as built"],
  ["lying", null, "lying"],
  ["standing", null, "standing"],
  ["tilted", 40, "tilted by 40°"],
] as const)("the stance %s, tilt %s, is told as %s", (stance, tilt, text) => {
  expect(nameStance({ stance, tilt })).toBe(text);
});
