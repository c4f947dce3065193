import { expect, it } from "vitest";
import { marksIn } from "../../../src/workbench/text/marks.js";

const text = '{ "profile": { "width": 0 } }';

it("marks each problem at its field, at the part around it where it is not written", () => {
  const marks = marksIn(text, undefined, [
    { code: "wrong", path: "profile.width", message: "must be above 0", allowed: "more" },
    { code: "wrong", path: "profile.thickness", message: "missing" },
    { code: "wrong", message: "all" },
  ]);
  expect(marks.map(({ from, to }) => text.slice(from, to))).toEqual(["0", '{ "width": 0 }', text]);
  expect(marks[0].message).toBe("must be above 0 · more");
});

it("marks where the text is no document, and then nothing else", () => {
  const problem = { code: "wrong", path: "profile", message: "old" };
  expect(marksIn("{ ]", { at: 2, message: "odd" }, [problem])).toEqual([{ from: 2, to: 3, message: "odd" }]);
  expect(marksIn("{", { at: 9, message: "ends" }, [])).toEqual([{ from: 1, to: 1, message: "ends" }]);
});
