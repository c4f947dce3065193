/**
 * A torus as turned images of one unit, which is open at both ends.
 */
import type { TurnPart } from "../../src/mesh/turn-round.js";

/** Rows of a unit along the round, and points of each. */
export const COLUMNS = 4;
export const AROUND = 6;

/** A sector of a torus, open at both ends, as one unit of so many. */
export function sector(units: number): TurnPart {
  const positions: number[] = [];
  for (let i = 0; i <= COLUMNS; i++) {
    const u = (2 * Math.PI * i) / (COLUMNS * units);
    for (let j = 0; j < AROUND; j++) {
      const v = (2 * Math.PI * j) / AROUND;
      positions.push((9 + Math.cos(v)) * Math.cos(u), (9 + Math.cos(v)) * Math.sin(u), Math.sin(v));
    }
  }
  const triangles: number[] = [];
  for (let i = 0; i < COLUMNS; i++) {
    for (let j = 0; j < AROUND; j++) {
      const [a, b] = [i * AROUND + j, i * AROUND + ((j + 1) % AROUND)];
      triangles.push(a, a + AROUND, b, b, a + AROUND, b + AROUND);
    }
  }
  const follows = new Int32Array(positions.length / 3).fill(-1);
  for (let j = 0; j < AROUND; j++) follows[COLUMNS * AROUND + j] = j;
  return { mesh: { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) }, follows };
}
