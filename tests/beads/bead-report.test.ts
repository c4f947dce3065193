import { describe, expect, it } from "vitest";
import { type PlacedLine, reportRun } from "../../src/beads/bead-report.js";
import type { LineChoice } from "../../src/beads/bead-run.js";

const what = { run: "reed", path: "beads[0]", onRail: false, diameter: 0.4, diameterMin: 0.4, diameterMax: 0.4 };

/** A line with so many beads at a spacing, `copies` times round the band. */
function lineOf(count: number, spacing: number, copies: number, fewer = true): PlacedLine {
  const leg = (by: number): LineChoice => ({
    count: count + by,
    legs: [{ spacing: spacing - by / 100, ratio: (spacing - by / 100) / 0.4 }],
  });
  const bead = { centre: [0, 0, 0], radius: 0.2, outward: [0, 0, 1] } as const;
  return {
    placed: {
      beads: Array.from({ length: count }, () => bead),
      spacing,
      legs: leg(0).legs,
      pinched: [],
      fewer: fewer ? leg(-1) : undefined,
      more: leg(1),
    },
    copies,
  };
}

describe("the report of a run", () => {
  it("sums its lines, all tiles and those met elsewhere left out", () => {
    const report = reportRun(what, [lineOf(5, 0.4, 6), lineOf(7, 0.44, 6)], 12);
    expect(report).toMatchObject({ count: 60, spacingMin: 0.4, spacingMax: 0.44, ratioMin: 1 });
    expect(report.spacing).toBeCloseTo(0.42, 12);
    expect(report.ratioMax).toBeCloseTo(1.1, 12);
    expect(report.choices.map(({ count }) => count)).toEqual([48, 60, 72]);
    expect(report.choices.map(({ spacing }) => Number(spacing.toFixed(9)))).toEqual([0.43, 0.42, 0.41]);
  });

  it("leaves out what not every line can be", () => {
    const report = reportRun(what, [lineOf(5, 0.4, 1), lineOf(2, 0.4, 1, false)], 0);
    expect(report.choices.map(({ count, made }) => [count, made])).toEqual([
      [7, true],
      [9, false],
    ]);
  });

  it("counts a run that another holds whole as none, and as itself with another number", () => {
    const report = reportRun(what, [lineOf(5, 0.4, 1)], 5);
    expect(report.choices.map(({ count }) => count)).toEqual([4, 0, 6]);
  });

  it("has no choices for single beads", () => {
    const single: PlacedLine = {
      placed: { ...lineOf(1, 0, 4).placed, spacing: undefined, legs: [], fewer: undefined, more: undefined },
      copies: 4,
    };
    expect(reportRun(what, [single], 0)).toMatchObject({ count: 4, spacing: 0, choices: [] });
  });
});
