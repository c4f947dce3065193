// Covers: src/design/run-rules.ts
/** Runs of beads that stop with the pattern: held against circles by hand. */
import { type BeadRunReport, build, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import type { Bead } from "../../src/beads/bead.js";
import { openInside } from "../../src/ring/open-ring.js";
import { failureOf } from "../support/failure-of.js";

type Fields = Readonly<Record<string, unknown>>;

const R = 10.5;

const design = (run: Fields, pattern: Fields = {}, own: Fields = {}) => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.03,
  profile: {
    width: 6,
    thickness: 2,
    bore: { form: "flat" },
    outside: { form: "channel", rail: 0.8, depth: 0.6, edge: 0.1 },
  },
  pattern: { fit: { repeats: 9, hold: "band" }, cover: 240, ...pattern },
  beads: [{ along: "rail", diameter: 0.4, over: "cover", ...run }],
  ...own,
});

async function laid(document: object): Promise<{ beads: readonly Bead[]; report: BeadRunReport }> {
  const { answers } = await openInside(document, {}).ask(["beads"]);
  return { beads: answers.beads.beads, report: answers.beads.reports[0] };
}

/** θ of each bead from the top, degrees, −180 to 180, ascending; of those on one side of the band. */
function anglesOf(beads: readonly Bead[], side: (z: number) => boolean = (z) => z > 0): number[] {
  return beads
    .filter(({ centre }) => side(centre[2]))
    .map(({ centre: [x, y] }) => (Math.atan2(x, y) * 180) / Math.PI)
    .sort((a, b) => a - b);
}

const degrees = (length: number, radius: number) => (length / radius / Math.PI) * 180;

describe("a run that stops with the pattern", () => {
  it.each([
    [240, 0.4, {}],
    [90, 0.5, { pitch: 1.3 }],
    [355, 0.35, { pitch: 1 }],
  ])("on the rails goes from end to end, half a bead within: cover %i°, %f mm", async (cover, diameter, more) => {
    const { beads, report } = await laid(design({ diameter, ...more }, { cover }));
    const end = cover / 2 - degrees(diameter / 2, R);
    // Beads half sunk have their centres on the rail.
    const length = ((2 * end) / 180) * Math.PI * R;
    const gaps = Math.round(length / (diameter * ((more as { pitch?: number }).pitch ?? 1.05)));
    expect(report.count).toBe(2 * (gaps + 1));
    expect(report.spacing).toBeCloseTo(length / gaps, 4);
    for (const side of [(z: number) => z > 0, (z: number) => z < 0]) {
      const angles = anglesOf(beads, side);
      expect(angles).toHaveLength(gaps + 1);
      angles.forEach((angle, i) => {
        expect(angle).toBeCloseTo(-end + (2 * end * i) / gaps, 3);
      });
    }
    expect(report.span).toEqual([expect.closeTo(90 - end, 9), expect.closeTo(90 + end, 9)]);
  });

  it("on the seat keeps clear of a line, of a fade, and of the wall of what is filled", async () => {
    const floor = R - 0.6;
    const along = { v: 1 };
    for (const [pattern, clear] of [
      [{}, 0.2],
      [{ plain: "filled" }, 0.24],
      [{ ends: { form: "line", width: 0.9, height: 0.4 } }, 0.9 + 0.24],
      [{ plain: "filled", ends: { form: "fade", length: 3 } }, 3 + 0.24],
    ] as const) {
      const angles = anglesOf((await laid(design({ along }, pattern))).beads);
      const end = 120 - degrees(clear, floor);
      expect([angles[0], angles[angles.length - 1]]).toEqual([expect.closeTo(-end, 6), expect.closeTo(end, 6)]);
    }
    // What stands at the ends on the seat does not stop beads on the rails.
    const onRails = anglesOf((await laid(design({}, { plain: "filled", ends: { form: "fade", length: 3 } }))).beads);
    expect(onRails[0]).toBeCloseTo(-120 + degrees(0.2, R), 6);
  });

  it("has as many beads as it is given, one alone at the top", async () => {
    const seven = await laid(design({ count: 7 }));
    expect(anglesOf(seven.beads)).toHaveLength(7);
    const one = await laid(design({ count: 1 }));
    expect(anglesOf(one.beads)).toEqual([expect.closeTo(0, 6)]);
  });

  it("keeps clear by its largest bead, graduated or alternating", async () => {
    for (const own of [{ to: 0.8 }, { alternate: 0.8 }]) {
      const angles = anglesOf((await laid(design(own))).beads);
      const end = 120 - degrees(0.4, R);
      expect([angles[0], angles[angles.length - 1]]).toEqual([expect.closeTo(-end, 2), expect.closeTo(end, 2)]);
    }
  });

  it("follows a band that tapers, on both rails", async () => {
    const document = design({});
    const tapered = { ...document, profile: { ...document.profile, taper: { width: 5, thickness: 1.6 } } };
    const { beads } = await laid(tapered);
    const angles = anglesOf(beads);
    // At 30° past the side the band is thinner, so half a bead is more degrees; both ends alike.
    expect(angles[0]).toBeCloseTo(-angles[angles.length - 1], 6);
    expect(angles[0]).toBeGreaterThan(-120 + degrees(0.2, R));
    expect(angles[0]).toBeLessThan(-120 + degrees(0.2, R - 0.4));
  });

  it.each([
    ["on the rails", design({})],
    ["on the rails of a plain zone that is filled", design({}, { plain: "filled" })],
    ["along the seat's edge beside it", design({ along: "seat-edge", diameter: 0.3 }, { plain: "filled" })],
  ])("makes a closed ring %s", async (_, document) => {
    const { report } = await build(document);
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
    expect(report.beads[0].span?.[0]).toBeGreaterThan(-30);
  });

  it("is refused where the ends leave no room", async () => {
    const short = design(
      { along: { v: 0 } },
      { cover: 20, fit: { repeats: 1, hold: "band" }, ends: { form: "fade", length: 1.7 } },
    );
    await expect(laid(short)).rejects.toMatchObject({ code: "bead-line-too-short", path: "beads[0].over" });
  });
});

it("leaves other runs as they are, and tells no span of them", async () => {
  const round = await laid(design({ over: "band" }));
  expect(round.report).toEqual((await laid(design({ over: undefined }))).report);
  expect(round.report).not.toHaveProperty("span");
  expect(anglesOf(round.beads)[0]).toBeLessThan(-177);
});

describe("the document", () => {
  const problems = (run: Fields, pattern: Fields = {}, own: Fields = {}) =>
    failureOf(() => readDesign(design(run, pattern, own))).problems.map(({ code, path }) => `${code} ${path}`);

  it("wants a cover to stop with, and runs that do not end by themselves", () => {
    expect(problems({}, { cover: 360 })).toEqual(["value-invalid beads[0].over"]);
    expect(problems({}, {}, { pattern: undefined })).toEqual(["value-invalid beads[0].over"]);
    for (const over of ["band", "cover"]) {
      expect(problems({ along: { path: "M 0 0 H 1" }, over })).toEqual(["value-invalid beads[0].over"]);
    }
    expect(problems({ junctions: "share" })).toEqual(["value-invalid beads[0].junctions"]);
    expect(problems({ over: "covre" })).toEqual(["value-invalid beads[0].over"]);
  });

  it("lets runs on the seat stand beside a plain zone that is filled where they stop with the cover", () => {
    const filled = { plain: "filled" };
    expect(problems({ along: "seat-edge", over: "band" }, filled)).toEqual(["value-invalid beads[0].along"]);
    for (const along of ["rail", "seat-edge", { v: 0 }]) {
      expect(() => readDesign(design({ along }, filled))).not.toThrow();
    }
  });
});
