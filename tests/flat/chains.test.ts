import { describe, expect, it } from "vitest";
import { joinLines } from "../../src/flat/chains.js";
import type { GridPath } from "../../src/flat/grid.js";
import { completeLines } from "../../src/relief/art.js";
import { circle, stripOf } from "./strips.js";

const line = (...points: [number, number][]): GridPath => points.map(([x, y]) => ({ x, y }));

describe("joining lines", () => {
  it("joins ends that meet, whichever way the lines run", () => {
    const chains = joinLines([line([0, 0], [10, 0]), line([20, 5], [10, 0]), line([20, 5], [30, 5])], 1);
    expect(chains).toEqual([{ points: line([0, 0], [10, 0], [20, 5], [30, 5]), closed: false }]);
  });

  it("closes a loop without repeating its first point", () => {
    const [loop, ...rest] = joinLines([line([0, 0], [10, 0], [10, 10]), line([0, 0], [0, 10], [10, 10])], 1);
    expect(rest).toEqual([]);
    expect(loop.closed).toBe(true);
    expect(loop.points).toHaveLength(4);
  });

  it("takes a line whose own ends meet as a loop", () => {
    expect(joinLines([line([0, 0], [10, 0], [10, 10], [0, 0])], 1)).toEqual([
      { points: line([0, 0], [10, 0], [10, 10]), closed: true },
    ]);
  });

  it("leaves lines apart where three or four ends meet", () => {
    const star = [line([0, 0], [10, 0]), line([0, 0], [-10, 0]), line([0, 0], [0, 10]), line([0, 0], [0, -10])];
    expect(joinLines(star, 1)).toHaveLength(4);
    expect(joinLines(star.slice(1), 1)).toHaveLength(3);
  });

  it("joins within its reach only", () => {
    const pair = (gap: number) => joinLines([line([0, 0], [10, 0]), line([10 + gap, 0], [20, 0])], 2);
    expect(pair(2)).toHaveLength(1);
    expect(pair(3)).toHaveLength(2);
  });

  it("counts a loop once that is put together twice, from different halves", () => {
    const corners: [number, number][] = [
      [0, 0],
      [50, 0],
      [50, 50],
      [0, 50],
    ];
    const half = (first: number) => line(corners[first], corners[(first + 1) % 4], corners[(first + 2) % 4]);
    expect(joinLines([half(0), half(2), half(1), half(3)], 1)).toHaveLength(1);
  });

  it("counts lines that coincide once, also run backwards", () => {
    expect(joinLines([line([0, 0], [5, 5], [10, 0]), line([10, 0], [5, 5], [0, 0])], 1)).toHaveLength(1);
    // Same ends, another way between them: both stay, as one loop.
    expect(joinLines([line([0, 0], [5, 5], [10, 0]), line([0, 0], [5, -5], [10, 0])], 1)[0].closed).toBe(true);
  });
});

describe("lines completed by symmetry", () => {
  it("makes one circle of a quarter arc, in every tile", () => {
    const strip = stripOf({ symmetry: "p2mm" });
    const chains = completeLines(strip, { path: "M 0.3 0 A 0.3 0.3 0 0 1 0 0.3", unit: "tile" }, "path");
    const middle = chains.filter(({ points }) => points.every(({ x }) => Math.abs(x) < strip.grid.tile / 2));
    expect(middle).toHaveLength(1);
    expect(chains.every(({ closed }) => closed)).toBe(true);
    for (const { x, y } of middle[0].points) expect(Math.hypot(x, y) / strip.grid.tile).toBeCloseTo(0.3, 6);
  });

  it("counts a line on a mirror once, and a loop about a mirror that begins beside it", () => {
    const strip = stripOf({ symmetry: "p2mm" });
    const across = completeLines(strip, { path: "M 0 -0.2 V 0.2", unit: "tile" }, "path");
    expect(across.filter(({ points }) => points[0].x === 0)).toHaveLength(1);
    const started = "M 0.12 0.16 A 0.2 0.2 0 1 1 0.16 0.12 A 0.2 0.2 0 0 1 0.12 0.16 Z";
    const loops = completeLines(strip, { path: started, unit: "tile" }, "path");
    expect(loops.filter(({ points }) => Math.abs(points[0].x) < strip.grid.tile / 2)).toHaveLength(1);
    const plain = completeLines(strip, { path: circle(0, 0, 0.2), unit: "tile" }, "path");
    expect(plain.filter(({ points }) => Math.abs(points[0].x) < strip.grid.tile / 2)).toHaveLength(1);
  });

  it("goes on across the tile's border", () => {
    const strip = stripOf();
    const chains = completeLines(strip, { path: "M 0 0.1 C 0.3 0.4 0.6 -0.4 1 0.1", unit: "tile" }, "path");
    expect(chains).toHaveLength(1);
    expect(chains[0].closed).toBe(false);
  });
});
