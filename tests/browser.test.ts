// Across: the library in a browser
import { build, type Report, type Timings } from "annulet";
import { describe, expect, it } from "vitest";
import { hasBrowser, runInBrowser } from "./support/browser.js";

/** A ring of every kind of part: channel, relief that is mirrored, beads on it and on the rails. */
const design = {
  annulet: 1,
  name: "Browser ring",
  size: { system: "iso", value: 54 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
  pattern: {
    symmetry: "p2mm",
    regions: [
      { path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.3, round: 0.05, beads: { diameter: 0.24, on: 0.18 } },
    ],
  },
  beads: [{ along: "rail", diameter: 0.4 }],
} as const;

const BUILD_PAGE = `
import { AnnuletError, build, checkSolid } from "annulet";
export async function run() {
  const { mesh, report, timings } = await build(${JSON.stringify(design)});
  const refused = await build({ annulet: 1 }).catch((error) => error);
  return {
    agent: navigator.userAgent,
    closed: checkSolid(mesh).closed,
    refused: refused instanceof AnnuletError ? refused.code : String(refused),
    report,
    timings,
  };
}`;

/** What the page hands back. */
interface Answer {
  readonly agent: string;
  readonly closed: boolean;
  /** Code of the error that an empty design gives. */
  readonly refused: string;
  readonly report: Report;
  readonly timings: Timings;
}

describe.skipIf(!hasBrowser())("in a browser", () => {
  it("builds the ring that Node builds", async () => {
    const [answer, { report: here, timings }] = await Promise.all([runInBrowser(BUILD_PAGE), build(design)]);
    const there = answer as Answer;
    expect(there.agent).toMatch(/Chrome/);
    expect(there.closed).toBe(true);
    expect(there.refused).toMatch(/^[a-z-]+$/);
    const { volume, area, bounds, ...rest } = there.report;
    expect(rest.design).toEqual(here.design);
    expect(Object.keys(there.timings)).toEqual(Object.keys(timings));
    expect(rest).toMatchObject({ closed: true, kernel: "manifold", genus: 1 });
    for (const key of ["triangles", "vertices", "genus", "components", "kernel", "road"] as const) {
      expect(rest[key]).toBe(here[key]);
    }
    expect(rest.beads.map(({ count }) => count)).toEqual(here.beads.map(({ count }) => count));
    // Sine and cosine may differ in their last bit from one engine to another.
    expect(volume).toBeCloseTo(here.volume, 6);
    expect(area).toBeCloseTo(here.area, 5);
    for (const k of [0, 1, 2]) expect(bounds.max[k]).toBeCloseTo(here.bounds.max[k], 6);
  });

  it("passes on what the page throws", async () => {
    await expect(runInBrowser('export function run() { throw new Error("on purpose"); }')).rejects.toThrow(
      "on purpose",
    );
  });
});
