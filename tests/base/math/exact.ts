/** Exact arithmetic of doubles, the slow way: for holding what is quick against. */
import type { Point2 } from "../../../src/base/math/point.js";

/** A double as a whole number of the smallest double there is. */
function whole(value: number): bigint {
  const bits = new BigUint64Array(Float64Array.of(value).buffer)[0];
  const exponent = (bits >> 52n) & 0x7ffn;
  const digits = (bits & ((1n << 52n) - 1n)) | (exponent === 0n ? 0n : 1n << 52n);
  const size = digits << (exponent === 0n ? 0n : exponent - 1n);
  return bits >> 63n === 1n ? -size : size;
}

/** 1 where a, b, c turn left, −1 right, 0 in line. */
export function exactTurn(a: Point2, b: Point2, c: Point2): number {
  const [ax, ay, bx, by, cx, cy] = [...a, ...b, ...c].map(whole);
  const twice = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  return twice === 0n ? 0 : twice > 0n ? 1 : -1;
}
