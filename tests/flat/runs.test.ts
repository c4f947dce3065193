import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import type { Point2 } from "../../src/base/math/point.js";
import { clipLines } from "../../src/flat/clip-lines.js";
import { operatePath, toGrid } from "../../src/flat/grid.js";
import { type RunLine, runLines } from "../../src/flat/runs.js";
import { completeLines } from "../../src/relief/art.js";
import { circle, type StripInput, stripOf } from "./strips.js";

/** Tiles are 6 mm wide. */
const T = 6;

function runs(path: string, input: StripInput = {}): RunLine[] {
  const strip = stripOf(input);
  const chains = completeLines(strip, { path, unit: "tile" }, "path");
  return runLines(strip, strip.periodic ? chains : clipLines(chains, 0, strip.repeats * strip.grid.tile));
}

const kinds = (lines: readonly RunLine[]) => lines.map(({ kind, even }) => (even ? `${kind} even` : kind)).sort();

function lengthOf({ points, kind }: RunLine): number {
  const path = kind === "loop" ? [...points, points[0]] : points;
  return path.reduce((sum, [x, y], i) => (i === 0 ? 0 : sum + Math.hypot(x - path[i - 1][0], y - path[i - 1][1])), 0);
}

/** A blob without any symmetry of its own about a middle. */
const odd = (x: number, y: number) => `M ${x} ${y} l 0.1 0.02 l 0.02 0.11 l -0.09 -0.04 Z`;

describe("loops", () => {
  it.each([
    ["p1", 1],
    ["p11g", 2],
    ["p1m1", 2],
    ["p2", 2],
    ["p11m", 2],
    ["p2mg", 4],
    ["p2mm", 4],
  ] as const)(
    "of a blob in a general place come once for each operation of %s, and begin at images of one start",
    (symmetry, count) => {
      const strip = stripOf({ symmetry });
      const lines = runs(odd(0.1, 0.1), { symmetry });
      expect(kinds(lines)).toEqual(new Array(count).fill("loop"));
      const [first] = lines;
      const start = toGrid(strip.grid, [first.points[0]]);
      const group = friezeGroups.find(({ name }) => name === symmetry);
      const found = lines.map(({ points: [[x, y]] }) => `${mod(x)} ${y.toFixed(3)}`).sort();
      const wanted = group?.operations.map((operation) => {
        const [{ x, y }] = operatePath(strip.grid, start, operation);
        return `${mod(x / strip.grid.scale)} ${(y / strip.grid.scale).toFixed(3)}`;
      });
      expect(found).toEqual(wanted?.sort());
    },
  );

  it.each([
    // On one mirror: any number, from where the mirror crosses it.
    ["p1m1", circle(0, 0.1, 0.2), ["loop"]],
    ["p11m", circle(0.3, 0, 0.2), ["loop"]],
    // On a half turn, or on two mirrors: even.
    ["p2", circle(0, 0, 0.2), ["loop even"]],
    ["p2mg", circle(0.25, 0, 0.2), ["loop even", "loop even"]],
    ["p2mm", circle(0, 0, 0.2), ["loop even"]],
    ["p2mm", circle(0.5, 0, 0.2), ["loop even"]],
    ["p2mm", circle(0, 0.25, 0.1), ["loop", "loop"]],
    ["p1", circle(0, 0, 0.2), ["loop"]],
    ["p11g", circle(0.25, 0, 0.2), ["loop", "loop"]],
  ] as const)("under %s: %s", (symmetry, path, wanted) => {
    expect(kinds(runs(path, { symmetry }))).toEqual(wanted);
  });

  it("begin on their own mirror", () => {
    for (const { points } of runs(circle(0, 0.2, 0.15), { symmetry: "p1m1" })) expect(mod(points[0][0])).toBe("0.000");
    for (const { points } of runs(circle(0.3, 0, 0.15), { symmetry: "p11m" })) expect(points[0][1]).toBeCloseTo(0, 3);
  });

  it("that cross their own mirror image are two, though both lie in one box", () => {
    // A right triangle in a square box about the mirror at x = 0: its image fills the same box.
    const lines = runs("M -0.2 -0.2 H 0.2 V 0.2 Z", { symmetry: "p1m1" });
    expect(kinds(lines)).toEqual(["loop", "loop"]);
    const corners = lines.map(({ points }) =>
      points
        .map(([x, y]) => `${mod(x)} ${y.toFixed(3)}`)
        .sort()
        .join(", "),
    );
    expect(corners[0]).not.toBe(corners[1]);
  });

  it("are all there in a pattern that stops, those of one kind from images of one start", () => {
    const lines = runs(circle(0.5, 0, 0.2), { symmetry: "p2mm", repeats: 4, cover: 120 });
    expect(kinds(lines)).toEqual(new Array(4).fill("loop even"));
    const starts = new Set(lines.map(({ points: [[x, y]] }) => `${mod(x)} ${y.toFixed(4)}`));
    expect(starts.size).toBe(1);
  });

  it("come once for each row", () => {
    expect(runs(circle(0.5, 0, 0.2), { rows: 3 })).toHaveLength(3);
  });
});

describe("open lines", () => {
  it.each([
    ["p1", 1],
    ["p1m1", 2],
    ["p2mm", 4],
    ["p2mg", 4],
  ] as const)("keep both ends under %s", (symmetry, count) => {
    const lines = runs("M 0.1 0.1 L 0.3 0.25", { symmetry });
    expect(kinds(lines)).toEqual(new Array(count).fill("open"));
    for (const line of lines) expect(lengthOf(line)).toBeCloseTo(T * 0.25, 5);
  });

  it("are joined over a mirror", () => {
    const [line, ...rest] = runs("M 0 0.1 L 0.3 0.25", { symmetry: "p1m1" });
    expect(rest).toEqual([]);
    expect(lengthOf(line)).toBeCloseTo(2 * T * Math.hypot(0.3, 0.15), 5);
  });

  it("are what a strand becomes where the pattern stops", () => {
    const lines = runs("M 0 0.2 H 1", { repeats: 4, cover: 120 });
    expect(kinds(lines)).toEqual(["open"]);
    expect(lengthOf(lines[0])).toBeCloseTo(4 * T, 6);
  });
});

describe("strands", () => {
  const wave = "M 0 0 C 0.15 0.4 0.35 0.4 0.5 0 C 0.65 -0.4 0.85 -0.4 1 0";

  it.each([
    ["p1", wave, ["strand"]],
    ["p2", wave, ["strand"]],
    ["p11m", wave, ["open", "open"]],
    ["p11g", wave, ["strand even"]],
    ["p11m", "M 0 0.3 H 1", ["strand", "strand"]],
    ["p11g", "M 0 0 H 1", ["strand even"]],
    ["p11g", "M 0 0.3 H 1", ["strand", "strand"]],
    ["p2mm", "M 0 0 H 0.5", ["strand"]],
    // A quarter from a mirror to a half turn.
    ["p2mg", "M 0 0.3 C 0.1 0.3 0.2 0.1 0.25 0", ["strand even"]],
  ] as const)("under %s: %s", (symmetry, path, wanted) => {
    // Mirrored waves cross with four ends meeting, which stay apart.
    expect(kinds(runs(path, { symmetry }))).toEqual(wanted);
  });

  it("go on exactly one tile from their start", () => {
    const [strand] = runs(wave);
    const [start, end] = [strand.points[0], strand.points[strand.points.length - 1]];
    expect(start[0]).toBe(0);
    expect(end[0]).toBeCloseTo(T, 9);
    expect(end[1]).toBeCloseTo(start[1], 3);
  });

  it("that cross the tile's border several times are one, as long as drawn", () => {
    // Runs over the border, back and over again within each tile.
    const meander = "M 0 0 H 1.2 V 0.2 H 0.9 V 0.3 H 1.4 V -0.2 H 1 V 0";
    const lines = runs(meander);
    expect(kinds(lines)).toEqual(["strand"]);
    expect(lengthOf(lines[0])).toBeCloseTo(T * (1.2 + 0.2 + 0.3 + 0.1 + 0.5 + 0.5 + 0.4 + 0.2), 6);
  });

  it("that only return after two tiles are open pieces, one a tile for each strand", () => {
    const crossed = "M 0 0.2 C 0.4 0.2 0.6 -0.2 1 -0.2 M 0 -0.2 C 0.4 -0.2 0.6 0.2 1 0.2";
    const lines = runs(crossed);
    expect(kinds(lines)).toEqual(["open", "open"]);
    const ends = (at: (points: readonly Point2[]) => Point2) =>
      lines.map(({ points }) => at(points)[1].toFixed(3)).sort();
    expect(ends((points) => points[0])).toEqual(["-1.200", "1.200"]);
    expect(ends((points) => points[points.length - 1])).toEqual(["-1.200", "1.200"]);
  });

  it("run both ways on a border that goes all the way round", () => {
    const strip = stripOf();
    const ring = toGrid(strip.grid, [
      [-20, -1],
      [30, -1],
      [30, 1],
      [-20, 1],
    ]);
    expect(kinds(runLines(strip, [{ points: ring, closed: true }]))).toEqual(["strand", "strand"]);
  });
});

/** x within its tile, mm, as text. */
function mod(x: number): string {
  const rest = x - Math.floor(x / T + 1e-5) * T;
  return Math.abs(rest).toFixed(3);
}
