import { expect, test } from "vitest";
import { addPlace, distanceOf, measuredLines, newRingState } from "../../../src/workbench/ring/ring-state.js";

test("a distance takes two places, and a third begins another", () => {
  const first = addPlace([], [0, 0, 0]);
  expect(distanceOf(first)).toBeUndefined();
  const both = addPlace(first, [2, 3, 6]);
  expect(distanceOf(both)).toBe(7);
  expect(addPlace(both, [1, 1, 1])).toEqual([[1, 1, 1]]);
});

test("it is shown as a dimension line that is seen through metal; a distance of nothing has none", () => {
  const write = (length: number) => length.toFixed(1);
  const [line] = measuredLines(
    [
      [0, 0, 0],
      [2, 3, 6],
    ],
    write,
  );
  expect(line).toEqual({ from: [0, 0, 0], to: [2, 3, 6], text: "7.0 mm", through: true });
  expect(
    measuredLines(
      [
        [1, 1, 1],
        [1, 1, 1],
      ],
      write,
    ),
  ).toEqual([]);
  expect(measuredLines([[1, 1, 1]], write)).toEqual([]);
});

test("two views of a ring share nothing", () => {
  const [one, other] = [newRingState(), newRingState()];
  one.dimensions.value = true;
  expect(other.dimensions.value).toBe(false);
});
