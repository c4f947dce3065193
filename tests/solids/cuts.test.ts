// Covers: src/solids/build-hole.ts, src/solids/floor-wall.ts, src/solids/pattern-steps.ts, src/pattern/work-steps.ts
// Covers: src/relief/pierce-region.ts
/** What is sunk or pierced, against exact volumes, and the rings that it leaves. */
import { build, encodeMesh, formatForFile } from "annulet";
import { describe, expect, it } from "vitest";
import { type FriezeName, friezeGroups } from "../../src/base/frieze/symmetry.js";
import { checkSolid } from "../../src/judge/gate.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { admesh, hasAdmesh } from "../support/admesh.js";
import { bodiesOf } from "../support/stages.js";

interface Drawing {
  readonly regions: readonly object[];
  readonly tolerance?: number;
  readonly profile?: object;
  readonly symmetry?: FriezeName;
  readonly repeats?: number;
  readonly more?: object;
}

const flat = { width: 6, thickness: 2, outside: { form: "flat" } };
const square = "M 0.2 -0.2 H 0.6 V 0.2 H 0.2 Z";
const AREA = 0.16;

const document = ({ regions, tolerance = 0.02, profile = flat, symmetry = "p1", repeats = 9, more = {} }: Drawing) => ({
  annulet: 1,
  size: { diameter: 18 },
  tolerance,
  profile,
  proud: true,
  pattern: { fit: { repeats, hold: "band", aspect: 0.9 }, symmetry, regions },
  ...more,
});

const make = (drawing: Drawing) => build(document(drawing));

async function failureOf(drawing: Drawing) {
  try {
    await make(drawing);
  } catch (error) {
    return error as { code: string; path: string; allowed?: string; problems: readonly object[] };
  }
  throw new Error("nothing was thrown");
}

/** Flat area of the squares on the whole band, mm². */
function areaOf(drawing: Drawing): { area: number; radius: number } {
  const { fit, profile } = bodiesOf(document(drawing));
  if (fit === undefined) throw new Error("no fit");
  // The tile is stretched across to the seat.
  return { area: AREA * fit.tileWidth * (fit.tileHeight / 0.9) * fit.repeats, radius: profile.outsideRadius };
}

describe("volumes", () => {
  const tolerance = 0.002;
  const plain = async () =>
    (await build({ ...document({ regions: [], tolerance }), pattern: undefined })).report.volume;

  it("a pierced hole takes the radial sector off the wall", async () => {
    const drawing = { regions: [{ path: square, mode: "pierced" }], tolerance };
    const { area, radius } = areaOf(drawing);
    const taken = (await plain()) - (await make(drawing)).report.volume;
    // ∫ r dr dθ dw from the bore to the seat, dθ dw = area / R.
    const exact = ((area / radius) * (radius ** 2 - 9 ** 2)) / 2;
    expect(Math.abs(taken / exact - 1)).toBeLessThan(2e-3);
  });

  it("a sunk region takes its depth off the seat", async () => {
    const drawing = { regions: [{ path: square, mode: "sunk", depth: 0.6 }], tolerance };
    const { area, radius } = areaOf(drawing);
    const taken = (await plain()) - (await make(drawing)).report.volume;
    expect(Math.abs(taken / (area * 0.6 * (1 - 0.3 / radius)) - 1)).toBeLessThan(4e-3);
  });

  it("a broken edge takes the rest of a square beside its quarter round, twice round the hole", async () => {
    const sharp = (await make({ regions: [{ path: square, mode: "pierced" }], tolerance })).report.volume;
    const { report } = await make({ regions: [{ path: square, mode: "pierced", broken: 0.2 }], tolerance });
    const { fit } = report;
    const [a, b] = [0.4 * (fit?.tileWidth ?? 0), (0.4 * (fit?.tileHeight ?? 0)) / 0.9];
    // At the bore lengths round the finger are 9 / 11 of those on the seat.
    const perimeter = 2 * a * (1 + 9 / 11) + 4 * b;
    // A square less a quarter circle along the sides; at the corners ∫ π o² dh over the widening o.
    const corners = 2 * Math.PI * 0.2 ** 3 * (5 / 3 - Math.PI / 2);
    const exact = 9 * (perimeter * 0.2 ** 2 * (1 - Math.PI / 4) + corners);
    expect(Math.abs((sharp - report.volume) / exact - 1)).toBeLessThan(0.04);
  });
});

describe("holes are handles", () => {
  it.each(friezeGroups.map(({ name, operations }) => ({ name, images: operations.length })))(
    "$name: $images a tile",
    async ({ name, images }) => {
      const hole = { path: "M 0.05 0.1 L 0.2 0.1 L 0.1 0.3 Z", mode: "pierced", broken: 0.08 };
      const { report } = await make({ regions: [hole], symmetry: name, repeats: 5, tolerance: 0.05 });
      expect(report).toMatchObject({ closed: true, genus: 1 + 5 * images, genusExpected: 1 + 5 * images });
      expect(report.road).not.toBe("plain");
    },
  );

  it("that overlap are one, across the tile's border too, and count in a pattern that stops", async () => {
    const holes = [square, "M 0.5 -0.1 H 0.9 V 0.1 H 0.5 Z"].map((path) => ({ path, mode: "pierced" }));
    expect((await make({ regions: holes, repeats: 5 })).report).toMatchObject({ genus: 6, genusExpected: 6 });
    const border = [{ path: "M -0.2 -0.2 H 0.2 V 0.2 H -0.2 Z", mode: "pierced", broken: 0.1 }];
    expect((await make({ regions: border, repeats: 5 })).report).toMatchObject({ genus: 6, genusExpected: 6 });
    const part = document({ regions: [{ path: square, mode: "pierced" }], repeats: 3 });
    const { report } = await build({ ...part, pattern: { ...part.pattern, cover: 120 } });
    expect(report).toMatchObject({ genus: 4, genusExpected: 4 });
  });

  it("a hole that something lies over is told", async () => {
    const bar = { path: "M 0.1 -0.05 H 0.7 V 0.05 H 0.1 Z", height: 0.3 };
    const { report } = await make({ regions: [{ path: square, mode: "pierced" }, bar], repeats: 5 });
    expect([report.genus, report.genusExpected]).toEqual([11, 6]);
    expect(report.warnings.map(({ code }) => code)).toContain("genus-differs");
  });
});

describe("the list is an order of work", () => {
  const pad = { path: "M 0.1 -0.3 H 0.7 V 0.3 H 0.1 Z", height: 0.4 };
  const pit = { path: square, mode: "sunk", depth: 0.3 };
  const volume = async (...regions: object[]) => (await make({ regions })).report.volume;

  it("a cut goes through what was raised before it, not through what is raised after it", async () => {
    const [before, after, alone] = [await volume(pad, pit), await volume(pit, pad), await volume(pad)];
    expect(after).toBeCloseTo(alone, 1);
    const { area, radius } = areaOf({ regions: [] });
    expect((alone - before) / (area * 0.7 * (1 + 0.05 / radius))).toBeCloseTo(1, 1);
  });

  it("relief raised in a pit stands on its floor", async () => {
    const post = { path: "M 0.35 -0.05 H 0.45 V 0.05 H 0.35 Z", height: 0.2 };
    const { report } = await make({ regions: [pit, post] });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
  });

  it("beads on a sunk region stand on its floor", async () => {
    const regions = [{ ...pit, beads: { diameter: 0.3, on: 0.4 } }];
    const { report } = await make({ regions });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
    const { parts, wrap } = bodiesOf(document({ regions }));
    for (const { centre } of parts.spheres) expect(wrap.inverse(...centre)[2]).toBeCloseTo(-0.3, 6);
  });
});

describe("tools", () => {
  const profiles = [
    flat,
    { width: 6, thickness: 2, bore: { form: "comfort", rise: 0.3 }, outside: { form: "domed", rise: 0.6 } },
    { width: 7, thickness: 2.2, outside: { form: "channel", crown: 0.1 } },
    { width: 6, thickness: 2, outside: { form: "concave", dip: 0.3 } },
  ];
  it.each(profiles)("are closed on %o", (profile) => {
    const regions = [
      { path: square, mode: "sunk", depth: 0.3, round: 0.1 },
      { path: "M 0.7 -0.1 H 0.9 V 0.2 H 0.7 Z", mode: "pierced", broken: 0.12 },
      { path: "M 0.65 -0.3 H 0.95 V -0.2 H 0.65 Z", mode: "sunk", section: { form: "ridge", slope: 40 } },
    ];
    const { parts } = bodiesOf(document({ regions, profile }));
    const [{ tools }] = parts.cuts;
    expect(tools).toHaveLength(3);
    for (const tool of tools) {
      expect(checkSolid(tool, { components: 9 }).faults).toEqual([]);
      expect(signedVolume(tool)).toBeGreaterThan(0);
    }
  });
});

describe("what cannot be cut", () => {
  it.each<[string, object, string, RegExp | undefined]>([
    ["a hole at the band's edge", { path: "M 0.2 -0.45 H 0.6 V 0 H 0.2 Z", mode: "pierced" }, "cut-at-edge", /mm/],
    [
      "a hole that frees metal",
      { path: `${square} M 0.3 -0.1 V 0.1 H 0.5 V -0.1 Z`, mode: "pierced" },
      "hole-frees-metal",
      undefined,
    ],
    ["a hole all the way round", { path: "M 0 -0.1 H 1 V 0.1 H 0 Z", mode: "pierced" }, "hole-parts-band", undefined],
    ["edges that meet in the wall", { path: square, mode: "pierced", broken: 1.1 }, "broken-too-large", /under 1 mm/],
    [
      "a pit through the wall",
      { path: square, mode: "sunk", depth: 1.95 },
      "depth-too-large",
      /at most 1.9 mm|at most 1.89\d mm/,
    ],
  ])("%s", async (_, cut, code, allowed) => {
    const failure = await failureOf({ regions: [cut] });
    expect(failure.code).toBe(code);
    if (allowed !== undefined) expect(failure.allowed).toMatch(allowed);
  });

  it.each<[string, object, string]>([
    ["beads on a hole", { mode: "pierced", beads: { diameter: 0.3, on: "border" } }, "beads"],
    ["a hole with a height", { mode: "pierced", height: 1 }, "height"],
    ["a pit without a depth", { mode: "sunk" }, "depth"],
    ["a raised region without a height", {}, "height"],
    ["a section and a height", { height: 1, section: { form: "flat", height: 1 } }, "height"],
    ["a section and a rounding", { round: 0.1, section: { form: "flat", height: 1 } }, "round"],
    ["a raised region with broken edges", { height: 1, broken: 0.1 }, "broken"],
  ])("is said of the document: %s", async (_, cut, field) => {
    const failure = await failureOf({ regions: [{ path: square, ...cut }] });
    expect(failure.problems).toHaveLength(1);
    expect(failure.path).toBe(`pattern.regions[0].${field}`);
  });
});

it.skipIf(!hasAdmesh)("a ring with all sections, pits and holes is clean to admesh", async () => {
  const { mesh, report } = await make({
    symmetry: "p2mg",
    regions: [
      { path: "M 0.02 0.02 H 0.2 V 0.2 H 0.02 Z", section: { form: "domed", height: 0.4, wall: 0.1, draft: 5 } },
      { path: "M 0.05 0.25 L 0.2 0.25 L 0.1 0.42 Z", section: { form: "ridge", height: 0.4 } },
      { path: "M 0.22 0.25 L 0.24 0.25 L 0.24 0.3 L 0.22 0.3 Z", mode: "sunk", depth: 0.2 },
      { path: "M 0.3 0 A 0.03 0.03 0 0 1 0.36 0 A 0.03 0.03 0 0 1 0.3 0 Z", mode: "pierced", broken: 0.05 },
    ],
  });
  expect(report.genus).toBe(report.genusExpected);
  const stl = await encodeMesh(formatForFile("ring.stl"), mesh, { name: "ring" });
  expect(admesh(stl)).toMatchObject({ parts: 1, degenerate: 0, disconnectedEdges: [0, 0, 0], facetsReversed: 0 });
});

it("beads that hang over a pit are told as loose, with their places", async () => {
  const regions = [{ path: "M 0.1 -0.3 H 0.7 V 0.3 H 0.1 Z", mode: "sunk", depth: 0.5 }];
  const beads = [{ along: { v: 0 }, diameter: 0.3, count: 45 }];
  const failure = await failureOf({ regions, more: { beads } });
  expect(failure).toMatchObject({ code: "loose-pieces", allowed: "a ring in one piece" });
});
