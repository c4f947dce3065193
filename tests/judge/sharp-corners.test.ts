import { describe, expect, it } from "vitest";
import { findSharpCorners } from "../../src/judge/sharp-corners.js";
import { box, meshOf, revolve, torus } from "../support/meshes.js";

const degrees = (angle: number) => (angle * Math.PI) / 180;

/** An L 5 long: one inner corner whose sides turn by 90°. */
function bracket() {
  const section = [
    [0, 0],
    [3, 0],
    [3, 1],
    [1, 1],
    [1, 3],
    [0, 3],
  ];
  const points = [0, 5].flatMap((z) => section.map(([x, y]) => [x, y, z]));
  const sides = section.flatMap((_, i) => {
    const j = (i + 1) % 6;
    return [
      [i, j, j + 6],
      [i, j + 6, i + 6],
    ];
  });
  const cap = [
    [0, 1, 2],
    [0, 2, 3],
    [0, 3, 4],
    [0, 4, 5],
  ];
  return meshOf(points, [...sides, ...cap.map(([a, b, c]) => [a, c, b]), ...cap.map((t) => t.map((v) => v + 6))]);
}

describe("sharp inner corners", () => {
  it("are none on a box, whose corners are all outer ones", () => {
    expect(findSharpCorners(box(), degrees(45))).toEqual({ length: 0, sharpest: undefined });
  });

  it("are the one edge of an L, with its place", () => {
    const { length, sharpest } = findSharpCorners(bracket(), degrees(60));
    expect(length).toBeCloseTo(5, 12);
    expect(sharpest).toEqual([1, 1, 2.5]);
    expect(findSharpCorners(bracket(), degrees(91)).length).toBe(0);
  });

  it("run twice round a channel: both floor corners, each a circle's chords", () => {
    const outline = [
      [-3, 8],
      [-3, 10],
      [-2, 10],
      [-2, 9],
      [2, 9],
      [2, 10],
      [3, 10],
      [3, 8],
    ] as const;
    const around = 360;
    const { length } = findSharpCorners(revolve(outline, around), degrees(60));
    expect(length).toBeCloseTo(2 * around * 2 * 9 * Math.sin(Math.PI / around), 6);
  });

  it("are none where the surface bends smoothly", () => {
    expect(findSharpCorners(torus(10, 2, 90, 60), degrees(20)).length).toBe(0);
  });
});
