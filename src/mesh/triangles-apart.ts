/**
 * Whether two triangles lie apart by a distance at least: their shadows on some line do (the theorem of separating axes;
 * C. Ericson, Real-Time Collision Detection, 2005, section 5.2; from memory). Where no line is found they may still do.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "./mesh.js";

type Triangle = readonly [Point3, Point3, Point3];

/** Directions shorter than this are none: two sides run alike. */
const NO_DIRECTION = 1e-12;

/** Whether triangles `s` of one mesh and `t` of another surely lie `gap` mm apart. */
export function surelyApart(one: Mesh, s: number, other: Mesh, t: number, gap: number): boolean {
  const [a, b] = [cornersOf(one, s), cornersOf(other, t)];
  return directionsOf(a, b).some((direction) => {
    const length = vec3.length(direction);
    if (length < NO_DIRECTION) return false;
    const [low, high] = shadow(a, direction);
    const [least, most] = shadow(b, direction);
    return Math.max(least - high, low - most) >= gap * length;
  });
}

function cornersOf({ positions, triangles }: Mesh, t: number): Triangle {
  const corner = (k: number): Point3 => {
    const at = 3 * triangles[3 * t + k];
    return [positions[at], positions[at + 1], positions[at + 2]];
  };
  return [corner(0), corner(1), corner(2)];
}

/** Both normals, what stands square on a side of each, in its plane or not, and the ways between corners. */
function directionsOf(a: Triangle, b: Triangle): vec3[] {
  const [sidesA, sidesB] = [sidesOf(a), sidesOf(b)];
  const [normalA, normalB] = [sidesA, sidesB].map(([u, v]) => vec3.cross(vec3.create(), u, v));
  const cross = (u: vec3, v: vec3) => vec3.cross(vec3.create(), u, v);
  return [
    normalA,
    normalB,
    ...sidesA.flatMap((u) => sidesB.map((v) => cross(u, v))),
    ...sidesA.map((u) => cross(normalA, u)),
    ...sidesB.map((v) => cross(normalB, v)),
    ...a.flatMap((p) => b.map((q) => vec3.subtract(vec3.create(), q as vec3, p as vec3))),
  ];
}

function sidesOf(triangle: Triangle): vec3[] {
  return triangle.map((from, k) => vec3.subtract(vec3.create(), triangle[(k + 1) % 3] as vec3, from as vec3));
}

function shadow(triangle: Triangle, direction: vec3): [low: number, high: number] {
  const along = triangle.map((point) => vec3.dot(point as vec3, direction));
  return [Math.min(...along), Math.max(...along)];
}
