import { describe, expect, it } from "vitest";
import { boxRing } from "../../src/flat/box.js";
import { areaOf, describeLoss, lossOf, roundLoss } from "../../src/flat/loss.js";
import { stripOf } from "./strips.js";

const strip = stripOf();
const { tile } = strip.grid;
const box = (left: number, side: number) => boxRing({ left, right: left + side, low: 0, high: side });

describe("a loss", () => {
  const large = box(1.25 * tile, tile / 10);
  const small = box(0, tile / 20);

  it("is the share of the area, at the middle of its largest piece, x within the tile", () => {
    const loss = lossOf(strip, [small, large], tile ** 2);
    expect(loss?.share).toBeCloseTo(0.0125, 6);
    expect(loss).toMatchObject({ x: expect.closeTo(0.3, 6), y: expect.closeTo(0.05, 6) });
    expect(loss && describeLoss(loss)).toBe("1.3 % of its area, most of it at x 0.3, y 0.05 (tile widths)");
    expect(loss && roundLoss(loss)).toEqual({ share: 0.013, x: 0.3, y: 0.05 });
  });

  it("takes off what holes leave standing, and is none where nothing is lost", () => {
    const ring = [large, boxRing({ left: 1.26 * tile, right: 1.3 * tile, low: 10, high: tile / 20 }).reverse()];
    expect(lossOf(strip, ring, areaOf(ring))?.share).toBe(1);
    expect(lossOf(strip, [], tile ** 2)).toBeUndefined();
  });
});
