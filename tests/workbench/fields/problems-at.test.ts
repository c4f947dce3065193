import { expect, it } from "vitest";
import { problemsIn, problemsOnly, stoneWarnings } from "../../../src/workbench/fields/problems-at.js";

const problem = (path?: string) => ({ code: "wrong", message: path ?? "all", ...(path !== undefined && { path }) });
const told = (problems: readonly { readonly message: string }[]) => problems.map(({ message }) => message);

it("finds a field's problems, and what no control shows", () => {
  const problems = ["profile.outside.rail", "profile", "profile.odd", "beads[1]", "beads[10].pitch"].map(problem);
  expect(told(problemsIn(problems, ["profile"]))).toEqual(["profile.outside.rail", "profile", "profile.odd"]);
  expect(told(problemsIn(problems, ["beads", 1]))).toEqual(["beads[1]"]);
  expect(told(problemsOnly(problems, ["profile"], ["outside"]))).toEqual(["profile", "profile.odd"]);
  expect(problemsIn([problem()], [])).toEqual([]);
});

it("tells warnings about stones at their fields, and no others", () => {
  const warnings = ["stones[0].place", "stones", "stonesetter", "profile"].map(problem);
  expect(told(stoneWarnings([...warnings, problem()] as never))).toEqual(["stones[0].place", "stones"]);
});
