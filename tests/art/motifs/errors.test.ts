// Covers: src/design/motifs/*
import { describe, expect, it } from "vitest";
import { sampleDesign } from "../../../src/art/motifs/sample.js";
import { readDesign } from "../../../src/design/read.js";
import { failureOf } from "../../support/failure-of.js";
import { complete, entries } from "./motifs.js";

describe.each(entries)("%s", (name, motif) => {
  it.each(motif.parameters)("says what $name may be", ({ name: parameter, least, most, step, description }) => {
    expect(description).toContain(`${least} to ${most}; default`);
    const wrong: unknown[] = [least - 0.01, most + 0.01, Number.NaN, "1", null];
    if (step !== undefined) wrong.push(least + step / 2);
    for (const value of wrong) {
      const design = sampleDesign(motif, { parameters: { [parameter]: value as number } });
      const error = failureOf(() => readDesign(design));
      expect(error.path).toBe(`pattern.regions[0].motif.${parameter}`);
      expect(error.allowed ?? error.message).toMatch(/\d|number/);
    }
    for (const value of [least, most]) {
      expect(() => readDesign(sampleDesign(motif, { parameters: { [parameter]: value } }))).not.toThrow();
    }
  });

  it("takes its defaults from its parameters, and knows no others", () => {
    const { pattern } = readDesign(sampleDesign(motif));
    const defaults = Object.fromEntries(motif.parameters.map((one) => [one.name, one.default]));
    expect(pattern?.regions[0]).toMatchObject({ motif: { name, ...defaults } });
    const error = failureOf(() => readDesign(sampleDesign(motif, { parameters: { colour: 1 } })));
    expect(error.path).toBe("pattern.regions[0].motif.colour");
  });

  it("refuses a tile too low or too high for it", () => {
    for (const aspect of [motif.aspect.least - 0.02, motif.aspect.most + 0.02]) {
      const error = failureOf(() => complete(motif, {}, { aspect }));
      expect(error).toMatchObject({
        code: "motif-misfit",
        path: "region.motif",
        value: aspect,
        allowed: `an aspect from ${motif.aspect.least} to ${motif.aspect.most}`,
      });
    }
  });
});

it("a motif that is not in the catalogue is refused with the nearest name", () => {
  const [[, motif]] = entries;
  const error = failureOf(() => readDesign(sampleDesign({ ...motif, name: "arcad" })));
  expect(error.path).toBe("pattern.regions[0].motif.name");
  expect(error.hint).toMatch(/arcade/);
});
