import { expect, test } from "vitest";
import { aroundStone, footUnder } from "../../src/stones/surroundings.js";
import { flatBand } from "../support/set-stones.js";

const band = flatBand();
const how = { band, standing: 0.4, clear: 0.05 };
const bore = 54 / (2 * Math.PI);
const frame = { at: [0, bore + 2, 0.5], out: [0, 1, 0], along: [-1, 0, 0] } as const;

test("a stone's surface lies over it and the bore under it, and everything over it is told", () => {
  const around = aroundStone(frame, 0.2, how);
  expect(around.surface).toBeCloseTo(0.4, 9);
  expect(around.bore).toBeCloseTo(-2, 9);
  expect(around.above).toBe(0.9);
  expect(aroundStone(frame, 1, how).above).toBe(2.5);
});

test("a leaning stone's are told along its own axis", () => {
  const lean = 0.2;
  const around = aroundStone({ ...frame, out: [0, Math.cos(lean), Math.sin(lean)] }, 0.2, how);
  expect(around.surface).toBeCloseTo(0.4 / Math.cos(lean), 9);
});

test("walls begin below the surface under all of their outline, in the outer half of the metal", () => {
  const around = aroundStone(frame, 0.2, how);
  const radius = bore + 2.4;
  const fall = Math.hypot(1.5, bore + 2) - (bore + 2);
  expect(
    footUnder(
      frame,
      [
        [1.5, 0],
        [-1.5, 0],
      ],
      around,
      how,
    ),
  ).toBeCloseTo(0.4 - fall - 0.05, 9);
  expect(radius).toBeGreaterThan(bore);
  expect(footUnder(frame, [[8, 0]], around, how)).toBeCloseTo((0.4 - 2) / 2, 9);
});
