import { describe, expect, it } from "vitest";
import { rulesOf } from "../../src/design/own-rules.js";
import { readDesign } from "../../src/design/read.js";
import { failureOf } from "../support/failure-of.js";
import { plainBand } from "./documents.js";

const rulesIn = (rules: object, name?: string) => rulesOf(readDesign({ ...plainBand, rules }).rules, name);

describe("the rules of a document", () => {
  it("are the general ones where it says nothing", () => {
    expect(rulesOf(undefined).name).toBe("general-casting");
    expect(rulesIn({}).name).toBe("general-casting");
  });

  it("are a set with limits of its own, which stand above a set asked for by name", () => {
    const own = {
      set: "conservative",
      limits: { wall: 0.6, gap: { severity: "error" }, bead: { limit: 0.35, source: "our caster" } },
    };
    const { limits } = rulesIn(own);
    expect(limits.wall).toEqual({ limit: 0.6, severity: "error", source: "the design's own figure", certainty: "own" });
    expect(limits.gap).toMatchObject({ limit: 0.3, severity: "error", certainty: "one credible source" });
    expect(limits.bead).toMatchObject({ limit: 0.35, source: "our caster", certainty: "own" });
    expect(limits.line.limit).toBe(0.6);
    expect(rulesIn(own, "fine-resin-print").limits).toMatchObject({ wall: { limit: 0.6 }, line: { limit: 0.3 } });
  });

  it.each([
    [{ set: "conservativ" }, "rules.set", /conservative/],
    [{ limits: { wal: 1 } }, "rules.limits.wal", /wall/],
    [{ limits: { wall: 0 } }, "rules.limits.wall", /./],
    [{ limits: { wall: { limit: -1 } } }, "rules.limits.wall.limit", /./],
    [{ limits: { wall: { severity: "fatal" } } }, "rules.limits.wall.severity", /error/],
  ])("%j is refused", (rules, path, allowed) => {
    const [problem] = failureOf(() => readDesign({ ...plainBand, rules })).problems;
    expect(problem.path).toBe(path);
    expect(problem.allowed).toMatch(allowed);
  });
});
