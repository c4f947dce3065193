// Covers: src/gems/closes.ts
import { describe, expect, it } from "vitest";
import { requireCloses } from "../../src/gems/closes.js";
import { findCut } from "../../src/gems/cuts/catalogue.js";
import { TOLKOWSKY } from "../../src/gems/cuts/usual.js";
import { proportionsOf } from "../../src/gems/proportions.js";
import { failureOf } from "../support/failure-of.js";

const round = findCut("round");
const SIZE = { length: 3, width: 3 };
const read = (spec: unknown, cut = round) => proportionsOf(cut, SIZE, spec as "usual");

describe("proportions", () => {
  it("are taken by name, or put together of what is given and the usual ones", () => {
    expect(read(undefined)).toBe(round.proportions);
    expect(read("tolkowsky")).toBe(TOLKOWSKY);
    const made = read({ table: 0.6, crownAngle: 33, girdle: 0.04 });
    expect(made.crownHeight).toBeCloseTo(0.2 * Math.tan((33 * Math.PI) / 180), 12);
    expect(made).toMatchObject({
      table: 0.6,
      girdle: 0.04,
      pavilionDepth: round.proportions.pavilionDepth,
      star: 0.55,
    });
    expect(findCut("emerald").proportions.star).toBeUndefined();
    expect(read({ table: 0.5 }, findCut("emerald")).star).toBeUndefined();
  });

  it.each([
    ["a crown of 0", { crownHeight: 0 }, "proportions.crownHeight", "a number above 0 and at most 1"],
    ["a table of the whole width", { table: 1 }, "proportions.table", "a number above 0 and at most 0.95"],
    ["an upright pavilion", { pavilionAngle: 90 }, "proportions.pavilionAngle", "a number above 0 and at most 80"],
    ["no number", { girdle: Number.NaN }, "proportions.girdle", "a number above 0 and at most 0.5"],
    ["a share that does not exist", { tabel: 0.5 }, "proportions.tabel", "table, crownAngle"],
    ["a crown in two ways", { crownAngle: 34, crownHeight: 0.15 }, "proportions", "either crownAngle or crownHeight"],
    ["an unknown name", "ideal", "proportions", '"usual", "tolkowsky", or an object'],
    ["a list", [0.5], "proportions", '"usual"'],
  ])("refuse %s", (_, spec, path, allowed) => {
    const { code, problems } = failureOf(() => read(spec));
    expect(code).toBe("proportions-invalid");
    expect(problems[0].path).toBe(path);
    expect(problems[0].allowed).toContain(allowed);
  });

  it("tell all that is wrong at once", () => {
    expect(failureOf(() => read({ table: 2, girdle: -1, hat: 1 })).problems).toHaveLength(3);
  });

  it("of other cuts know neither stars nor, of domes, a table", () => {
    expect(failureOf(() => read({ star: 0.5 }, findCut("baguette"))).code).toBe("proportions-invalid");
    expect(failureOf(() => read({ table: 0.5 }, findCut("cabochon"))).problems[0].allowed).toBe("crownHeight, girdle");
    expect(failureOf(() => read("tolkowsky", findCut("princess"))).code).toBe("proportions-invalid");
  });
});

describe("proportions that cannot close", () => {
  it.each([
    ["a table that the stars do not leave", { table: 0.9 }, "the stars do not come down", /table 0\.01 to 0\.7\d/],
    ["a girdle thinner than its arches", { girdle: 0.007 }, "take all of the girdle", /girdle 0\.02 to/],
    ["a culet that the lower halves reach", { culet: 0.3 }, "reach into the culet", /culet 0\.01 to 0\.18; lowerHalf/],
    ["steep facets on a thin girdle", { crownAngle: 60, pavilionAngle: 60 }, "take all of the girdle", /girdle 0\.05/],
  ])("are told with what would do: %s", (_, spec, why, allowed) => {
    const { code, problems } = failureOf(() => read(spec));
    expect(code).toBe("proportions-cannot-close");
    expect(problems[0].message).toContain(why);
    expect(problems[0].allowed).toMatch(allowed);
  });

  it("are seen by the facets, not by names: what is told to do does", () => {
    const proportions = { ...round.proportions, table: 0.9 };
    const { problems } = failureOf(() => requireCloses(round, SIZE, proportions, "proportions"));
    const [, most] = /table 0\.01 to (0\.\d\d)/.exec(problems[0].allowed ?? "") ?? [];
    requireCloses(round, SIZE, { ...proportions, table: Number(most) }, "proportions");
    expect(() => requireCloses(round, SIZE, { ...proportions, table: Number(most) + 0.01 }, "proportions")).toThrow();
  });
});
