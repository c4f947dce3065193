/**
 * Whether points of a unit and its turned images stay apart when they are rounded to single precision.
 *
 * Two points can become one only where they lie within a step of each other along every axis. Turned into one unit, such
 * points lie as near in radius, in height and round the axis: so near pairs are looked for among one unit's points alone,
 * and only those are then rounded in every image.
 */
import { TURN } from "../base/units.js";
import { mixBits, tableSize } from "./merge.js";
import { OFF_IMAGE, type Turned } from "./turned.js";

/** Bits of a single-precision fraction. */
const FRACTION_BITS = 23;

/** The largest step between single-precision numbers up to this size. */
export function stepOf(size: number): number {
  return size === 0 ? 0 : 2 ** (Math.floor(Math.log2(size)) - FRACTION_BITS);
}

/** The farthest coordinate of any image from 0, mm: radii and heights. */
export function farthestOf({ mesh: { positions: p }, own }: Turned): number {
  let [square, height] = [0, 0];
  for (let i = 0; i < 3 * own; i += 3) {
    square = Math.max(square, p[i] * p[i] + p[i + 1] * p[i + 1]);
    height = Math.max(height, Math.abs(p[i + 2]));
  }
  return Math.max(Math.sqrt(square), height);
}

/** Points nearer to the axis than this share of the farthest coordinate are not told apart by angles here (chosen). */
const LEAST_RADIUS = 1 / 8;

/** Boxes are so many times as wide as points are near: few points then lie in more than one (chosen). */
const WIDE = 64;

/** Boxes begin this share of one beside 0, so that planes of symmetry seldom lie on their borders (chosen). */
const ASIDE = 0.37;

/** Entries in boxes for each point, and near pairs: more, and the whole had better be read (chosen). */
const MOST_ENTRIES = 2;
const MOST_PAIRS = 200;

/** Whether all points of all images stay apart; undefined where the unit alone does not tell. */
export function areDistinctRounded(turned: Turned): boolean | undefined {
  const { own, units } = turned;
  const farthest = farthestOf(turned);
  const near = Math.sqrt(3) * stepOf(farthest) * (1 + 1e-3) + 4 * OFF_IMAGE;
  const places = placesIn(turned);
  const least = farthest * LEAST_RADIUS;
  for (let i = 0; i < own; i++) if (!(places[3 * i] > least)) return undefined;
  // Images of one point lie this far from each other.
  if (2 * least * Math.sin(TURN / (2 * units)) <= near) return undefined;
  const pairs = nearPairs(places, near, units, farthest);
  return pairs?.every(([i, j]) => stayApart(turned, i, j));
}

/** Radius, height and angle of each of the unit's points, the angle as a share of a unit's turn, beside how many turns. */
function placesIn({ mesh: { positions: p }, own, units }: Turned): Float64Array {
  const places = new Float64Array(3 * own);
  for (let i = 0; i < places.length; i += 3) {
    places[i] = Math.sqrt(p[i] * p[i] + p[i + 1] * p[i + 1]);
    places[i + 1] = p[i + 2];
    const turns = (Math.atan2(p[i + 1], p[i]) / TURN) * units;
    places[i + 2] = turns - Math.floor(turns);
  }
  return places;
}

/** Pairs of points that lie near each other in some two images; undefined where there are too many. */
function nearPairs(
  places: Float64Array,
  near: number,
  units: number,
  farthest: number,
): [number, number][] | undefined {
  const count = places.length / 3;
  const width = WIDE * near;
  /** Boxes along a unit's turn, which come round again. */
  const round = Math.max(1, Math.floor((farthest * TURN) / units / width));
  const table = new Int32Array(tableSize(count)).fill(-1);
  const point = new Int32Array(MOST_ENTRIES * count + MOST_PAIRS);
  const next = new Int32Array(point.length);
  const pairs: [number, number][] = [];
  let entries = 0;
  for (let i = 0; i < count; i++) {
    const radius = places[3 * i];
    const height = places[3 * i + 1];
    const turn = places[3 * i + 2];
    const reach = (near / radius / TURN) * units * (1 + 1e-3);
    const [r0, r1] = [boxAt(radius - near, width), boxAt(radius + near, width)];
    const [z0, z1] = [boxAt(height - near, width), boxAt(height + near, width)];
    const [t0, t1] = [Math.floor((turn - reach) * round + ASIDE), Math.floor((turn + reach) * round + ASIDE)];
    for (let r = r0; r <= r1; r++) {
      for (let z = z0; z <= z1; z++) {
        for (let t = t0; t <= t1; t++) {
          const box = hashBox(r, z, ((t % round) + round) % round) & (table.length - 1);
          for (let entry = table[box]; entry !== -1; entry = next[entry]) {
            const other = point[entry];
            if (other === i || Math.abs(places[3 * other] - radius) > near) continue;
            if (Math.abs(places[3 * other + 1] - height) > near) continue;
            const apart = Math.abs(places[3 * other + 2] - turn);
            if (Math.min(apart, 1 - apart) <= 2 * reach && pairs.push([other, i]) > MOST_PAIRS) return undefined;
          }
          if (entries === point.length) return undefined;
          point[entries] = i;
          next[entries] = table[box];
          table[box] = entries++;
        }
      }
    }
  }
  return pairs;
}

function boxAt(place: number, width: number): number {
  return Math.floor(place / width + ASIDE);
}

/** Large odd numbers, of which no two products fall together for long (M. Teschner and others, 2003; from memory). */
const SPREADS = [73856093, 19349663, 83492791] as const;

function hashBox(r: number, z: number, t: number): number {
  return mixBits(Math.imul(r, SPREADS[0]) ^ Math.imul(z, SPREADS[1]) ^ Math.imul(t, SPREADS[2]));
}

/** Whether two points of the unit stay apart in all images of both. */
function stayApart({ mesh: { positions: p }, own, units }: Turned, i: number, j: number): boolean {
  for (let k = 0; k < units; k++) {
    const a = 3 * (k * own + i);
    for (let m = 0; m < units; m++) {
      const b = 3 * (m * own + j);
      if ([0, 1, 2].every((axis) => Math.fround(p[a + axis]) === Math.fround(p[b + axis]))) return false;
    }
  }
  return true;
}
