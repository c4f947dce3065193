/**
 * Lifts a flat body's upper surface: edges are halved until the surface follows the lift, then its points are moved up.
 *
 * An edge is judged by itself and halved once, whichever triangle comes first, so no T-junction appears.
 */
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Rise } from "../relief/weave/rise-along.js";

/** Edges shorter than this are not halved, mm: a jump of the lift is left as steep as that. */
const SHORTEST = 0.03;

/** Places along an edge at which the lift is compared with the straight line between its ends. */
const PLACES = [0.25, 0.5, 0.75];

/** Vertex numbers stay below this, so that an edge packs into one exact double. */
const EDGE_RADIX = 2 ** 26;

/** Triangles that are looked at between two places where the work may be interrupted (chosen): the rise is asked at each side. */
const AT_ONCE = 512;

/** The lifted body. What lies below the seat stays. */
export function applyRise(flat: Mesh, rise: Rise): Mesh {
  return finish(applyingRise(flat, rise));
}

/** The same in pieces. */
export function* applyingRise(flat: Mesh, rise: Rise): Pausing<Mesh> {
  const positions = Array.from(flat.positions);
  const lifts = Array.from({ length: positions.length / 3 }, (_, vertex) => liftAt(rise, positions, vertex));
  let triangles: readonly number[] = Array.from(flat.triangles);
  const middles = new Map<number, number | undefined>();
  const middleOf = (a: number, b: number): number | undefined => {
    const key = a < b ? a * EDGE_RADIX + b : b * EDGE_RADIX + a;
    if (middles.has(key)) return middles.get(key);
    let middle: number | undefined;
    if (isCoarse(rise, positions, lifts, a, b)) {
      middle = lifts.length;
      for (let k = 0; k < 3; k++) positions.push((positions[3 * a + k] + positions[3 * b + k]) / 2);
      lifts.push(liftAt(rise, positions, middle));
    }
    middles.set(key, middle);
    return middle;
  };
  for (let changed = true; changed; ) {
    const next: number[] = [];
    for (let i = 0; i < triangles.length; i += 3) {
      if (i % (3 * AT_ONCE) === 0) yield BREATH;
      const [a, b, c] = [triangles[i], triangles[i + 1], triangles[i + 2]];
      const [ab, bc, ca] = [middleOf(a, b), middleOf(b, c), middleOf(c, a)];
      if (ab === undefined && bc === undefined && ca === undefined) next.push(a, b, c);
      else next.push(...halve([a, b, c], [ab, bc, ca]));
    }
    changed = next.length > triangles.length;
    triangles = next;
  }
  lifts.forEach((lift, vertex) => {
    positions[3 * vertex + 2] += lift;
  });
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** mm that a vertex goes up: all of the rise from its foot on, ever less down to the seat, nothing below. */
function liftAt({ at, from }: Rise, positions: readonly number[], vertex: number): number {
  const [u, v, h] = [positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2]];
  if (h < 0) return 0;
  return at(u, v) * (h >= from ? 1 : h / from);
}

function isCoarse(rise: Rise, positions: readonly number[], lifts: readonly number[], a: number, b: number): boolean {
  const au = positions[3 * a];
  const av = positions[3 * a + 1];
  const ah = positions[3 * a + 2];
  const bh = positions[3 * b + 2];
  if (ah < 0 || bh < 0) return false;
  const du = positions[3 * b] - au;
  const dv = positions[3 * b + 1] - av;
  const length = Math.hypot(du, dv);
  if (length < 2 * SHORTEST) return false;
  const between = (t: number) => rise.at(au + t * du, av + t * dv);
  if (length > rise.step) {
    return length > 4 * rise.step || lifts[a] > 0 || lifts[b] > 0 || PLACES.some((t) => between(t) > 0);
  }
  // Walls stand upright: only edges of the surface above them are compared.
  if (ah < rise.from || bh < rise.from) return false;
  return PLACES.some((t) => Math.abs(lifts[a] + t * (lifts[b] - lifts[a]) - between(t)) > rise.tolerance);
}

/** The triangle with those of its edges halved that have a middle; edges a–b, b–c, c–a. */
function halve(
  [a, b, c]: readonly [number, number, number],
  [ab, bc, ca]: readonly [number | undefined, number | undefined, number | undefined],
): number[] {
  if (ab !== undefined && bc !== undefined && ca !== undefined) return [a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca];
  if (ab !== undefined && bc !== undefined) return [ab, b, bc, a, ab, bc, a, bc, c];
  if (bc !== undefined && ca !== undefined) return [bc, c, ca, b, bc, ca, b, ca, a];
  if (ca !== undefined && ab !== undefined) return [ca, a, ab, c, ca, ab, c, ab, b];
  if (ab !== undefined) return [a, ab, c, ab, b, c];
  if (bc !== undefined) return [b, bc, a, bc, c, a];
  if (ca !== undefined) return [c, ca, b, ca, a, b];
  return [a, b, c];
}
