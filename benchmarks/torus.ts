/**
 * A torus of any number of triangles, to time writers on.
 */
import type { Mesh } from "../src/mesh/mesh.js";

/** Radius of the circle the tube follows, and of the tube, mm: about a ring's. */
const RADII = { ring: 10, tube: 1.5 };

/** A million triangles: 2 · 1000 · 500. */
export const TORUS = { around: 1000, across: 500 };

/** 2 · around · across triangles. Points are rounded to float32, so that every writer writes the same numbers. */
export function torus(around: number, across: number): Mesh {
  const positions = new Float64Array(3 * around * across);
  const triangles = new Uint32Array(6 * around * across);
  for (let i = 0; i < around; i++) {
    for (let j = 0; j < across; j++) {
      const [u, v] = [(2 * Math.PI * i) / around, (2 * Math.PI * j) / across];
      const reach = RADII.ring + RADII.tube * Math.cos(v);
      const here = i * across + j;
      positions.set([reach * Math.cos(u), reach * Math.sin(u), RADII.tube * Math.sin(v)].map(Math.fround), 3 * here);
      const [right, up] = [((i + 1) % around) * across + j, i * across + ((j + 1) % across)];
      const corner = ((i + 1) % around) * across + ((j + 1) % across);
      triangles.set([here, right, corner, here, corner, up], 6 * here);
    }
  }
  return { positions, triangles };
}
