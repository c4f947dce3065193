import { describe, expect, it } from "vitest";
import type { GridPath } from "../../src/flat/grid.js";
import { joinOverlaps } from "../../src/flat/overlaps.js";
import { completeLines } from "../../src/relief/art.js";
import { type StripInput, stripOf } from "./strips.js";

const line = (...points: [number, number][]): GridPath => points.map(([x, y]) => ({ x, y }));
const wave = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, i) => ({ x: 100 * (from + i), y: 50 * ((from + i) % 2) }));

describe("lines that run over each other", () => {
  it("are one, whichever way they run and wherever they begin", () => {
    const whole = wave(0, 12);
    for (const [a, b] of [
      [wave(0, 8), wave(4, 12)],
      [wave(4, 12), wave(0, 8).reverse()],
      [wave(0, 8).reverse(), wave(4, 12).reverse()],
    ]) {
      const [one, ...rest] = joinOverlaps([a, b], 1);
      expect(rest).toEqual([]);
      expect([whole, whole.toReversed()]).toContainEqual(one);
    }
  });

  it("are one where the one lies within the other, and where a third closes the gap between two", () => {
    expect(joinOverlaps([wave(2, 5), wave(0, 9)], 1)).toEqual([wave(0, 9)]);
    const [one, ...rest] = joinOverlaps([wave(0, 4), wave(8, 12), wave(3, 9)], 1);
    expect(rest).toEqual([]);
    expect([wave(0, 12), wave(0, 12).reverse()]).toContainEqual(one);
  });

  it.each<[string, GridPath[]]>([
    ["ends that meet", [wave(0, 4), wave(4, 8)]],
    ["a stem that forks", [line([0, 0], [500, 0], [900, 300]), line([0, 0], [500, 0], [900, -300])]],
    ["a line that ends on another", [line([0, 0], [900, 0]), line([400, 500], [400, 0])]],
    ["lines that cross", [line([0, 0], [900, 0]), line([400, 500], [400, -500])]],
    [
      "lines that meet twice, but not between",
      [line([0, 0], [900, 0]), line([400, 0], [500, 80], [900, 0], [950, 90])],
    ],
    ["lines side by side", [line([0, 0], [900, 0]), line([400, 5], [1400, 5])]],
  ])("are two where they are %s", (_, lines) => {
    expect(joinOverlaps(lines, 1)).toEqual(lines);
  });
});

describe("a braid whose strands are their own images", () => {
  const strands = (symmetry: StripInput["symmetry"]) =>
    completeLines(
      stripOf({ symmetry }),
      { shape: { motif: { name: "braid", strands: 3, swing: 0.68 } }, unit: "tile" },
      "shape",
    );

  it("has three strands under a glide too, which begins them half a tile on", () => {
    expect([strands("p1").length, strands("p11g").length]).toEqual([3, 3]);
  });

  it("has six where the images are other lines", () => {
    expect(strands("p2")).toHaveLength(6);
  });
});
