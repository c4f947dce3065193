// Covers: src/measure/bore/*
import { build } from "annulet";
import { mat4 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { findBore } from "../../../src/measure/bore/bore.js";
import { measureMesh } from "../../../src/measure/measure.js";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { transformMesh } from "../../../src/mesh/transform.js";
import { box, meshOf, sphere, torus } from "../../support/meshes.js";

type Outline = readonly (readonly [number, number])[];

/** A plate from z = 0 to `thickness` between two outlines of as many corners, both counter-clockwise. */
function plate(outer: Outline, hole: Outline, thickness = 2): Mesh {
  const n = outer.length;
  const points = [0, thickness].flatMap((z) => [...outer, ...hole].map(([x, y]) => [x, y, z]));
  const triangles: number[][] = [];
  const quad = (a: number, b: number, c: number, d: number) => triangles.push([a, b, c], [a, c, d]);
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    quad(2 * n + i, 2 * n + j, 3 * n + j, 3 * n + i);
    quad(i, n + i, n + j, j);
    quad(i, j, 2 * n + j, 2 * n + i);
    quad(n + i, 3 * n + i, 3 * n + j, n + j);
  }
  return meshOf(points, triangles);
}

const scaled = (outline: Outline, factor: number): Outline =>
  outline.map(([x, y]) => [factor * x, factor * y] as const);

const polygon = (n: number, radius: number, [x, y] = [0, 0]): Outline =>
  Array.from({ length: n }, (_, i) => {
    const angle = (2 * Math.PI * i) / n + 0.3;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)] as const;
  });

const IDENTITY = () => mat4.identity(new Array(16).fill(0) as unknown as mat4);

describe("findBore", () => {
  it.each([5, 6, 12, 97])("is the circle in a regular hole of %i sides, r cos(π/n) (any handbook of geometry)", (n) => {
    const bore = findBore(plate(polygon(n, 12, [3, -1]), polygon(n, 8, [3, -1])));
    expect(bore?.diameter).toBeCloseTo(16 * Math.cos(Math.PI / n), 9);
    expect(bore?.circumference).toBeCloseTo(Math.PI * 16 * Math.cos(Math.PI / n), 9);
    expect(bore?.axis).toEqual([0, 0, 1]);
    for (const [k, value] of [3, -1, 0].entries()) expect(bore?.through[k]).toBeCloseTo(value, n === 97 ? 4 : 7);
  });

  it("is the incircle of a triangle of sides 3, 4, 5: r = 1 (Heron: area 6 over half the perimeter 6)", () => {
    const hole: Outline = [
      [0, 0],
      [4, 0],
      [0, 3],
    ];
    const outer: Outline = [
      [-2, -2],
      [9, -2],
      [-2, 7],
    ];
    const bore = findBore(plate(outer, hole));
    expect(bore?.diameter).toBeCloseTo(2, 9);
    expect(bore?.through[0]).toBeCloseTo(1, 9);
    expect(bore?.through[1]).toBeCloseTo(1, 9);
  });

  it("is held by corners that stand into the hole", () => {
    // A square of side 10 whose sides are pushed in to points on a circle of radius 3.
    const hole: Outline = [
      [5, 5],
      [0, 3],
      [-5, 5],
      [-3, 0],
      [-5, -5],
      [0, -3],
      [5, -5],
      [3, 0],
    ];
    expect(findBore(plate(scaled(hole, 2), hole))?.diameter).toBeCloseTo(6, 9);
  });

  it("is as wide as a slot is", () => {
    const hole: Outline = [
      [6, 2],
      [-6, 2],
      [-6, -2],
      [6, -2],
    ];
    expect(findBore(plate(scaled(hole, 2), hole))?.diameter).toBeCloseTo(4, 9);
  });

  it.each([
    ["x", [0, Math.PI / 2], [1, 0, 0]],
    ["y", [Math.PI / 2, 0], [0, 1, 0]],
  ] as const)("is found along %s", (_, [aboutX, aboutY], axis) => {
    const turned = transformMesh(
      torus(9, 1, 64, 16),
      mat4.rotateY(IDENTITY(), mat4.rotateX(IDENTITY(), IDENTITY(), aboutX), aboutY),
    );
    const bore = findBore(turned);
    expect(bore?.axis).toEqual(axis);
    expect(bore?.diameter).toBeCloseTo(16 * Math.cos(Math.PI / 64), 9);
  });

  it("is found askew by the moments of inertia", () => {
    const map = mat4.rotateX(IDENTITY(), mat4.translate(IDENTITY(), IDENTITY(), [4, 5, 6]), 0.5);
    const turned = transformMesh(torus(9, 1, 64, 16), mat4.rotateY(IDENTITY(), map, -0.4));
    const straight = findBore(turned)?.diameter ?? 0;
    const bore = findBore(turned, measureMesh(turned));
    expect(straight).toBeLessThan(14);
    expect(bore?.diameter).toBeCloseTo(16 * Math.cos(Math.PI / 64), 6);
  });

  it("is not there in what has no hole", () => {
    expect(findBore(box([10, 10, 10]))).toBeUndefined();
    expect(findBore(sphere(5, 12, 24))).toBeUndefined();
    expect(findBore(meshOf([], []))).toBeUndefined();
  });

  it("is the size that a ring was made for, as near as its facets are, comfort bore and beads or not", async () => {
    const tolerance = 0.005;
    const { mesh, report } = await build({
      annulet: 1,
      size: { system: "iso", value: 55 },
      tolerance,
      profile: { width: 6, thickness: 1.8, bore: { form: "comfort", rise: 0.3 }, outside: { form: "flat" } },
      beads: [{ along: { v: 0 }, diameter: 0.6 }],
    });
    const bore = findBore(mesh, measureMesh(mesh));
    expect(report.size.circumference).toBe(55);
    expect(Math.abs((bore?.diameter ?? 0) - 55 / Math.PI)).toBeLessThan(2 * tolerance);
  });
});
