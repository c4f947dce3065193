import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { findSizeSystem, sizeSystems } from "../../src/size/catalogue.js";

const SEED = 20261125;

/** Every label a system writes, smallest first, found by walking all circumferences in hundredths of a mm. */
function everyLabel(labelOf: (circumference: number) => string | undefined): string[] {
  const labels = new Set<string>();
  for (let hundredths = 3000; hundredths <= 9000; hundredths++) {
    const label = labelOf(hundredths / 100);
    if (label !== undefined) labels.add(label);
  }
  return [...labels];
}

/** First and last label and how many there are: last minus first, times steps, plus one. */
const EXTENT: Record<string, readonly [string, string, number]> = {
  iso: ["35", "80", 46],
  us: ["0", "16", 65],
  "us-gauge": ["0", "13", 53],
  uk: ["A", "Z+6", 125],
  japan: ["1", "30", 30],
  swiss: ["0", "40", 41],
  german: ["11", "26", 151],
  india: ["1", "30", 30],
};

it("has a test of the extent of each system, and no name twice", () => {
  expect(sizeSystems.map((system) => system.name)).toEqual(Object.keys(EXTENT));
});

describe.each(sizeSystems)("size system $name", (system) => {
  const labels = everyLabel(system.labelOf);
  const circumferences = labels.map((label) => system.circumferenceOf(label));

  it("reaches from its first label to its last in even steps", () => {
    expect([labels[0], labels.at(-1), labels.length]).toEqual(EXTENT[system.name]);
  });

  it("gets every label back from its circumference", () => {
    expect(circumferences.map((circumference) => system.labelOf(circumference))).toEqual(labels);
  });

  it("grows with every label", () => {
    for (let i = 1; i < labels.length; i++) expect(circumferences[i]).toBeGreaterThan(circumferences[i - 1]);
  });

  it("gives the nearest of its labels to any circumference within its range", () => {
    fc.assert(
      fc.property(fc.double({ min: circumferences[0], max: circumferences.at(-1), noNaN: true }), (circumference) => {
        const label = system.labelOf(circumference);
        expect(label).toBeDefined();
        const miss = Math.abs(system.circumferenceOf(label as string) - circumference);
        const smallest = Math.min(...circumferences.map((other) => Math.abs(other - circumference)));
        expect(miss).toBeLessThanOrEqual(smallest + 1e-9);
      }),
      { seed: SEED },
    );
  });

  it("has no label outside its range", () => {
    const step = 0.001;
    for (const outside of [0, circumferences[0] - step, circumferences[labels.length - 1] + step, 1000, Number.NaN]) {
      expect(system.labelOf(outside)).toBeUndefined();
    }
  });

  it("reads its own example", () => {
    expect(system.circumferenceOf(system.example)).toBeGreaterThan(0);
  });

  it.each(["", " ", "size", "-1", "7//2", "7 1/0", "1e1", "0x10", "71/2", -1, 1000, Number.NaN, Infinity])(
    "refuses %j with what is allowed",
    (label) => {
      expect(refusal(() => system.circumferenceOf(label))).toMatchObject({
        code: "size-unknown",
        path: "size.value",
        value: label,
        allowed: system.labels,
      });
    },
  );

  it("never answers with something else than a circumference, whatever text it is given", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[A-Za-z]?[0-9 .,/+¼½¾-]{0,6}$/)), (label) => {
        try {
          const circumference = system.circumferenceOf(label);
          expect(circumference).toBeGreaterThanOrEqual(circumferences[0]);
          expect(circumference).toBeLessThanOrEqual(circumferences[labels.length - 1]);
        } catch (error) {
          if (!(error instanceof AnnuletError)) throw error;
          expect(error.code).toBe("size-unknown");
        }
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

describe("findSizeSystem", () => {
  it("finds every system by name", () => {
    for (const system of sizeSystems) expect(findSizeSystem(system.name)).toBe(system);
  });

  it("names the nearest to a name it does not know", () => {
    expect(refusal(() => findSizeSystem("japn"))).toMatchObject({
      code: "size-system-unknown",
      path: "size.system",
      allowed: "iso, us, us-gauge, uk, japan, swiss, german, india",
      hint: "Did you mean japan?",
    });
  });
});

function refusal(run: () => unknown): AnnuletError {
  try {
    run();
  } catch (error) {
    if (error instanceof AnnuletError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}
