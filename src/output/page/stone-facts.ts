/**
 * Stones as a page of one ring tells them, in plain JSON: what is drawn of them, and no more.
 */
import type { Mesh } from "../../mesh/mesh.js";
import type { StoneBodyInView, StoneInView, StonesInView } from "../stones/stones-in-view.js";

/** Stones with numbers in place of arrays of bytes. */
export interface StoneFacts {
  readonly bodies: readonly (Omit<DrawnBody, "mesh"> & {
    readonly positions: number[];
    readonly triangles: number[];
  })[];
  readonly stones: readonly DrawnPlace[];
}

type DrawnBody = Pick<StoneBodyInView, "mesh" | "planes" | "round" | "width" | "gem">;
type DrawnPlace = Pick<StoneInView, "body" | "at" | "out" | "along">;

/** Decimals of millimetres and of unit vectors: a tenth of a micrometre. */
const DIGITS = 4;

export function stoneFacts({ bodies, stones }: StonesInView): StoneFacts {
  return {
    bodies: bodies.map(({ mesh, planes, round, width, gem }) => ({
      positions: short(mesh.positions),
      triangles: [...mesh.triangles],
      planes: short(planes),
      round,
      width,
      gem,
    })),
    stones: stones.map(({ body, at, out, along }) => {
      return { body, at: shortPoint(at), out: shortPoint(out), along: shortPoint(along) };
    }),
  };
}

/** The same stones, to be drawn. */
export function stonesOfFacts({ bodies, stones }: StoneFacts): {
  readonly bodies: readonly DrawnBody[];
  readonly stones: readonly DrawnPlace[];
} {
  const meshOf = (positions: readonly number[], triangles: readonly number[]): Mesh => {
    return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
  };
  return {
    bodies: bodies.map(({ positions, triangles, ...body }) => ({ ...body, mesh: meshOf(positions, triangles) })),
    stones,
  };
}

function short(numbers: Iterable<number>): number[] {
  return Array.from(numbers, (value) => Number(value.toFixed(DIGITS)));
}

function shortPoint([x, y, z]: StoneInView["at"]): StoneInView["at"] {
  const [a, b, c] = short([x, y, z]);
  return [a, b, c];
}
