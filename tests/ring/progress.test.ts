// Covers: src/base/phases.ts
import { describe, expect, it } from "vitest";
import { PHASES, type Phase } from "../../src/base/phases.js";
import { type Progress, tellerOf } from "../../src/ring/progress.js";

const step = (phase: Phase | undefined, piece = "finished") => ({ piece, stage: { phase } });

/** What is told of steps that work, of those that are needed. */
function told(order: readonly ReturnType<typeof step>[], working = order): Progress[] {
  const all: Progress[] = [];
  const teller = tellerOf(order, (progress) => all.push(progress));
  for (const one of working) teller.begin(one);
  return all;
}

describe("how far an answer has come", () => {
  it("begins after the document's share and never falls or reaches the end", () => {
    const phases = (Object.keys(PHASES) as Phase[]).filter((phase) => phase !== "document");
    const all = told(phases.map((phase) => step(phase)));
    expect(all.map(({ stage }) => stage)).toEqual(phases);
    const shares = all.map(({ share }) => share);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares[0]).toBeCloseTo(PHASES.document / Object.values(PHASES).reduce<number>((a, b) => a + b, 0), 12);
    expect(shares.at(-1)).toBeLessThan(1);
  });

  it("has shares that make one whole", () => {
    expect(Object.values(PHASES).reduce<number>((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  it("is told once for stages of one phase, and not for those without", () => {
    const order = [step("size"), step("size"), step(undefined), step("fit"), step("fit")];
    expect(told(order).map(({ stage }) => stage)).toEqual(["size", "fit"]);
  });

  it("counts both pieces, and is by the work that is needed alone", () => {
    const order = [step("solids"), step("union"), step("solids", "cast"), step("union", "cast")];
    const sum = PHASES.document + 2 * (PHASES.solids + PHASES.union);
    const before = [0, PHASES.solids, PHASES.solids + PHASES.union, 2 * PHASES.solids + PHASES.union];
    expect(told(order).map(({ share }) => share)).toEqual(
      before.map((share) => expect.closeTo((PHASES.document + share) / sum, 12)),
    );
  });

  it("leaps over what is remembered", () => {
    const order = [step("solids"), step("union")];
    expect(told(order, [order[1]])).toEqual([
      { stage: "union", share: expect.closeTo((0.01 + PHASES.solids) / (0.01 + PHASES.solids + PHASES.union), 12) },
    ]);
  });

  it("is told to nobody where nobody listens", () => {
    const { begin, within } = tellerOf([step("size")], undefined);
    expect(() => begin(step("size"))).not.toThrow();
    expect(() => within(step("size"), 0.5)).not.toThrow();
  });

  it("moves within a phase, where it is worth telling, and never falls", () => {
    const order = [step("solids"), step("union")];
    const [solids, union] = order;
    const all: Progress[] = [];
    const { begin, within } = tellerOf(order, (progress) => all.push(progress));
    begin(solids);
    within(solids, 0.5);
    within(solids, 0.5001);
    // Another stage of the phase begins at its beginning.
    within(solids, 0.1);
    within(step(undefined), 0.9);
    begin(union);
    within(union, 0.99);
    const sum = PHASES.document + PHASES.solids + PHASES.union;
    const done = [0, PHASES.solids / 2, PHASES.solids, PHASES.solids + 0.99 * PHASES.union];
    expect(all).toEqual(
      done.map((share, i) => ({
        stage: i < 2 ? "solids" : "union",
        share: expect.closeTo((PHASES.document + share) / sum, 12),
      })),
    );
  });
});
