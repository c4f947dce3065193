/**
 * The line of a row of stones, through all of them, as frames close enough together for a sweep. Along a row that runs round the
 * finger its frames stand half way between the lines of the band's facets, so that the sweep's edges lie in none of them.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import type { Frame } from "../frame.js";

/** A place of a row that is known: where a stone stands. `size`: what is carried along with it, such as widths. */
export interface Knot {
  readonly at: Point3;
  readonly out: Point3;
  readonly sizes: readonly number[];
}

/** A frame of the line, x along it. */
export interface Station {
  readonly frame: Frame;
  readonly sizes: readonly number[];
}

export interface StationsOptions {
  readonly closed: boolean;
  /** How far it goes on beyond its first and last stone, mm. */
  readonly beyond: number;
  /** Facets of the band round the finger, and where they begin, radians. */
  readonly facets: number;
  readonly startAngle: number;
}

/** Values at a place: angle, radius, w, the three of `out` turned back to angle 0, sizes. */
type Values = readonly number[];

/** Stations between two stones of a line that does not run round the finger (chosen). */
const BETWEEN = 8;

export function stationsOf(knots: readonly Knot[], options: StationsOptions): Station[] {
  const values = valuesOf(knots);
  const { closed } = options;
  const rises = values.every((value, i) => i === 0 || value[0] - values[i - 1][0] > LEAST_STEP);
  const line = lineThrough(closed ? [...values, turned(values[0])] : values, closed);
  const last = closed ? knots.length : knots.length - 1;
  const places = rises && last > 0 ? roundPlaces(line, last, options) : evenPlaces(line, last, options);
  return places.map((t) => stationAt(line, t));
}

/** Stones one after another round the finger stand this far apart at least, radians (chosen: a tenth of a degree). */
const LEAST_STEP = TURN / 3600;

/** A place along the line by its number: stones stand at whole numbers, and beyond the ends it goes on straight in its values. */
type RowLine = (t: number) => Values;

function valuesOf(knots: readonly Knot[]): Values[] {
  let before = 0;
  return knots.map(({ at: [x, y, w], out, sizes }, i) => {
    const raw = Math.atan2(y, x);
    const angle = i === 0 ? raw : raw - TURN * Math.round((raw - before) / TURN);
    before = angle;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return [angle, Math.hypot(x, y), w, out[0] * cos + out[1] * sin, out[1] * cos - out[0] * sin, out[2], ...sizes];
  });
}

function turned([angle, ...rest]: Values): Values {
  return [angle + TURN, ...rest];
}

/** Through all values by cubic pieces (E. Catmull, R. Rom, A class of local interpolating splines, 1974). */
function lineThrough(values: readonly Values[], closed: boolean): RowLine {
  const last = values.length - 1;
  const at = (i: number): Values => {
    if (i >= 0 && i <= last) return values[i];
    if (last === 0) return values[0];
    if (closed) {
      const around = ((i % last) + last) % last;
      const turns = (i - around) / last;
      return values[around].map((value, k) => (k === 0 ? value + TURN * turns : value));
    }
    const [end, inner] = i < 0 ? [values[0], values[1]] : [values[last], values[last - 1]];
    const steps = i < 0 ? -i : i - last;
    return end.map((value, k) => value + steps * (value - inner[k]));
  };
  return (t) => {
    const i = Math.floor(t);
    const f = t - i;
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    return b.map(
      (value, k) =>
        value +
        (f / 2) * (c[k] - a[k] + f * (2 * a[k] - 5 * value + 4 * c[k] - d[k] + f * (3 * (value - c[k]) + d[k] - a[k]))),
    );
  };
}

/** Half way between the facets' lines; at the ends where the row ends. */
function roundPlaces(line: RowLine, last: number, { closed, beyond, facets, startAngle }: StationsOptions): number[] {
  const step = TURN / facets;
  const [, radius] = line(0);
  const far = beyond / radius;
  const [from, to] = closed ? [line(0)[0], line(0)[0] + TURN] : [line(0)[0] - far, line(last)[0] + far];
  const first = Math.ceil((from - startAngle) / step - 1 / 2);
  const count = closed ? facets : Math.floor((to - startAngle) / step - 1 / 2) - first + 1;
  const inner = Array.from({ length: count }, (_, i) => startAngle + (first + i + 1 / 2) * step);
  const apart = inner.filter((angle) => closed || (angle - from > step / 4 && to - angle > step / 4));
  const angles = closed ? apart : [from, ...apart, to];
  return angles.map((angle) => placeOf(line, angle, last));
}

/** Halvings that find a place to the last digits. */
const HALVINGS = 60;

/** Rows go on by so many stones beyond their ends at most. */
const BEYOND_STONES = 4;

/** Where the line comes to an angle. */
function placeOf(line: RowLine, angle: number, last: number): number {
  let [low, high] = [-BEYOND_STONES, last + BEYOND_STONES];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (line(middle)[0] < angle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function evenPlaces(line: RowLine, last: number, { closed, beyond }: StationsOptions): number[] {
  if (closed) return Array.from({ length: last * BETWEEN }, (_, i) => i / BETWEEN);
  const [start, end] = [spaceAt(line, 0), spaceAt(line, last)];
  const far = (place: Point3, next: Point3) => beyond / Math.max(beyond, vec3.distance(place, next));
  const before = last === 0 ? 0 : far(start, spaceAt(line, 1));
  const after = last === 0 ? 0 : far(end, spaceAt(line, last - 1));
  const count = Math.max(1, last * BETWEEN);
  return [-before, ...Array.from({ length: count + 1 }, (_, i) => (last * i) / count), last + after];
}

function spaceAt(line: RowLine, t: number): Point3 {
  const [angle, radius, w] = line(t);
  return [radius * Math.cos(angle), radius * Math.sin(angle), w];
}

/** By so much of the way between two stones the line's direction is taken. */
const ASIDE = 1e-4;

function stationAt(line: RowLine, t: number): Station {
  const [angle, , , radial, around, axial, ...sizes] = line(t);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const out = vec3.normalize(
    [0, 0, 0],
    [radial * cos - around * sin, radial * sin + around * cos, axial],
  ) as unknown as Point3;
  const way = vec3.subtract([0, 0, 0], spaceAt(line, t + ASIDE), spaceAt(line, t - ASIDE));
  const flat = vec3.scaleAndAdd([0, 0, 0], way, out, -vec3.dot(way, out));
  const along = vec3.normalize([0, 0, 0], flat) as unknown as Point3;
  return { frame: { at: spaceAt(line, t), along, out }, sizes };
}
