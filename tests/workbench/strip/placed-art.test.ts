import { describe, expect, it } from "vitest";
import { placeDrawing } from "../../../src/art/svg/place-drawing.js";
import type { PlaceSpec } from "../../../src/design/art/art-place.js";
import {
  awayFrom,
  placedArt,
  placeFrame,
  placeHandles,
  scaleTo,
  turnTo,
  writtenScale,
  writtenTurn,
} from "../../../src/workbench/strip/placed-art.js";

const TILE = { unit: "tile", width: 6, height: 4, aspect: 0.8 } as const;

describe("a placed drawing", () => {
  const place: Partial<PlaceSpec> = { at: [0.3, 0.1], scale: 0.5, turn: 30, fit: [0.4, 0.2] };

  it("has its handles where the library puts the box's corner, stretched tiles or not", () => {
    // A page in the box's proportions fills it, so its right upper corner is the box's.
    const [a, b, c, d, e, f] = placeDrawing(place, { x: 0, y: 0, width: 20, height: 10 }, TILE);
    const corner = [a * 20 + c * 0 + e, b * 20 + d * 0 + f];
    const { scale } = placeHandles(placedArt(place, [1, 0.8]));
    expect(scale[0] * TILE.width).toBeCloseTo(corner[0], 9);
    expect((scale[1] * TILE.height) / TILE.aspect).toBeCloseTo(corner[1], 9);
  });

  it("comes back to its own scale and turn from where its handles stand", () => {
    const placed = placedArt(place, [1, 0.8]);
    const handles = placeHandles(placed);
    expect(scaleTo(placed, handles.scale, false)).toBe(0.5);
    expect(turnTo(placed, handles.turn, false)).toBe(30);
  });

  it("holds at its fitted size and at each 15°, unless asked not to", () => {
    const placed = placedArt({ at: [0, 0], fit: [2, 2] }, [1, 1]);
    expect(scaleTo(placed, [1.02, 1.02], true)).toBe(1);
    expect(scaleTo(placed, [1.02, 1.02], false)).toBe(1.02);
    const at = (degrees: number) =>
      [-Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)] as const;
    expect(turnTo(placed, at(43), true)).toBe(45);
    expect(turnTo(placed, at(43), false)).toBe(43);
    expect(turnTo(placed, at(-170), false)).toBe(-170);
  });

  it("has its turn taken hold of no nearer than a finger's width, in its own direction", () => {
    expect(awayFrom([1, 1], [1, 3], 1)).toEqual([1, 3]);
    expect(awayFrom([1, 1], [1.3, 1.4], 5)).toEqual([expect.closeTo(4, 9), expect.closeTo(5, 9)]);
    expect(awayFrom([1, 1], [1, 1], 2)).toEqual([1, 3]);
  });

  it("is written within what the document takes", () => {
    expect([0, 1e-9, 0.12345, 5000].map(writtenScale)).toEqual([0.001, 0.001, 0.123, 1000]);
    expect([181, -180, 180, 540, -0.04].map(writtenTurn)).toEqual([-179, 180, 180, 180, 0]);
  });

  it("fills its tile where nothing is said, or nothing that can be read", () => {
    for (const none of [undefined, 3, { at: "x", scale: "2", turn: null, fit: [1] }]) {
      expect(placedArt(none, [1, 0.8])).toEqual({ at: [0.5, 0], scale: 1, turn: 0, half: [0.5, 0.4] });
    }
    expect(placeFrame(placedArt({}, [1, 0.8]))).toMatch(/^M 0 -0\.4 L 1 -0\.4 L 1 0\.4 L 0 0\.4 Z M 0\.5 0\.4 L/);
  });
});
