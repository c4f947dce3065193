import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import type { FlatBody } from "../../src/relief/flat-body.js";
import { mirrorAxes } from "../../src/solids/mirror-axes.js";
import { bodiesOf } from "../support/stages.js";

/** mm */
const [PERIOD, SAME] = [10, 0.02];
const options = { top: 30, round: 60, same: SAME };

/** A body of oblongs about u, so wide, from seam to seam. */
function bodyOf(
  oblongs: readonly (readonly [u: number, wide: number])[],
  seam: FlatBody["seam"] = [0, PERIOD],
): FlatBody {
  const outline = oblongs.map(([u, wide]) => [
    [
      [u - wide / 2, -1, 0.4],
      [u + wide / 2, -1, 0.4],
      [u + wide / 2, 1, 0.4],
      [u - wide / 2, 1, 0.4],
    ] as Point3[],
  ]);
  const own = {
    mode: "raised",
    names: [],
    path: "",
    made: "flat",
    upright: false,
    top: [],
    surface: undefined,
    throat: [],
  } as const;
  return { ...own, outline, seam, period: undefined, copies: 6, height: 0.4, rise: undefined, fade: undefined };
}

describe("where mirrors may stand", () => {
  it("is the top of the ring, the middle of what is covered, where anything ends by itself", () => {
    expect(mirrorAxes([bodyOf([[3, 1]]), { ...bodyOf([[12, 1]]), seam: undefined }], options)).toEqual([30]);
  });

  it("is opposite the top first of all, then in the middle of two rings that are alike", () => {
    expect(mirrorAxes([], options)).toEqual([0]);
    expect(mirrorAxes([bodyOf([[2.5, 1]])], options)).toEqual([0, 2.5]);
    expect(
      mirrorAxes(
        [
          bodyOf([
            [2, 1],
            [3.4, 1],
          ]),
        ],
        options,
      ),
    ).toEqual([0, 2.7]);
  });

  it("is put on a quarter of a period where it is as near as outlines may be", () => {
    expect(mirrorAxes([bodyOf([[2.5 + 0.5 * SAME, 1]])], options)).toEqual([0, 2.5]);
  });

  it("is not where another ring has no image", () => {
    expect(mirrorAxes([bodyOf([[2.5, 1]]), bodyOf([[4, 0.5]])], options)).toEqual([0]);
    expect(
      mirrorAxes(
        [
          bodyOf([[2.5, 1]]),
          bodyOf([
            [2.1, 0.5],
            [2.9, 0.5],
          ]),
        ],
        options,
      ),
    ).toEqual([0, 2.5]);
  });

  it("is in a few places at most", () => {
    const many = bodyOf(Array.from({ length: 40 }, (_, i) => [0.1 + 0.24 * i, 0.1] as const));
    expect(mirrorAxes([many], options).length).toBeLessThanOrEqual(6);
  });

  it("is in the middle of tiles where a cycle has none between them", () => {
    const region = (tile: number, path: string) => ({ path, height: 0.4, tiles: [tile] });
    const pattern = {
      fit: { repeats: 10, hold: "band" },
      symmetry: "p2mm",
      cycle: 2,
      regions: [region(0, "M 0.4 0 L 0.5 0.2 L 0.6 0 L 0.5 -0.2 Z"), region(1, "M 0.3 -0.1 H 0.7 V 0.1 H 0.3 Z")],
    };
    const profile = { width: 6, thickness: 2, outside: { form: "flat" } };
    const document = { annulet: 1, size: { diameter: 17 }, tolerance: 0.02, profile, pattern };
    expect(bodiesOf(document).parts.symmetry).toMatchObject({ units: 5, mirrored: true });
  });
});
