/**
 * Steep undersides of a mesh that is one unit and its images turned round the upright, read in the unit alone.
 *
 * A turn about z leaves every lean and every height as it is, so each image has as much. What hangs together is told as for
 * the ring itself: by how many units on each step from corner to corner leads (a graph of voltages: J. L. Gross, T. W. Tucker,
 * Topological Graph Theory, 1987; from memory). A place that meets itself some units on goes round the ring in so many places.
 */
import { greatestCommon } from "../../base/math/greatest-common.js";
import type { Point3 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import { firstUnit, type Turned } from "../../mesh/turned.js";
import { lowestOf, sortByLean, type UndersidePlace, type Undersides } from "./undersides.js";

/**
 * As `findUndersides` of the whole, but for which triangles are steep.
 *
 * @param support degrees from the upright beyond which an underside is steep
 */
export function findTurnedUndersides(turned: Turned, support: number): Omit<Undersides, "steep"> {
  const { units } = turned;
  const lowest = lowestOf(turned.mesh);
  const { whole, resting, area, steep, areas } = sortByLean(firstUnit(turned), support, lowest);
  const joined = joinSteep(turned, steep);
  const places = [...sumPlaces(turned, joined, steep, areas).values()].flatMap((sum) => imagesOf(sum, units, lowest));
  return {
    area: units * area,
    share: whole > 0 ? area / whole : 0,
    resting: units * resting,
    places: places.sort((a, b) => b.area - a.area),
  };
}

/** Vertices of a unit that hang together by steep triangles: a forest, in which each vertex tells where the next one is. */
interface Joined {
  /** The next vertex towards the one that stands for a place, itself where it does. */
  readonly parent: Int32Array;
  /** How many units on that one is met. */
  readonly on: Int32Array;
  /** Of a vertex that stands for a place: after how many units the place meets itself. */
  readonly stride: Int32Array;
}

function joinSteep({ units, own, slot, unit }: Turned, steep: Uint8Array): Joined {
  const joined: Joined = {
    parent: Int32Array.from({ length: own }, (_, i) => i),
    on: new Int32Array(own),
    stride: new Int32Array(own).fill(units),
  };
  const size = new Int32Array(own).fill(1);
  const join = (i: number, j: number): void => {
    const [a, onA] = standing(joined, slot[i]);
    const [b, onB] = standing(joined, slot[j]);
    const apart = unit[i] + onA - unit[j] - onB;
    const { parent, on, stride } = joined;
    if (a === b) {
      stride[a] = greatestCommon(stride[a], Math.abs(apart));
      return;
    }
    // The smaller one joins the larger, so that ways stay short.
    const [small, large, way] = size[a] < size[b] ? [a, b, -apart] : [b, a, apart];
    parent[small] = large;
    on[small] = way;
    size[large] += size[small];
    stride[large] = greatestCommon(stride[large], stride[small]);
  };
  for (let t = 0; t < steep.length; t++) {
    if (steep[t] === 0) continue;
    join(3 * t, 3 * t + 1);
    join(3 * t, 3 * t + 2);
  }
  return joined;
}

/** The vertex that stands for a vertex's place, and how many units on it is met. */
function standing({ parent, on }: Joined, vertex: number): readonly [number, number] {
  let [at, units] = [vertex, 0];
  for (; parent[at] !== at; at = parent[at]) units += on[at];
  return [at, units];
}

/** Of one place's triangles: area, mm², first moments, mm³, as its own vertex sees them, and lowest z, mm. */
interface PlaceSum {
  area: number;
  x: number;
  y: number;
  z: number;
  low: number;
  /** After how many units the place meets itself. */
  readonly stride: number;
}

function sumPlaces(turned: Turned, joined: Joined, steep: Uint8Array, areas: Float64Array): Map<number, PlaceSum> {
  const { mesh, units, corners, slot, unit } = turned;
  const { positions: p } = mesh;
  const sums = new Map<number, PlaceSum>();
  for (let t = 0; t < steep.length; t++) {
    if (steep[t] === 0) continue;
    const [root, on] = standing(joined, slot[3 * t]);
    const stride = joined.stride[root];
    const sum = sums.get(root) ?? { area: 0, x: 0, y: 0, z: 0, low: Number.POSITIVE_INFINITY, stride };
    sums.set(root, sum);
    const angle = (-TURN * (unit[3 * t] + on)) / units;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    sum.area += areas[t];
    for (let i = 3 * t; i < 3 * t + 3; i++) {
      const at = 3 * corners[i];
      sum.x += (areas[t] / 3) * (p[at] * cos - p[at + 1] * sin);
      sum.y += (areas[t] / 3) * (p[at] * sin + p[at + 1] * cos);
      sum.z += (areas[t] / 3) * p[at + 2];
      sum.low = Math.min(sum.low, p[at + 2]);
    }
  }
  return sums;
}

/** The places that the images of a unit's share make: as many as there are units until it meets itself. */
function imagesOf({ area, x, y, z, low, stride }: PlaceSum, units: number, lowest: number): UndersidePlace[] {
  return Array.from({ length: stride }, (_, k) => {
    const angle = (TURN * k) / units;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    // What goes round the ring has its middle on the axis.
    const at: Point3 =
      stride < units ? [0, 0, z / area] : [(x * cos - y * sin) / area, (x * sin + y * cos) / area, z / area];
    return { at, area: (area * units) / stride, height: low - lowest };
  });
}
