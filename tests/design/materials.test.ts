import { describe, expect, it } from "vitest";
import { materialsOf } from "../../src/design/materials.js";
import { readDesign } from "../../src/design/read.js";
import { build } from "../../src/ring/build.js";
import { failureOf } from "../support/failure-of.js";
import { plainBand } from "./documents.js";

const marsh = { symbol: "marsh-gold", mix: { Au: 0.583, Ag: 0.104, Cu: 0.313 } };

const problemsOf = (document: object) => failureOf(() => readDesign(document)).problems;

describe("materials of a document", () => {
  it("stand beside the built-in ones and weigh the ring", async () => {
    const document = {
      ...plainBand,
      alloys: [marsh],
      material: "marsh-gold",
      costing: { prices: { "marsh-gold": 40 } },
    };
    const { report } = await build(document);
    expect(report.mass["marsh-gold"]).toBeCloseTo((report.volume * 13.33) / 1000, 2);
    const row = report.weights.rows.at(-1);
    expect(row).toMatchObject({ symbol: "marsh-gold", price: 40 });
    expect(row?.finished).toBeCloseTo(report.mass["marsh-gold"], 12);
    expect(materialsOf(readDesign(document)).at(-1)?.symbol).toBe("marsh-gold");
  });

  it("are named with the nearest where they are not there, as master's material and in prices too", () => {
    const problems = problemsOf({
      ...plainBand,
      material: "ag952",
      casting: { pattern: "raisin" },
      costing: { prices: { ag925: 1, "au750-yelow": 60 } },
    });
    expect(problems.map(({ path, hint }) => [path, hint])).toEqual([
      ["material", 'did you mean "ag925"?'],
      ["casting.pattern", 'did you mean "resin"?'],
      ['costing.prices["au750-yelow"]', 'did you mean "au750-yellow"?'],
    ]);
    expect(problems[0].allowed).toContain("au750-white");
  });

  it("are judged together with all else that is wrong", () => {
    const own = [
      { ...marsh, mix: { Au: 0.5 } },
      { symbol: "Big", density: 9 },
      { symbol: "x", density: 90 },
      { symbol: "bronze", density: 8 },
    ];
    const paths = problemsOf({ ...plainBand, tolerance: 9, alloys: own, material: 7 }).map(({ path }) => path);
    expect([...paths].sort()).toEqual(
      ["alloys[0].mix", "alloys[1].symbol", "alloys[2].density", "alloys[3].symbol", "material", "tolerance"].sort(),
    );
  });

  it("may not be mixed of what no density is known of", () => {
    const [problem] = problemsOf({ ...plainBand, alloys: [{ symbol: "x", mix: { Au: 0.5, Xx: 0.5 } }] });
    expect(problem).toMatchObject({ code: "unknown-key", path: "alloys[0].mix.Xx" });
  });

  it.each([
    [{ sprue: -1 }, "costing.sprue"],
    [{ button: "2" }, "costing.button"],
    [{ prices: { ag925: -1 } }, "costing.prices.ag925"],
    [{ currency: "" }, "costing.currency"],
    [{ colour: 1 }, "costing.colour"],
  ])("costing %j is refused", (costing, path) => {
    expect(problemsOf({ ...plainBand, costing }).map((problem) => problem.path)).toEqual([path]);
  });
});
