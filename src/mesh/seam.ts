/**
 * Joins a unit's end to the start of the next one. Both rims are the same line, cut out of different triangles, so their
 * points differ: they are walked side by side in order; points that meet become one, all others are put into both rims.
 */
import { AnnuletError } from "../base/errors.js";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import { borderLoops } from "./border.js";
import type { Clipped } from "./clip.js";
import { fillTriangle } from "./fill-triangle.js";
import type { Mesh } from "./mesh.js";
import { END, START, type TurnPart } from "./turn-round.js";

/** Points of the two rims this near are one, mm: the kernel's single precision and its cleaning move them by less. */
const MEET = 1e-3;

/** A point that is put into the other rim lies at most this far from it, mm: farther, and the rims are not the same line. */
const ASIDE = 2e-3;

/** A point of a rim: its vertex, its place in space with the end turned back to the start, and the edge that it begins. */
interface RimPoint {
  readonly vertex: number;
  readonly at: readonly [number, number, number];
  readonly edge: number;
}

type Rim = readonly RimPoint[];

/**
 * @param turn from the start to the end, radians
 * @throws AnnuletError `border-tangled`, `seam-mismatch` where the rims are no images of each other
 */
export function joinSeam(part: Clipped, turn: number): TurnPart {
  return finish(joiningSeam(part, turn));
}

/** The same in pieces. */
export function* joiningSeam({ mesh, marks }: Clipped, turn: number): Pausing<TurnPart> {
  const onStart = (vertex: number) => (marks[vertex] & START) !== 0;
  const onEnd = (vertex: number) => (marks[vertex] & END) !== 0;
  const starts = rimsOf(mesh, onStart, 0);
  yield BREATH;
  // The end's loops run the other way round: turned back, they follow the start's.
  const ends = rimsOf(mesh, onEnd, turn).map(reversedRim);
  if (starts.length !== ends.length) throw mismatch(starts.length, ends.length);
  const seam = new Seam(mesh, turn);
  const free = new Set(ends);
  for (const rim of starts) {
    yield BREATH;
    let [best, nearest] = [undefined as Rim | undefined, Number.POSITIVE_INFINITY];
    for (const other of free) {
      const gap = apart(middleOf(rim), middleOf(other));
      if (gap < nearest) [best, nearest] = [other, gap];
    }
    free.delete(best as Rim);
    seam.join(rim, best as Rim);
  }
  yield BREATH;
  return seam.result();
}

function rimsOf(mesh: Mesh, on: (vertex: number) => boolean, turn: number): Rim[] {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return borderLoops(mesh, on).map((loop) =>
    loop.map((edge): RimPoint => {
      const vertex = mesh.triangles[edge];
      const [x, y, z] = mesh.positions.subarray(3 * vertex, 3 * vertex + 3);
      return { vertex, at: [x * cos + y * sin, y * cos - x * sin, z], edge };
    }),
  );
}

/** The rim the other way round, each point with the edge that then follows it. */
function reversedRim(rim: Rim): Rim {
  const count = rim.length;
  return rim.map((_, i) => {
    const point = rim[(count - i) % count];
    return { ...point, edge: rim[(2 * count - i - 1) % count].edge };
  });
}

function middleOf(rim: Rim): RimPoint["at"] {
  const sum = [0, 0, 0];
  let length = 0;
  rim.forEach(({ at }, i) => {
    const next = rim[(i + 1) % rim.length].at;
    const step = apart(at, next);
    length += step;
    for (let k = 0; k < 3; k++) sum[k] += (step * (at[k] + next[k])) / 2;
  });
  return [sum[0] / length, sum[1] / length, sum[2] / length];
}

function apart(a: RimPoint["at"], b: RimPoint["at"]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Distance of a point from the side a–b, mm. */
function fromSide(point: RimPoint["at"], a: RimPoint["at"], b: RimPoint["at"]): number {
  const way = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const square = way[0] ** 2 + way[1] ** 2 + way[2] ** 2;
  const along = way.reduce((sum, step, k) => sum + step * (point[k] - a[k]), 0);
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, along / square));
  return apart(point, [a[0] + t * way[0], a[1] + t * way[1], a[2] + t * way[2]]);
}

function mismatch(starts: number, ends: number): AnnuletError {
  return new AnnuletError({
    code: "seam-mismatch",
    message: "the two ends of a unit are no images of each other",
    value: { starts, ends },
  });
}

/** Collects which points meet and which are put into rims. */
class Seam {
  readonly #mesh: Mesh;
  readonly #cos: number;
  readonly #sin: number;
  /** Points that are added, x, y, z in turn, mm. */
  readonly #more: number[] = [];
  /** New vertices on an edge, in the order of the start's rim. */
  readonly #added = new Map<number, number[]>();
  readonly #pairs: [end: number, start: number][] = [];
  /** Edges of the end, whose triangles run against the start's rim. */
  readonly #against = new Set<number>();

  constructor(mesh: Mesh, turn: number) {
    this.#mesh = mesh;
    [this.#cos, this.#sin] = [Math.cos(turn), Math.sin(turn)];
  }

  /** Walks both rims from a pair of points that meet. */
  join(start: Rim, end: Rim): void {
    const [i0, j0] = nearestPair(start, end);
    for (const { edge } of end) this.#against.add(edge);
    this.#meet(start[i0], end[j0]);
    let [i, j] = [0, 0];
    let [alongStart, alongEnd] = [0, 0];
    const at = (rim: Rim, first: number, step: number) => rim[(first + step) % rim.length];
    if (apart(start[i0].at, end[j0].at) > MEET) throw mismatch(start.length, end.length);
    for (;;) {
      const [a, b] = [at(start, i0, i), at(end, j0, j)];
      const [p, q] = [at(start, i0, i + 1), at(end, j0, j + 1)];
      const [toP, toQ] = [alongStart + apart(a.at, p.at), alongEnd + apart(b.at, q.at)];
      const [startDone, endDone] = [i + 1 >= start.length, j + 1 >= end.length];
      // The first points meet again at the end of the way, and nowhere else.
      if (startDone && endDone) break;
      if (!startDone && !endDone && apart(p.at, q.at) <= MEET) {
        this.#meet(p, q);
        [i, j, alongStart, alongEnd] = [i + 1, j + 1, 0, 0];
      } else if (endDone || (!startDone && toP <= toQ)) {
        if (fromSide(p.at, b.at, q.at) > ASIDE) throw mismatch(start.length, end.length);
        this.#insert(b.edge, p, p.at, true);
        [i, alongStart] = [i + 1, toP];
      } else {
        if (fromSide(q.at, a.at, p.at) > ASIDE) throw mismatch(start.length, end.length);
        this.#insert(a.edge, q, q.at, false);
        [j, alongEnd] = [j + 1, toQ];
      }
    }
  }

  #meet({ vertex: start }: RimPoint, { vertex: end }: RimPoint): void {
    this.#pairs.push([end, start]);
  }

  /** Puts a twin of a point into an edge of the other rim. */
  #insert(edge: number, { vertex }: RimPoint, [x, y, z]: RimPoint["at"], intoEnd: boolean): void {
    const added = (this.#mesh.positions.length + this.#more.length) / 3;
    if (intoEnd) this.#more.push(x * this.#cos - y * this.#sin, x * this.#sin + y * this.#cos, z);
    else this.#more.push(x, y, z);
    this.#pairs.push(intoEnd ? [added, vertex] : [vertex, added]);
    const there = this.#added.get(edge);
    if (there === undefined) this.#added.set(edge, [added]);
    else there.push(added);
  }

  /** The unit with the triangles on split edges made into fans. */
  result(): TurnPart {
    const { positions: old, triangles: whole } = this.#mesh;
    const fans = new Map<number, number[]>();
    for (const h of this.#added.keys()) {
      const t = h - (h % 3);
      fans.set(t, this.#fan(t));
    }
    // A fan's first triangle takes the place of the one that was split; the others come last.
    const more = [...fans.values()].flatMap((fan) => fan.slice(3));
    const triangles = new Uint32Array(whole.length + more.length);
    triangles.set(whole);
    triangles.set(more, whole.length);
    for (const [t, fan] of fans) triangles.set(fan.slice(0, 3), t);
    const positions = new Float64Array(old.length + this.#more.length);
    positions.set(old);
    positions.set(this.#more, old.length);
    const follows = new Int32Array(positions.length / 3).fill(-1);
    for (const [end, start] of this.#pairs) follows[end] = start;
    return { mesh: { positions, triangles }, follows };
  }

  /** A triangle with more points on some of its edges. */
  #fan(first: number): number[] {
    const { triangles } = this.#mesh;
    const sides = [first, first + 1, first + 2].map((edge) => {
      const added = this.#added.get(edge) ?? [];
      return this.#against.has(edge) ? added.toReversed() : added;
    });
    return fillTriangle([triangles[first], triangles[first + 1], triangles[first + 2]], sides);
  }
}

/** Indices of the two points of the rims that are nearest to each other. */
function nearestPair(start: Rim, end: Rim): [number, number] {
  let [best, nearest] = [[0, 0] as [number, number], Number.POSITIVE_INFINITY];
  start.forEach(({ at }, i) => {
    end.forEach((other, j) => {
      const gap = apart(at, other.at);
      if (gap < nearest) [best, nearest] = [[i, j], gap];
    });
  });
  return best;
}
