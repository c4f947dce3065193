import { expect, it } from "vitest";
import { layOutFindings } from "../../../src/workbench/strip/finding-layout.js";

const spot = (x: number, number: number) =>
  ({ at: [x, 5], number, severity: number === 1 ? "error" : "warning", message: `finding ${number}` }) as const;

it("findings at one place are one mark with all their numbers, each once; those apart stay apart", () => {
  const marks = layOutFindings([spot(10, 1), spot(14, 1), spot(40, 1), spot(12, 2), spot(22, 2), spot(13, 3)], 10);
  expect(marks.map(({ at, numbers, severity }) => [at[0], numbers, severity])).toEqual([
    [10, [1, 2, 3], "error"],
    [40, [1], "error"],
    [22, [2], "warning"],
  ]);
  expect(marks[0].messages).toEqual(["finding 1", "finding 2", "finding 3"]);
  expect(layOutFindings([], 10)).toEqual([]);
});
