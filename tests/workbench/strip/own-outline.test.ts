import { openRing } from "annulet";
import { describe, expect, it } from "vitest";
import { pathOf } from "../../../src/workbench/state/json-text.js";
import { aloneDocument, movedRings, ownRings } from "../../../src/workbench/strip/own-outline.js";
import { type PlacedArt, placedArt } from "../../../src/workbench/strip/placed-art.js";

const FLAG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h8v2h-6v6h-2z"/></svg>';

const design = (place: object, symmetry = "p2mm", fit: object = {}) => ({
  annulet: 1,
  size: { system: "iso", value: 54 },
  tolerance: 0.02,
  profile: { width: 8, thickness: 2, outside: { form: "flat" } },
  pattern: {
    symmetry,
    fit: { repeats: 6, hold: "band", ...fit },
    regions: [
      { name: "flag", svg: "flag.svg", place, height: 0.3, within: ["other"] },
      { name: "other", path: "M 0 0 H 1", ribbon: { width: 0.4 }, height: 0.2 },
    ],
  },
  beads: [{ along: "seat-edge", diameter: 0.4 }],
});

const FIELD = pathOf("pattern.regions[0]");

async function drawnAt(place: object, symmetry?: string, fit?: object) {
  const alone = aloneDocument(design(place, symmetry, fit), FIELD);
  const tile = await openRing(alone, { files: { "flag.svg": FLAG } }).tile();
  const placed = placedArt(place, [1, tile.fit.aspect]);
  return { rings: ownRings(tile as never, placed, "tile"), placed };
}

/** The corners of path data, as far apart as the nearest of each to another drawing's. */
function apart(d: string, rings: readonly (readonly (readonly [number, number])[])[]): number {
  const corners = [...d.matchAll(/(-?[\d.]+(?:e-\d+)?) (-?[\d.]+(?:e-\d+)?)/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
  const all = rings.flat();
  return Math.max(...corners.map(([x, y]) => Math.min(...all.map(([a, b]) => Math.hypot(a - x, b - y)))));
}

describe("a placed drawing by itself", () => {
  it("is one drawing, without what the symmetry and other art would make of it", () => {
    expect(aloneDocument(design({}), FIELD)).toMatchObject({
      pattern: { symmetry: "p1", regions: [{ name: "flag", svg: "flag.svg" }] },
    });
    expect(aloneDocument(design({}), FIELD)).not.toHaveProperty("beads");
    expect(aloneDocument(design({}), FIELD)?.pattern).not.toHaveProperty("regions.0.within");
    const lanes = { pattern: { lanes: [{ name: "a", regions: [{ path: "M0 0" }] }, { regions: [{ svg: "a.svg" }] }] } };
    expect(aloneDocument(lanes, pathOf("pattern.lanes[1].regions[0]"))).toEqual({
      pattern: {
        lanes: [
          { name: "a", regions: [] },
          { symmetry: "p1", regions: [{ svg: "a.svg" }] },
        ],
      },
    });
    const ends = { pattern: { regions: [{ path: "M0 0" }], ends: { form: "ornament", regions: [{ svg: "a.svg" }] } } };
    expect(aloneDocument(ends, pathOf("pattern.ends.regions[0]"))).toMatchObject({
      pattern: { regions: [], ends: { form: "ornament", symmetry: "p1", regions: [{ svg: "a.svg" }] } },
    });
    expect(aloneDocument({}, FIELD)).toBeUndefined();
    expect(aloneDocument(design({}), pathOf("beads[0]"))).toBeUndefined();
  });

  it.each(["p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm"])(
    "is where the library draws it once it was moved, sized and turned, whatever completes it: %s",
    async (symmetry) => {
      const first = { at: [0.3, 0.1], fit: [0.4, 0.3] };
      const then = { at: [0.45, -0.1], fit: [0.4, 0.3], scale: 0.8, turn: 35 };
      const [before, after] = [await drawnAt(first, symmetry), await drawnAt(then, symmetry)];
      expect(before.rings.length).toBe(1);
      expect(apart(movedRings(before.rings, before.placed, after.placed), after.rings)).toBeLessThan(0.004);
      expect(apart(movedRings(before.rings, before.placed, before.placed), after.rings)).toBeGreaterThan(0.1);
    },
  );

  it("is found beside its place where it lies over the tile's border, and in its own row of several", async () => {
    const { rings, placed } = await drawnAt({ at: [0.02, 0.05], fit: [0.3, 0.2] }, "p2mm", { rows: 2 });
    const reach = (one: PlacedArt) => Math.hypot(...one.half) + 1e-3;
    for (const [x, y] of rings.flat())
      expect(Math.hypot(x - placed.at[0], y - placed.at[1])).toBeLessThan(reach(placed));
  });
});
