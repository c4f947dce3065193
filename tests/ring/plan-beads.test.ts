import { readFileSync } from "node:fs";
import { type BeadRunReport, build, planBeads, type Warning } from "annulet";
import { describe, expect, it } from "vitest";

const dewline = readFileSync(new URL("../../examples/dewline-band.json", import.meta.url), "utf8");

describe("bead runs without the ring", () => {
  it("are those of the ring", async () => {
    const runs = await planBeads(dewline);
    expect(runs).toEqual((await build(dewline)).report.beads);
  });

  it("come with their warnings where asked", async () => {
    const warnings: Warning[] = [];
    const tight = { ...JSON.parse(dewline), beads: [{ along: { v: 0 }, diameter: 0.5, pitch: 0.7 }] };
    const runs: readonly BeadRunReport[] = await planBeads(tight, { warn: (warning) => warnings.push(warning) });
    expect(runs[0].ratio).toBeCloseTo(0.7, 2);
    expect(warnings.map(({ code }) => code)).toContain("beads-overlap");
  });

  it("are no more than the limit", async () => {
    await expect(planBeads(dewline, { maxBeads: 10 })).rejects.toMatchObject({ code: "too-many-beads" });
  });
});
