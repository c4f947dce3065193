// Covers: src/design/art/art-place.ts
/** Where drawings come to stand in their tile. */
import { describe, expect, it } from "vitest";
import { type PlaceTile, placeDrawing } from "../../../src/art/svg/place-drawing.js";
import { determinant, mapPoint } from "../../../src/base/math/affine.js";
import type { Point2 } from "../../../src/base/math/point.js";
import { placeSchema } from "../../../src/design/art/art-place.js";

/** A page of 100 × 50 px in a tile of 6 × 6 mm. */
const page = { x: 0, y: 0, width: 100, height: 50 };
const square: PlaceTile = { unit: "tile", width: 6, height: 6, aspect: 1 };

const placed = (spec: unknown, point: Point2, tile = square) => {
  const [x, y] = mapPoint(placeDrawing(spec === undefined ? undefined : placeSchema.parse(spec), page, tile), point);
  return [expect.closeTo(x, 9), expect.closeTo(y, 9)];
};

describe("a drawing's place", () => {
  it("is the whole tile by default, in proportion, upright: the file's top is up", () => {
    expect([0, 1.5]).toEqual(placed(undefined, [0, 0]));
    expect([6, -1.5]).toEqual(placed({}, [100, 50]));
  });

  it("is a box about the anchor's point, scaled", () => {
    expect([1.5, 0.75]).toEqual(placed({ fit: [0.5, 1] }, [0, 0]));
    expect([4.5, -0.75]).toEqual(placed({ fit: [0.5, 1] }, [100, 50]));
    expect([3, 3]).toEqual(placed({ fit: [0.5, 0.25], scale: 2, anchor: "top-left", at: [0.5, 0.5] }, [0, 0]));
    expect([6, 0]).toEqual(placed({ fit: [0.5, 0.25], scale: 2, anchor: "top-left", at: [0.5, 0.5] }, [50, 50]));
    expect([0, 0]).toEqual(placed({ anchor: "bottom", at: [0, 0] }, [50, 50]));
    expect([0, 0]).toEqual(placed({ anchor: "right", at: [0, 0] }, [100, 25]));
  });

  it("turns counter-clockwise, after mirroring left and right", () => {
    const [east, north]: Point2[] = [
      [100, 25],
      [50, 0],
    ];
    expect([3, 3]).toEqual(placed({ turn: 90 }, east));
    expect([1.5, 0]).toEqual(placed({ turn: 90 }, north));
    expect([0, 0]).toEqual(placed({ mirror: true }, east));
    expect([3, -3]).toEqual(placed({ mirror: true, turn: 90 }, east));
    expect(determinant(placeDrawing(placeSchema.parse({ mirror: true }), page, square))).toBeGreaterThan(0);
  });

  it("takes mm where the region does, and the file's own size where it is told to", () => {
    const mm: PlaceTile = { ...square, unit: "mm" };
    expect([1, 2.5]).toEqual(placed({ fit: [4, 4], at: [3, 1.5] }, [0, 0], mm));
    // 96 px are an inch of 25.4 mm.
    expect([25.4, 0]).toEqual(placed({ fit: "drawn", at: [0, 0], anchor: "top-left" }, [96, 0]));
  });

  it("stretches with a tile that is stretched across the band, unless it is in mm", () => {
    const stretched = { ...square, height: 9 };
    expect([0, 2.25]).toEqual(placed(undefined, [0, 0], stretched));
    expect([0, 1.5]).toEqual(placed(undefined, [0, 0], { ...stretched, unit: "mm" }));
  });

  it("is no place with a scale of 0 or a box without size", () => {
    expect(placeSchema.safeParse({ scale: 0 }).success).toBe(false);
    expect(placeSchema.safeParse({ fit: [0, 1] }).success).toBe(false);
    expect(placeSchema.safeParse({ at: [Number.NaN, 1] }).success).toBe(false);
  });
});
