// Covers: src/workbench/fields/bead-values.ts
import { type Finding, openRing } from "annulet";
import { describe, expect, it } from "vitest";
import { beadValues } from "../../../src/workbench/fields/bead-values.js";
import { mendOf, placeOfFinding } from "../../../src/workbench/fields/mends.js";
import { changeText, type Path, pathOf } from "../../../src/workbench/state/json-text.js";

const START = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.05,
  profile: { width: 4, thickness: 1.2, outside: { form: "channel", rail: 0.6, depth: 0.8 } },
  beads: [
    { along: "rail", diameter: 0.4 },
    { along: "seat-edge", diameter: 0.36, alternate: 0.24 },
  ],
};

const finding = (rule: string, figure: number, limit: number) =>
  ({ rule, figure, limit, places: [] }) as never as Finding;

const put = (values: readonly (readonly [Path, unknown])[]) =>
  JSON.parse(values.reduce((text, [path, value]) => changeText(text, path, value), JSON.stringify(START)));

describe("what mends a finding", () => {
  it("is the thickness that a shank lacks", () => {
    const thin = finding("shank", 0.4, 0.5);
    expect(mendOf(thin, START, [])).toEqual({ path: ["profile", "thickness"], value: 1.3 });
    expect(placeOfFinding(thin, [])).toEqual(["profile", "thickness"]);
    expect(mendOf(thin, {}, [])).toBeUndefined();
    expect(mendOf(finding("shank", 0.6, 0.5), START, [])).toBeUndefined();
  });

  it("is the diameter of the run that is too small, by the field that gives it", async () => {
    const runs = await openRing(START).beads();
    const small = finding("bead", 0.24, 0.3);
    expect(mendOf(small, START, runs)).toEqual({ path: ["beads", 1, "alternate"], value: 0.3 });
    expect(placeOfFinding(small, runs)).toEqual(["beads", 1]);
    expect(mendOf(finding("bead", 0.2, 0.3), START, runs)).toBeUndefined();
    expect(placeOfFinding(finding("bead", 0.2, 0.3), runs)).toEqual(["beads"]);
  });

  it("is nothing where more than one number would have to change", () => {
    expect(mendOf(finding("wall", 0.2, 0.4), START, [])).toBeUndefined();
    expect(placeOfFinding(finding("gap", 0.1, 0.2), [])).toEqual(["pattern", "regions"]);
  });
});

it("makes a run come to each of its choices", async () => {
  for (const run of await openRing(START).beads()) {
    for (const choice of run.choices) {
      const changed = await openRing(put(beadValues(pathOf(run.path), choice))).beads();
      expect(changed.find(({ path }) => path === run.path)?.count, `${run.path} ${choice.count}`).toBe(choice.count);
    }
  }
});
