import { Vector3 } from "three";
import { describe, expect, test } from "vitest";
import { type Cut, cutThrough, handleOf, moveCut, planeOf } from "../../../src/workbench/ring/cut-plane.js";

const CUTS: readonly Cut[] = [
  { kind: "axis", angle: 0 },
  { kind: "axis", angle: 90 },
  { kind: "axis", angle: 217.5 },
  { kind: "across", at: 1.3 },
  { kind: "across", at: -2 },
];

describe("a cut", () => {
  test.each(CUTS)("of %j has its handle in its plane, and a drag there changes nothing", (cut) => {
    const handle = handleOf(cut, 12);
    expect(planeOf(cut)?.distanceToPoint(handle)).toBeCloseTo(0, 9);
    const again = cutThrough(cut, handle);
    expect(again.kind).toBe(cut.kind);
    if (cut.kind === "axis" && again.kind === "axis") expect(again.angle).toBeCloseTo(cut.angle, 9);
    else expect(again).toEqual(cut);
  });

  test("faces the reader: through the axis its half at the right goes, across the finger that in front", () => {
    expect(planeOf({ kind: "axis", angle: 90 })?.distanceToPoint(new Vector3(5, 0, 0))).toBe(-5);
    expect(planeOf({ kind: "across", at: 1 })?.distanceToPoint(new Vector3(0, 0, 4))).toBe(-3);
    expect(planeOf({ kind: "none" })).toBeUndefined();
    expect(cutThrough({ kind: "none" }, new Vector3(1, 2, 3))).toEqual({ kind: "none" });
  });

  test("is moved by keys: round and round by degrees, back to the very place by tenths of a millimetre", () => {
    expect(moveCut({ kind: "axis", angle: 0.5 }, -1)).toEqual({ kind: "axis", angle: 359.5 });
    let cut: Cut = { kind: "across", at: 0 };
    for (let i = 0; i < 7; i++) cut = moveCut(cut, 1);
    for (let i = 0; i < 7; i++) cut = moveCut(cut, -1);
    expect(cut).toEqual({ kind: "across", at: 0 });
    expect(moveCut(cut, 100_000)).toEqual({ kind: "across", at: 20 });
    expect(moveCut({ kind: "none" }, 1)).toEqual({ kind: "none" });
  });
});
