// Covers: src/stones/place-tile.ts, src/stones/place-line.ts, src/stones/place-row.ts, src/stones/place-single.ts
// Covers: src/stones/place-along.ts, src/stones/track.ts, src/stones/spot.ts, src/stones/frame.ts, src/stones/level.ts
// Covers: src/stones/lane-spans.ts, src/stones/row-sizes.ts, src/stones/stone-shape.ts, src/stones/read-stone.ts
// Covers: src/stones/own-gems.ts, src/stones/grouped-by.ts
/**
 * Where stones stand: rows against closed formulas, anchors under every group, what is refused.
 */
import { describe, expect, it } from "vitest";
import { AnnuletError, type Problem } from "../../src/base/errors.js";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import { convexDistance } from "../../src/base/math/convex-distance.js";
import { degrees } from "../../src/base/units.js";
import { heightsOf } from "../../src/gems/stone.js";
import type { PlacedStone } from "../../src/stones/placed-stone.js";
import { girdleBody, shapeOf } from "../../src/stones/stone-shape.js";
import { FLAT_RADIUS, flatBand, placeOn, tiles } from "../support/place-stones.js";

const flush = { form: "flush" };
const round = (size: number, place: object, more: object = {}) => ({ size, place, setting: flush, ...more });

async function problemsOf(stones: readonly object[], more: object = {}): Promise<readonly Problem[]> {
  try {
    await placeOn(stones, more);
  } catch (error) {
    if (error instanceof AnnuletError) return error.problems;
    throw error;
  }
  throw new Error("the stones were taken");
}

/** Clear gaps between stones that follow each other. */
function gapsOf(stones: readonly PlacedStone[]): number[] {
  const girdles = stones.map((stone) => girdleBody(shapeOf(stone.stone), stone));
  return girdles.slice(1).map((girdle, i) => convexDistance(girdles[i], girdle).distance);
}

describe("a row all round a flat band", () => {
  it("has the count and the gap of the closed formula", async () => {
    const { stones, groups } = await placeOn([round(1.5, { form: "row" })]);
    const [{ stone }] = stones;
    const { crown, girdle } = heightsOf(stone);
    // The lower edges of the girdles are nearest to each other.
    const radius = FLAT_RADIUS - crown - girdle;
    const count = Math.floor(Math.PI / Math.atan((1.5 + 0.1) / (2 * radius)));
    expect(stones).toHaveLength(count);
    const half = Math.PI / count;
    const gap = (2 * radius * Math.tan(half) - 1.5) * Math.cos(half);
    const [{ choices, closed }] = groups[0].rows;
    expect(closed).toBe(true);
    expect(choices.map(({ count: n, made }) => [n - count, made])).toEqual([
      [-1, false],
      [0, true],
      [1, false],
    ]);
    expect(choices[1].gap).toBeCloseTo(gap, 8);
    for (const one of gapsOf(stones)) expect(one).toBeCloseTo(gap, 8);
  });

  it("begins at the top, goes on counter-clockwise, and looks outward with its tables level with the surface", async () => {
    const { stones } = await placeOn([round(1.5, { form: "row", count: 20 })]);
    stones.forEach(({ number, at, out, along, surface, row, stone }, i) => {
      const angle = Math.PI / 2 + (2 * Math.PI * i) / 20;
      expect(number).toBe(i + 1);
      expect(row).toEqual({ row: 0, index: i, count: 20, closed: true });
      expect(surface.angle % (2 * Math.PI)).toBeCloseTo(angle % (2 * Math.PI), 9);
      const radius = FLAT_RADIUS - heightsOf(stone).crown;
      [radius * Math.cos(angle), radius * Math.sin(angle), 0].forEach((value, k) => {
        expect(at[k]).toBeCloseTo(value, 9);
      });
      expect(out[0]).toBeCloseTo(Math.cos(angle), 9);
      expect(along[0]).toBeCloseTo(-Math.sin(angle), 6);
      expect(along[1]).toBeCloseTo(Math.cos(angle), 6);
    });
  });

  it("stands as high as it is told", async () => {
    const [low, high] = await Promise.all([
      placeOn([round(1.5, { form: "single" }, { level: 0 })]),
      placeOn([round(1.5, { form: "single" }, { level: 0.3 })]),
    ]);
    expect(high.stones[0].at[1] - low.stones[0].at[1]).toBeCloseTo(0.3, 12);
  });
});

describe("a part of the round", () => {
  it("goes from angle to angle, with even gaps where sizes change, the largest in the middle", async () => {
    const place = { form: "row", over: { from: 20, to: 160 }, to: 1.1 };
    const { stones } = await placeOn([round(1.6, place)]);
    expect(degrees(stones[0].surface.angle)).toBeCloseTo(20, 9);
    expect(degrees((stones.at(-1) as PlacedStone).surface.angle)).toBeCloseTo(160, 6);
    const gaps = gapsOf(stones);
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1e-7);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(0.1 - 1e-7);
    const widths = stones.map(({ stone }) => stone.width);
    expect(widths[0]).toBeCloseTo(1.1, 9);
    expect(Math.max(...widths)).toBe(widths[(widths.length - 1) / 2]);
  });

  it("over the cover stays within it", async () => {
    const { stones } = await placeOn([round(1.2, { form: "row", over: "cover" })], tiles("p1", { cover: 150 }));
    const angles = stones.map(({ surface }) => degrees(surface.angle));
    const edge = degrees(0.6 / FLAT_RADIUS);
    expect(Math.min(...angles)).toBeCloseTo(90 - 75 + edge, 6);
    expect(Math.max(...angles)).toBeCloseTo(90 + 75 - edge, 6);
    const [{ code }] = await problemsOf([round(1.2, { form: "row", over: "cover" })]);
    expect(code).toBe("no-cover");
  });
});

describe("a row on a band that tapers", () => {
  const taper = { profile: { ...flatBand.profile, thickness: 2.4, taper: { width: 3, thickness: 1.8 } } };

  it("has even gaps in space", async () => {
    const { stones } = await placeOn([round(1, { form: "row" })], taper);
    const gaps = gapsOf([...stones, stones[0]]);
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1e-6);
    // It is the same on both sides of the top.
    stones.slice(1).forEach((stone, i) => {
      expect(stone.at[0]).toBeCloseTo(-(stones.at(-1 - i) as PlacedStone).at[0], 6);
    });
  });

  it("has its tables level with the metal that leans", async () => {
    const { stones } = await placeOn([round(1, { form: "single", angle: 0 })], taper);
    const [{ at, out }] = stones;
    // Half way down the thickness falls fastest, so the surface looks a little towards the back.
    expect(at[0]).toBeGreaterThan(9);
    expect(out[1]).not.toBeCloseTo(0, 3);
    expect(Math.hypot(...out)).toBeCloseTo(1, 12);
  });
});

describe("a row on the rails", () => {
  it("has stones on both, in the middle of their tops", async () => {
    const profile = { ...flatBand.profile, outside: { form: "channel", rail: 1.2, depth: 0.5 } };
    const { stones, groups, band } = await placeOn([round(0.8, { form: "row", along: "rail" })], { profile });
    expect(groups[0].rows).toHaveLength(2);
    const tops = (band.rails?.faces ?? []).map(([low, high]) => (low + high) / 2);
    expect([...new Set(stones.map(({ at }) => Number(at[2].toFixed(9))))].sort()).toEqual(
      tops.map((w) => Number(w.toFixed(9))).sort(),
    );
    const [{ code }] = await problemsOf([round(0.8, { form: "row", along: "rail" })]);
    expect(code).toBe("no-rails");
  });
});

describe("an anchor in the tile", () => {
  it.each(friezeGroups.map(({ name, operations }) => [name, operations.length] as const))(
    "of %s stands in each of %d images a tile",
    async (name, images) => {
      const { stones } = await placeOn([round(0.6, { form: "tile", at: [0.2, 0.15] })], tiles(name));
      expect(stones).toHaveLength(10 * images);
    },
  );

  it.each([
    ["both mirrors", [0, 0], 1],
    ["both, half a tile on", [0.5, 0], 1],
    ["the mirror along the band", [0.2, 0], 2],
    ["a mirror across it", [0.5, 0.2], 2],
    ["the border of two tiles", [1, 0.2], 2],
    ["none", [0.2, 0.15], 4],
  ])("on %s is one stone there", async (_, at, images) => {
    const { stones } = await placeOn([round(0.6, { form: "tile", at })], tiles("p2mm"));
    expect(stones).toHaveLength(10 * images);
  });

  it("on a two-fold centre of p2mg is one stone, though its length turns round", async () => {
    const oval = { cut: "oval", size: 1, width: 0.7, setting: flush };
    const { stones } = await placeOn([{ ...oval, place: { form: "tile", at: [0.25, 0], turn: 30 } }], tiles("p2mg"));
    expect(stones).toHaveLength(20);
  });

  it("beside a mirror stands in its own image, and is told to go on it or away", async () => {
    const [problem, ...others] = await problemsOf([round(0.8, { form: "tile", at: [0.49, 0] })], tiles("p2mm"));
    expect(others).toEqual([]);
    expect(problem.code).toBe("stones-overlap");
    expect(problem.message).toMatch(
      /^stone 1 of "stones 1" at .*° and stone 2 .* in each other, the deepest of 10 pairs$/,
    );
    expect(problem.hint).toMatch(/beside a mirror/);
  });

  it("of a stone that the mirror it lies on turns is two, one in the other", async () => {
    const oval = { cut: "oval", size: 1.2, width: 0.8, setting: flush };
    const [problem] = await problemsOf([{ ...oval, place: { form: "tile", at: [0.5, 0], turn: 30 } }], tiles("p1m1"));
    expect(problem.code).toBe("stones-overlap");
    const { stones } = await placeOn([{ ...oval, place: { form: "tile", at: [0.5, 0], turn: 90 } }], tiles("p1m1"));
    expect(stones).toHaveLength(10);
  });

  it("stands in the tiles that carry it, in all rows", async () => {
    const pattern = tiles("p1", { cycle: 5, fit: { repeats: 10, rows: 2, hold: "band" } });
    const place = { form: "tile", at: [0.5, 0], tiles: [0, 2] };
    const { stones } = await placeOn([round(0.6, place)], pattern);
    expect(stones).toHaveLength((10 / 5) * 2 * 2);
  });

  it("that would reach beyond the end of the cover is left out, and that is said", async () => {
    const { stones, groups, warnings } = await placeOn(
      [round(0.7, { form: "tile", at: [0, 0.35] })],
      tiles("p2mm", { cover: 150 }),
    );
    expect(stones).toHaveLength(18);
    expect(groups[0].left).toBe(4);
    expect(warnings.filter(({ code }) => code.startsWith("stone")).map(({ value }) => value)).toEqual([4]);
  });

  it("needs a tile, and to lie in it", async () => {
    const anchor = round(0.7, { form: "tile", at: [0, 0.6] });
    expect((await problemsOf([anchor]))[0].code).toBe("no-pattern");
    expect((await problemsOf([anchor], tiles("p1")))[0].code).toBe("stone-outside-tile");
  });
});

describe("a line in the tile", () => {
  it("straight across a flat band has the gap that its length leaves", async () => {
    const { stones, groups } = await placeOn([round(0.7, { form: "line", path: "M 0.5 -0.25 V 0.25" })], tiles("p1"));
    const [{ choices, length }] = groups[0].rows;
    const count = Math.floor(length / 0.8) + 1;
    expect(stones).toHaveLength(10 * count);
    const made = choices.find((choice) => choice.made);
    expect(made?.gap).toBeCloseTo(length / (count - 1) - 0.7, 8);
  });

  it("from tile to tile is one row all round", async () => {
    const { stones, groups } = await placeOn([round(0.9, { form: "line", path: "M 0 0.2 H 1" })], tiles("p1"));
    expect(groups[0].rows).toHaveLength(1);
    expect(stones.map(({ row }) => row?.index)).toEqual(stones.map((_, i) => i));
    const gaps = gapsOf([...stones, stones[0]]);
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1e-6);
  });

  it("takes a shape, and its mirror image", async () => {
    const place = { form: "line", shape: { path: "M 0.2 0 H 0.4 V 0.3 H 0.2 Z" }, count: 4 };
    const { groups } = await placeOn([round(0.5, place)], tiles("p1m1"));
    expect(groups[0].rows).toHaveLength(20);
  });
});

describe("all groups together", () => {
  it("are numbered on, and named", async () => {
    const { stones, groups } = await placeOn([
      round(1, { form: "single", angle: 0 }, { name: "west" }),
      round(1, { form: "single", angle: 180 }),
    ]);
    expect(stones.map(({ number, group }) => [number, group])).toEqual([
      [1, 0],
      [2, 1],
    ]);
    expect(groups.map(({ name }) => name)).toEqual(["west", "stones 2"]);
  });

  it("tell all their problems at once", async () => {
    const problems = await problemsOf([
      round(1.5, { form: "row", count: 90 }),
      round(1, { form: "single" }, { gem: "rubi" }),
      round(1, { form: "single", v: 4 }),
    ]);
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ["stones-row-full", "stones[0].place.count"],
      ["gem-unknown", "stones[1].gem"],
      ["stone-off-seat", "stones[2].place.v"],
    ]);
    expect(problems[1].hint).toMatch(/ruby/);
  });

  it("may be of a gem of one's own", async () => {
    const own = { gems: [{ symbol: "fire-opal", density: 2.0 }] };
    const { gems, stones } = await placeOn([round(1, { form: "single" }, { gem: "fire-opal" })], own);
    expect(stones[0].stone.gem).toBe("fire-opal");
    expect(gems.get("fire-opal")?.density.value).toBe(2);
  });

  it("are at most 5 000, which is said before they are compared", async () => {
    const pattern = { symmetry: "p1", fit: { repeats: 300, rows: 20, hold: "band" } };
    const [problem, ...others] = await problemsOf([round(0.3, { form: "tile", at: [0.5, 0] })], { pattern });
    expect(others).toEqual([]);
    expect([problem.code, problem.value, problem.allowed]).toEqual(["too-many-stones", 6000, "at most 5000"]);
  });
});
