import { describe, expect, it } from "vitest";
import { revolvedSurface } from "../../src/band/surface/revolved.js";
import type { Point3 } from "../../src/base/math/point.js";
import { regionsNear } from "../../src/judge/regions-near.js";

const R = 10;
const wrap = revolvedSurface({
  line: [{ kind: "line", from: [-3, R], to: [3, R] }],
  referenceRadius: R,
  startAngle: 0,
});
const round = 2 * Math.PI * R;

const square = (path: string, u: number, v: number, again: object): Parameters<typeof regionsNear>[1][number] => ({
  path,
  names: path.endsWith("0") ? ["petal"] : [],
  outline: [
    [
      [
        [u, v, 0],
        [u + 1, v, 0],
        [u + 1, v + 1, 0],
        [u, v + 1, 0],
      ],
    ],
  ],
  seam: undefined,
  period: undefined,
  ...again,
});

/** A dot in each of ten tiles, one on a strip whose sides are joined, and one that stands once. */
const bodies = [
  square("pattern.regions.0", 1, -2.5, { period: round / 10 }),
  square("pattern.regions.1", 2, 0, { seam: [0, round / 4] }),
  square("pattern.regions.2", 30, 1.5, {}),
];

const at = (u: number, v: number): Point3 => wrap.forward(u, v, 0.2);

describe("the regions at places", () => {
  it("are those within which they lie, in every copy", () => {
    expect(regionsNear([at(1.5, -2)], bodies, wrap)).toEqual(["pattern.regions.0 (petal)"]);
    expect(regionsNear([at(1.5 + (7 * round) / 10, -2)], bodies, wrap)).toEqual(["pattern.regions.0 (petal)"]);
    expect(regionsNear([at(2.5 + (3 * round) / 4, 0.5)], bodies, wrap)).toEqual(["pattern.regions.1"]);
    expect(regionsNear([at(30.5, 2), at(1.5, -2)], bodies, wrap)).toEqual([
      "pattern.regions.2",
      "pattern.regions.0 (petal)",
    ]);
  });

  it("are the nearest within half a millimetre, across the end of what comes again too", () => {
    expect(regionsNear([at(30.5, 1.2)], bodies, wrap)).toEqual(["pattern.regions.2"]);
    expect(regionsNear([at(0.7 + round / 10, -2)], bodies, wrap)).toEqual(["pattern.regions.0 (petal)"]);
    expect(regionsNear([at(31.9, 2)], bodies, wrap)).toEqual([]);
  });

  it("are none where there is no pattern", () => {
    expect(regionsNear([at(1, 1)], [], wrap)).toEqual([]);
  });
});
