// Covers: src/design/pattern/compose.ts, src/relief/regions.ts
import { describe, expect, it } from "vitest";
import { ShapeDrawer } from "../../src/art/shapes/draw-shape.js";
import { LAP } from "../../src/design/pattern/compose.js";
import { clipAlong, intersect, offset } from "../../src/flat/polygons.js";
import { Regions } from "../../src/relief/regions.js";
import { areaOf, circle, collector, failureOf, region, type StripInput, stripOf } from "../flat/strips.js";

/** The regions of one pattern completed; their areas in one tile, mm². */
function complete(specs: readonly Readonly<Record<string, unknown>>[], input: StripInput = {}) {
  const strip = stripOf({ tolerance: 1e-3, ...input });
  const { codes, warn } = collector();
  const regions = new Regions(
    { regions: specs.map((spec) => region(spec)), where: "pattern" },
    new ShapeDrawer(strip, { warn }),
    warn,
  );
  const arts = specs.map((_, i) => regions.art(i));
  const areas = arts.map((art) => areaOf(strip, clipAlong(art.region, 0, strip.grid.tile, 4 * strip.halfSeat)));
  return { strip, arts, areas, codes };
}

const disc = { name: "disc", path: circle(0.5, 0, 0.3) };
const bar = { name: "bar", path: "M 0 -0.1 H 1 V 0.1 H 0 Z" };
const DISC = Math.PI * 1.8 ** 2;

/** Area of a circle's part within ± h of a line through its middle (any table of circular segments). */
function zone(radius: number, h: number): number {
  return 2 * (h * Math.sqrt(radius ** 2 - h ** 2) + radius ** 2 * Math.asin(h / radius));
}

describe("completed regions", () => {
  it("are kept within others, and clear of others by a gap (closed forms)", () => {
    const { areas, codes } = complete([
      { ...disc, within: ["bar"] },
      bar,
      { path: disc.path, without: ["bar"] },
      { path: disc.path, without: [{ region: "bar", gap: 0.2 }] },
      { path: disc.path, within: ["bar", "cap"] },
      { name: "cap", path: "M 0 0.1 H 1 V 0.4 H 0 Z" },
    ]);
    expect(codes).toEqual([]);
    expect(areas[0]).toBeCloseTo(zone(1.8, 0.6 + LAP), 2);
    expect(areas[2]).toBeCloseTo(DISC - zone(1.8, 0.6 - LAP), 2);
    expect(areas[3]).toBeCloseTo(DISC - zone(1.8, 0.8), 2);
    expect(areas[4]).toBeCloseTo((DISC + zone(1.8, 0.6 + LAP)) / 2, 2);
  });

  it("are grown or shrunk after symmetry, so that halves become one disc", () => {
    const half = "M 0.5 -0.3 A 0.3 0.3 0 0 1 0.5 0.3 Z";
    const { areas, codes } = complete(
      [
        { path: half, offset: -0.3 },
        { path: half, offset: 0.3 },
        { path: "M 0.2 0 H 0.8", ribbon: { width: 0.6 }, offset: 0.1 },
      ],
      { symmetry: "p1m1" },
    );
    expect(codes).toEqual([]);
    expect(areas[0]).toBeCloseTo(Math.PI * 1.5 ** 2, 1);
    expect(areas[1]).toBeCloseTo(Math.PI * 2.1 ** 2, 1);
    expect(areas[2]).toBeCloseTo(0.8 * 3.8, 3);
  });

  it("are composed whatever their order, and through each other", () => {
    const ring = { name: "ring", path: circle(0.5, 0, 0.4), without: ["disc"] };
    const { areas } = complete([{ path: bar.path, within: ["ring"] }, ring, disc]);
    const expected = zone(2.4 + LAP, 0.6) - zone(1.8 - 2 * LAP, 0.6);
    expect(areas[0]).toBeCloseTo(expected, 2);
  });

  it("keep the centre lines of ribbons no longer than the ribbons", () => {
    const ribbon = { path: "M 0.05 0 H 0.95", ribbon: { width: 0.4 }, within: ["disc"] };
    const loop = { path: circle(0.5, 0, 0.35), ribbon: { width: 0.4, side: "centre" }, without: ["bar"] };
    const whole = { path: circle(0.5, 0, 0.35), ribbon: { width: 0.4, side: "centre" }, without: ["dot"] };
    const { arts, strip } = complete([ribbon, loop, whole, disc, bar, { name: "dot", path: circle(0.5, 0, 0.05) }]);
    const own = (i: number) => arts[i].centre.filter(({ points }) => points.every(({ x }) => x > 0 && x < 6e6));
    const [line] = own(0).map(({ points }) => points.map(({ x }) => x / strip.grid.scale));
    expect(Math.min(...line)).toBeCloseTo(1.2 - LAP, 2);
    expect(Math.max(...line)).toBeCloseTo(4.8 + LAP, 2);
    expect(own(1).map(({ closed }) => closed)).toEqual([false, false]);
    expect(own(2).map(({ closed }) => closed)).toEqual([true]);
    expect(arts[0].border).toEqual([]);
  });

  it("keep the gap that is asked for", () => {
    const { arts, strip } = complete(
      [
        { path: circle(0.25, 0.1, 0.3), without: [{ region: "disc", gap: 0.3 }] },
        { ...disc, path: circle(0.1, 0, 0.1) },
      ],
      { symmetry: "p2mm" },
    );
    const near = offset(arts[1].region, 0.299 * strip.grid.scale, "round", 100);
    expect(areaOf(strip, intersect(arts[0].region, near))).toBeCloseTo(0, 4);
    const nearer = offset(arts[1].region, 0.305 * strip.grid.scale, "round", 100);
    expect(areaOf(strip, intersect(arts[0].region, nearer))).toBeGreaterThan(1e-3);
  });
});

describe("regions that cannot be composed", () => {
  it.each<[string, readonly Readonly<Record<string, unknown>>[], string, string]>([
    ["an unknown name", [{ ...disc, within: ["bra"] }, bar], "region-unknown", "pattern.regions[0].within[0]"],
    [
      "a name used twice",
      [{ ...disc, without: ["bar"] }, bar, bar],
      "region-ambiguous",
      "pattern.regions[0].without[0]",
    ],
    [
      "a cycle",
      [
        { ...disc, without: [{ region: "bar", gap: 0.1 }] },
        { ...bar, within: ["disc"] },
      ],
      "region-cycle",
      "pattern.regions[1].within[0]",
    ],
    ["itself", [{ ...disc, without: ["disc"] }], "region-cycle", "pattern.regions[0].without[0]"],
    [
      "nothing left within",
      [{ ...disc, path: circle(0.5, 0.4, 0.05), within: ["bar"] }, bar],
      "region-empty",
      "pattern.regions[0].within",
    ],
    [
      "nothing left without",
      [{ ...bar, name: "b", without: ["bar"] }, bar],
      "region-empty",
      "pattern.regions[0].without",
    ],
    ["an inset that leaves nothing", [{ ...bar, offset: -0.7 }], "offset-too-large", "pattern.regions[0].offset"],
  ])("%s", (_, specs, code, path) => {
    expect(failureOf(() => complete(specs))).toMatchObject({ code, path });
  });

  it("say the nearest name, and the largest inset", () => {
    expect(failureOf(() => complete([{ ...disc, within: ["baar"] }, bar])).hint).toBe('did you mean "bar"?');
    expect(failureOf(() => complete([{ ...bar, offset: -0.7 }])).allowed).toBe("at least -0.599 mm");
  });
});
