/**
 * Where straight lines go through a mesh: each line stands in a half plane of the finger axis, and only triangles that reach
 * over its angle are tried.
 */
import type { Mesh } from "../../mesh/mesh.js";
import type { Intervals } from "./intervals.js";

/** A straight line from the finger outward, in the half plane of its angle. */
export interface HalfPlaneLine {
  /** Radians, 0 to a whole turn. */
  readonly angle: number;
  /** A point of it, (w, r), mm, and its direction, a unit vector. */
  readonly point: readonly [w: number, r: number];
  readonly way: readonly [w: number, r: number];
  /** Where it starts and ends, mm from the point along the direction. */
  readonly span: readonly [from: number, to: number];
}

/**
 * The spans of each line that lie in the solid; undefined of a line that meets an edge or a corner so exactly that ways
 * in and out do not take turns.
 *
 * @param wholes where several lines are one, looked at in parts of the mesh: how many there are, and which one each is. Default:
 *   each line is one
 */
export function insideAlong(
  mesh: Mesh,
  lines: readonly HalfPlaneLine[],
  wholes: { readonly count: number; readonly of: readonly number[] } | undefined = undefined,
): (Intervals | undefined)[] {
  const table = tableOf(lines);
  const hits = Array.from({ length: wholes?.count ?? lines.length }, (): number[] => []);
  const whole = wholes === undefined ? table.order : table.order.map((line) => wholes.of[line]);
  collect(mesh, table, (line, t, isIn) => hits[whole[line]].push(t, isIn ? 1 : -1));
  return hits.map(intoIntervals);
}

/** A line meets the mesh: where along it, and whether it goes in there or comes out. */
type Hit = (line: number, t: number, isIn: boolean) => void;

/** The lines in the order of their angles. */
interface Table {
  readonly order: readonly number[];
  /** Of each line its point, direction and ends. */
  readonly places: Float64Array;
  readonly angles: Float64Array;
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
}

const PLACE = 8;

function tableOf(lines: readonly HalfPlaneLine[]): Table {
  const own = lines.map(({ angle }) => squareAngle(Math.cos(angle), Math.sin(angle)));
  const order = own.map((_, i) => i).sort((a, b) => own[a] - own[b]);
  const places = new Float64Array(PLACE * order.length);
  const [lowest, highest] = [new Float64Array(order.length), new Float64Array(order.length)];
  order.forEach((line, i) => {
    const { angle, point, way, span } = lines[line];
    const cos = Math.cos(angle);
    const sin = Math.sin(angle);
    const at = PLACE * i;
    places[at] = point[1] * cos;
    places[at + 1] = point[1] * sin;
    places[at + 2] = point[0];
    places[at + 3] = way[1] * cos;
    places[at + 4] = way[1] * sin;
    places[at + 5] = way[0];
    places[at + 6] = span[0];
    places[at + 7] = span[1];
    lowest[i] = Math.min(point[0] + span[0] * way[0], point[0] + span[1] * way[0]);
    highest[i] = Math.max(point[0] + span[0] * way[0], point[0] + span[1] * way[0]);
  });
  return { order, places, lowest, highest, angles: Float64Array.from(order, (line) => own[line]) };
}

/** Angles are told by the share of a square that they lie on: as good for sorting, and without a function of angles. */
const ROUND = 4;

/** 0 to 4, growing with the angle of (x, y). */
function squareAngle(x: number, y: number): number {
  const share = y / (Math.abs(x) + Math.abs(y));
  if (x < 0) return 2 - share;
  return y < 0 ? 4 + share : share;
}

/** Boxes of angles in which the lines before each are known. */
const BOXES = 4096;

/** For each vertex how many lines stand at smaller angles. */
function linesBefore(positions: Float64Array, angles: Float64Array): Uint16Array {
  const first = new Uint16Array(BOXES + 1);
  for (let box = 0, line = 0; box <= BOXES; box++) {
    while (line < angles.length && angles[line] * (BOXES / ROUND) < box) line++;
    first[box] = line;
  }
  const before = new Uint16Array(positions.length / 3);
  for (let vertex = 0; vertex < before.length; vertex++) {
    const angle = squareAngle(positions[3 * vertex], positions[3 * vertex + 1]);
    let line = first[Math.min(BOXES - 1, Math.floor(angle * (BOXES / ROUND)))];
    while (line < angles.length && angles[line] < angle) line++;
    before[vertex] = line;
  }
  return before;
}

function collect({ positions, triangles }: Mesh, table: Table, hit: Hit): void {
  const { lowest, highest, places, angles } = table;
  const meet = meetIn(positions, places, hit);
  const ranks = linesBefore(positions, angles);
  const count = angles.length;
  const tryLines = (i: number, from: number, to: number): void => {
    const a = triangles[i];
    const b = triangles[i + 1];
    const c = triangles[i + 2];
    const za = positions[3 * a + 2];
    const zb = positions[3 * b + 2];
    const zc = positions[3 * c + 2];
    for (let line = from; line < to; line++) {
      if (za < lowest[line] && zb < lowest[line] && zc < lowest[line]) continue;
      if (za > highest[line] && zb > highest[line] && zc > highest[line]) continue;
      meet(a, b, c, line);
    }
  };
  for (let i = 0; i < triangles.length; i += 3) {
    const a = ranks[triangles[i]];
    const b = ranks[triangles[i + 1]];
    const c = ranks[triangles[i + 2]];
    if (a === b && b === c) continue;
    const low = Math.min(a, b, c);
    const high = Math.max(a, b, c);
    if (crossesStart(positions, triangles, i)) {
      // Of what lies across the angle where counting starts, few lines stand before the one side and most before the other.
      const before = (vertex: number) => (positions[3 * triangles[vertex] + 1] < 0 ? 0 : ranks[triangles[vertex]]);
      const after = (vertex: number) => (positions[3 * triangles[vertex] + 1] < 0 ? ranks[triangles[vertex]] : count);
      tryLines(i, Math.min(after(i), after(i + 1), after(i + 2)), count);
      tryLines(i, 0, Math.max(before(i), before(i + 1), before(i + 2)));
    } else tryLines(i, low, high);
  }
}

/** Whether a triangle lies across angle 0. None is so wide that it would reach beyond a quarter on either side. */
function crossesStart(p: Float64Array, triangles: Uint32Array, i: number): boolean {
  const a = 3 * triangles[i];
  const b = 3 * triangles[i + 1];
  const c = 3 * triangles[i + 2];
  if (p[a + 1] < 0 === p[b + 1] < 0 && p[b + 1] < 0 === p[c + 1] < 0) return false;
  return p[a] > 0 && p[b] > 0 && p[c] > 0;
}

/** Tries one triangle: Möller and Trumbore, Fast, Minimum Storage Ray/Triangle Intersection, 1997. */
function meetIn(
  p: Float64Array,
  places: Float64Array,
  hit: Hit,
): (a: number, b: number, c: number, line: number) => void {
  return (a, b, c, line) => {
    const l = PLACE * line;
    const dx = places[l + 3];
    const dy = places[l + 4];
    const dz = places[l + 5];
    const ax = p[3 * a];
    const ay = p[3 * a + 1];
    const az = p[3 * a + 2];
    const e1x = p[3 * b] - ax;
    const e1y = p[3 * b + 1] - ay;
    const e1z = p[3 * b + 2] - az;
    const e2x = p[3 * c] - ax;
    const e2y = p[3 * c + 1] - ay;
    const e2z = p[3 * c + 2] - az;
    const hx = dy * e2z - dz * e2y;
    const hy = dz * e2x - dx * e2z;
    const hz = dx * e2y - dy * e2x;
    const det = e1x * hx + e1y * hy + e1z * hz;
    if (det === 0) return;
    const sx = places[l] - ax;
    const sy = places[l + 1] - ay;
    const sz = places[l + 2] - az;
    const u = (sx * hx + sy * hy + sz * hz) / det;
    if (u < 0 || u > 1) return;
    const qx = sy * e1z - sz * e1y;
    const qy = sz * e1x - sx * e1z;
    const qz = sx * e1y - sy * e1x;
    const v = (dx * qx + dy * qy + dz * qz) / det;
    if (v < 0 || u + v > 1) return;
    const t = (e2x * qx + e2y * qy + e2z * qz) / det;
    // A line that comes from outside meets the front of a triangle: then it goes in.
    if (t >= places[l + 6] && t <= places[l + 7]) hit(line, t, det > 0);
  };
}

/** Pairs of place and direction, 1 into the solid and −1 out of it, as intervals. */
function intoIntervals(hits: number[]): Intervals | undefined {
  if (hits.length % 4 !== 0) return undefined;
  // Few to a line: each is put where it belongs among those before it.
  for (let i = 2; i < hits.length; i += 2) {
    const place = hits[i];
    const way = hits[i + 1];
    let at = i;
    for (; at > 0 && hits[at - 2] > place; at -= 2) {
      hits[at] = hits[at - 2];
      hits[at + 1] = hits[at - 1];
    }
    hits[at] = place;
    hits[at + 1] = way;
  }
  const ends: number[] = [];
  for (let i = 0; i < hits.length; i += 2) {
    if (hits[i + 1] !== (i % 4 === 0 ? 1 : -1)) return undefined;
    ends.push(hits[i]);
  }
  return ends;
}
