/**
 * How deep two convex bodies stand in each other: the shortest way that one must be moved for them to touch alone. By the
 * expanding polytope: G. van den Bergen, "Proximity queries and penetration depth computation on 3D game objects", 2001.
 */

import { TURN } from "../units.js";
import { type Convex, convexDistance, type Difference, differenceIn } from "./convex-distance.js";
import type { Point3 } from "./point.js";

/** The depth is known to this, mm. */
const EXACT = 1e-6;

/** Faces of the polytope grow by two a step. */
const MOST_STEPS = 100;

const ORIGIN: Point3 = [0, 0, 0];

/** A face that looks away from the origin, with its distance from it. */
interface Face {
  readonly corners: readonly [Point3, Point3, Point3];
  readonly normal: Point3;
  readonly distance: number;
}

/** mm, to about 1e-6; 0 where they touch or lie apart. */
export function convexDepth(a: Convex, b: Convex): number {
  const { distance, simplex } = convexDistance(a, b);
  return distance > 0 || simplex.length === 1 ? 0 : expand(a, b, firstFaces(a, b, simplex));
}

function expand(a: Convex, b: Convex, first: readonly Face[]): number {
  let faces = first;
  for (let step = 1; ; step++) {
    const nearest = faces.reduce((best, face) => (face.distance < best.distance ? face : best));
    const { at } = differenceIn(a, b, nearest.normal);
    if (dot(nearest.normal, at) - nearest.distance <= EXACT || step === MOST_STEPS) return nearest.distance;
    faces = grown(faces, at);
  }
}

/**
 * The faces of a body round the origin: of the four points between which it lies; where it lies on a triangle or a line of
 * them, as it does between bodies as symmetric as stones in a row, with points beyond these to all sides.
 */
function firstFaces(a: Convex, b: Convex, simplex: readonly Difference[]): Face[] {
  const points = simplex.map(({ at }) => at);
  const [p, q, r, s] = points;
  const beyond = (direction: Point3) => differenceIn(a, b, direction).at;
  if (simplex.length === 4) {
    return facesRound(
      [p, q, r, s],
      [
        [0, 1, 2],
        [0, 1, 3],
        [0, 2, 3],
        [1, 2, 3],
      ],
    );
  }
  if (simplex.length === 3) {
    const normal = cross(minus(q, p), minus(r, p));
    return bipyramid([p, q, r], [beyond(normal), beyond(minus(ORIGIN, normal))]);
  }
  const along = minus(q, p);
  const aside = cross(along, Math.abs(along[0]) < Math.abs(along[1]) ? [1, 0, 0] : [0, 1, 0]);
  const across = cross(along, aside);
  const size = Math.sqrt(dot(aside, aside) / dot(across, across));
  const around = [0, 1, 2].map((k) => {
    const [cos, sin] = [Math.cos((TURN * k) / 3), Math.sin((TURN * k) / 3) * size];
    return beyond(plus(scaled(aside, cos), scaled(across, sin)));
  });
  return bipyramid(around, [p, q]);
}

function bipyramid(ring: readonly Point3[], tips: readonly Point3[]): Face[] {
  return facesRound(
    [...ring, ...tips],
    [
      [0, 1, 3],
      [1, 2, 3],
      [2, 0, 3],
      [0, 1, 4],
      [1, 2, 4],
      [2, 0, 4],
    ],
  );
}

/** Faces by their corners' numbers, looking away from the middle of all points. */
function facesRound(points: readonly Point3[], faces: readonly (readonly [number, number, number])[]): Face[] {
  const middle = scaled(points.reduce(plus), 1 / points.length);
  return faces.map(([i, j, k]) => faceOf(points[i], points[j], points[k], middle));
}

/** The face of three points that has a fourth behind it. */
function faceOf(p: Point3, q: Point3, r: Point3, behind: Point3): Face {
  const face = lookingOut(p, q, r);
  return dot(face.normal, minus(behind, p)) <= 0 ? face : lookingOut(p, r, q);
}

function lookingOut(p: Point3, q: Point3, r: Point3): Face {
  const [x, y, z] = cross(minus(q, p), minus(r, p));
  const length = Math.sqrt(x * x + y * y + z * z) || 1;
  const normal: Point3 = [x / length, y / length, z / length];
  return { corners: [p, q, r], normal, distance: Math.max(0, dot(normal, p)) };
}

/** The polytope with a point more: what the point sees of it goes, and the rim of that is joined to it. */
function grown(faces: readonly Face[], point: Point3): Face[] {
  const kept = faces.filter(({ normal, corners }) => dot(normal, minus(point, corners[0])) <= 0);
  const gone = faces.filter((face) => !kept.includes(face));
  const sides = gone.flatMap(({ corners: [p, q, r] }) => [[p, q] as const, [q, r] as const, [r, p] as const]);
  const rim = sides.filter(([p, q]) => !sides.some(([s, t]) => s === q && t === p));
  return [...kept, ...rim.map(([p, q]) => lookingOut(p, q, point))];
}

function plus([ax, ay, az]: Point3, [bx, by, bz]: Point3): Point3 {
  return [ax + bx, ay + by, az + bz];
}

function scaled([x, y, z]: Point3, by: number): Point3 {
  return [x * by, y * by, z * by];
}

function cross([ax, ay, az]: Point3, [bx, by, bz]: Point3): Point3 {
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

function minus([ax, ay, az]: Point3, [bx, by, bz]: Point3): Point3 {
  return [ax - bx, ay - by, az - bz];
}

function dot([ax, ay, az]: Point3, [bx, by, bz]: Point3): number {
  return ax * bx + ay * by + az * bz;
}
