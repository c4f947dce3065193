// Covers: src/design/profile/step.ts
/** Steps cut along the edges of every outside: held against areas by hand, and the beads in them against circles. */
import { build, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { outlineMoments } from "../../../src/band/profile/moments.js";
import { buildOutline, buildProfile } from "../../../src/band/profile/profile.js";
import { asCast } from "../../../src/casting/as-cast.js";
import { openInside } from "../../../src/ring/open-ring.js";
import { failureOf, spec } from "./specs.js";

type Fields = Readonly<Record<string, unknown>>;

const BORE = { form: "flat", edge: 0 };
const R = 8.5 + 2;

/** Area of a cross-section 6 mm wide and 2 mm thick, mm². */
function areaOf(outside: Fields, step?: Fields): number {
  const profile = spec({ width: 6, thickness: 2, bore: BORE, outside, step });
  return outlineMoments(buildOutline(profile, 8.5, 0.001).outline).area;
}

/** What a rounded corner of 90° takes away where it stands out, and leaves where it goes in, mm². */
const corner = (edge: number) => (1 - Math.PI / 4) * edge ** 2;

describe("the cross-section with a step", () => {
  it.each([0, 0.1, 0.13])("of a flat band lacks two rectangles, corners of %f mm as they are rounded", (edge) => {
    const sharp = areaOf({ form: "flat", edge: 0 });
    const cut = areaOf({ form: "flat", edge: 0.4 }, { width: 0.5, depth: 0.3, edge });
    // At each side one corner goes in and two stand out; the outside's own edge is no longer there.
    expect(sharp - cut).toBeCloseTo(2 * (0.5 * 0.3 + corner(edge)), 9);
  });

  it("of a dome goes down from its side, and up to where the dome is", () => {
    const rise = 0.6;
    const radius = (3 ** 2 + rise ** 2) / (2 * rise);
    const dome = (w: number) => R - radius + Math.sqrt(radius ** 2 - w ** 2);
    const ledge = R - rise - 0.25;
    let strip = 0;
    for (let i = 0; i < 20_000; i++) strip += (dome(3 - (0.4 * (i + 0.5)) / 20_000) - ledge) * (0.4 / 20_000);
    const outside = { form: "domed", rise, edge: 0 };
    const lost = areaOf(outside) - areaOf(outside, { width: 0.4, depth: 0.25, edge: 0 });
    expect(lost).toBeCloseTo(2 * strip, 7);
  });

  it("of a hollow goes down from where the hollow is lower", () => {
    const profile = spec({
      width: 6,
      thickness: 2,
      bore: BORE,
      outside: { form: "concave", dip: 0.5, edge: 0 },
      step: { edge: 0 },
    });
    const { ledges } = buildOutline(profile, 8.5, 0.001);
    const radius = (3 ** 2 + 0.5 ** 2) / (2 * 0.5);
    const hollow = R - 0.5 + radius - Math.sqrt(radius ** 2 - (3 - 0.45) ** 2);
    for (const ledge of ledges ?? []) expect(ledge.radius).toBeCloseTo(hollow - 0.3, 9);
  });

  it("of a free outside has each ledge by its own side", () => {
    const outside = {
      form: "free",
      points: [
        [-3, 1.4],
        [-1, 2],
        [1, 2],
        [3, 1.8],
      ],
      edge: 0,
    };
    const { ledges, symmetric } = buildOutline(
      spec({ width: 6, thickness: 2, bore: BORE, outside, step: { width: 0.5, depth: 0.2, edge: 0 } }),
      8.5,
      0.001,
    );
    expect(symmetric).toBe(false);
    expect(ledges?.[0]).toEqual({ w: expect.closeTo(-2.75, 12), radius: expect.closeTo(8.5 + 1.2, 9) });
    expect(ledges?.[1]).toEqual({ w: expect.closeTo(2.75, 12), radius: expect.closeTo(8.5 + 1.6, 9) });
  });

  it("leaves a channel's floor and the rails' tops, which are narrower by it", () => {
    const outside = { form: "channel", rail: 1.2, depth: 0.5, edge: 0.1 };
    const drawn = (step?: Fields) =>
      buildOutline(spec({ width: 6, thickness: 2, bore: BORE, outside, step }), 8.5, 0.001);
    const [plain, stepped] = [drawn(), drawn({ width: 0.4 })];
    expect(stepped.seatLength).toBeCloseTo(plain.seatLength, 12);
    expect(stepped.rails?.top).toBe(plain.rails?.top);
    expect(stepped.rails?.width).toBeCloseTo(0.8, 12);
    expect(stepped.rails?.faces[1][0]).toBeCloseTo(plain.rails?.faces[1][0] ?? Number.NaN, 12);
    // The wall's upper corner takes 0.13 of what the ledge leaves.
    expect(stepped.rails?.faces[1][1]).toBeCloseTo(3 - 0.4 - 0.13, 9);
    expect([plain.ledges, stepped.symmetric]).toEqual([undefined, true]);
  });

  it.each(["flat", "domed", "channel", "bevelled", "concave", "knife"])(
    "is simple and has a seat on the form %s",
    (form) => {
      const rail = form === "channel" ? { rail: 1.2 } : {};
      const profile = buildProfile(
        spec({ width: 6, thickness: 2, bore: { form: "comfort" }, outside: { form, ...rail }, step: {} }),
        8.5,
        0.01,
      );
      expect(profile.seatLength).toBeGreaterThan(1);
      expect(profile.ledges?.map(({ w }) => w)).toEqual([expect.closeTo(-2.775, 12), expect.closeTo(2.775, 12)]);
    },
  );
});

describe("a step that does not fit", () => {
  const problem = (outside: Fields, step: Fields, thickness = 2) => {
    const draw = (own: Fields) =>
      buildOutline(spec({ width: 6, thickness, bore: BORE, outside, step: { ...step, ...own } }), 8.5, 0.001);
    const [found] = failureOf(() => draw({})).problems;
    return { ...found, draw };
  };

  it.each([
    ["wider than the rail", { form: "channel", rail: 0.8 }, { width: 0.9 }, "step-too-wide", "profile.step.width"],
    ["wider than half the band", { form: "flat" }, { width: 3.2 }, "step-too-wide", "profile.step.width"],
    ["beyond a bevel", { form: "bevelled", bevel: 0.4 }, { width: 0.5 }, "step-too-wide", "profile.step.width"],
    ["down to the bore", { form: "flat" }, { depth: 2.5 }, "step-too-deep", "profile.step.depth"],
    ["with corners larger than its wall", { form: "flat" }, { edge: 0.2 }, "fillet-too-large", "profile.step.edge"],
  ])("%s is told with the largest that does", (_, outside, step, code, path) => {
    const { draw, ...found } = problem(outside, step);
    expect(found).toMatchObject({ code, path });
    const largest = Number(/to ([\d.]+)/.exec(String(found.allowed))?.[1]);
    const [field] = Object.keys(step);
    expect(() => draw({ [field]: largest })).not.toThrow();
    expect(() => draw({ [field]: largest + 0.002 })).toThrow();
  });
});

const ring = (own: Fields, profile: Fields = {}) => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.02,
  profile: { width: 6, thickness: 2, bore: BORE, outside: { form: "flat" }, step: { edge: 0 }, ...profile },
  ...own,
});

const MILGRAIN = [{ along: "step", diameter: 0.42 }];

describe("the ring", () => {
  it("lacks two turned rectangles, by Pappus", async () => {
    const plain = await build(ring({}, { step: undefined, outside: { form: "flat", edge: 0 } }));
    const stepped = await build(ring({}));
    const expected = 2 * 2 * Math.PI * 0.45 * 0.3 * (R - 0.15);
    expect(Math.abs((plain.report.volume - stepped.report.volume) / expected - 1)).toBeLessThan(5e-3);
  });

  it("has as many beads in both steps as a circle of the ledge's radius takes, on its middle", async () => {
    const { answers } = await openInside(ring({ beads: MILGRAIN }), {}).ask(["beads"]);
    const { beads, reports } = answers.beads;
    const length = 2 * Math.PI * (R - 0.3);
    const count = Math.round(length / (1.05 * 0.42));
    expect(reports[0]).toMatchObject({ run: "step", path: "beads[0]", count: 2 * count, onRail: true });
    expect(reports[0].spacing).toBeCloseTo(length / count, 9);
    for (const { centre } of beads) {
      expect(Math.hypot(centre[0], centre[1])).toBeCloseTo(R - 0.3, 9);
      expect(Math.abs(centre[2])).toBeCloseTo(3 - 0.225, 12);
    }
    expect(beads.filter(({ centre }) => centre[2] > 0)).toHaveLength(count);
  });

  it.each([
    ["of a dome", ring({ beads: MILGRAIN }, { outside: { form: "domed", rise: 0.4 } })],
    [
      "of a band that tapers",
      ring({ beads: MILGRAIN }, { outside: { form: "domed" }, taper: { width: 4, thickness: 1.6 } }),
    ],
    [
      "of a channel with relief that stops, and milgrain with it",
      ring(
        {
          beads: [{ ...MILGRAIN[0], over: "cover" }],
          pattern: {
            fit: { repeats: 9, hold: "band" },
            cover: 240,
            plain: "filled",
            regions: [{ path: "M 0.2 0 L 0.5 0.3 L 0.8 0 L 0.5 -0.3 Z", height: 0.4 }],
          },
        },
        { outside: { form: "channel", rail: 1.2, depth: 0.6 } },
      ),
    ],
  ])("with beads is closed: %s", async (_, document) => {
    const { report } = await build(document);
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
  });

  it("keeps its ledges along a taper: the depth below the side at every angle", async () => {
    const document = ring({}, { outside: { form: "flat" }, taper: { width: 4, thickness: 1.6 } });
    const { answers } = await openInside(document, {}).ask(["profile"]);
    for (const angle of [0.3, 1.9, 3.3, 4.7]) {
      const { width, thickness } = answers.profile.sizesAt(angle);
      const ledges = answers.profile.sectionAt(angle).ledges ?? [];
      expect(ledges).toHaveLength(2);
      for (const [i, { w, radius }] of ledges.entries()) {
        expect(radius).toBeCloseTo(8.5 + thickness - 0.3, 4);
        expect(w).toBeCloseTo((i === 0 ? -1 : 1) * (width / 2 - 0.225), 4);
      }
    }
  });

  it("is finished on its outside and not in its steps", () => {
    const beads = [{ ...MILGRAIN[0], height: 0.1 }];
    const design = readDesign(ring({ beads, pattern: {} }, { outside: { form: "channel", rail: 1.2 } }));
    const cast = asCast(design, { bore: 0.05, rails: 0.1, relief: 0.02 });
    const [finished, unfinished] = [buildOutline(design.profile, 8.5, 0.001), buildOutline(cast.profile, 8.45, 0.001)];
    expect(unfinished.outsideRadius).toBeCloseTo(finished.outsideRadius + 0.1, 9);
    expect(unfinished.ledges).toEqual(
      finished.ledges?.map(({ w, radius }) => ({ w, radius: expect.closeTo(radius, 9) })),
    );
    expect(cast.beads[0].height).toBe(0.1);
  });
});

it("wants a step for beads to stand in", async () => {
  const none = build(ring({ beads: MILGRAIN }, { step: undefined }));
  await expect(none).rejects.toMatchObject({ code: "no-step", path: "beads[0].along" });
});
