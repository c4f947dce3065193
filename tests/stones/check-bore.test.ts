/**
 * Stones above the bore: distances in closed form, and the largest that fits.
 */
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { heightsOf } from "../../src/gems/stone.js";
import { boreDistance } from "../../src/stones/check-bore.js";
import { shapeOf } from "../../src/stones/stone-shape.js";
import { FLAT_RADIUS, flatBand, placeOn } from "../support/place-stones.js";

const flush = { form: "flush" };
const single = { form: "single" };

describe("a stone above the bore", () => {
  it("with a pointed culet is as far from it as the wall is thicker than the stone is deep", async () => {
    const { stones, band } = await placeOn([{ size: 3, place: single, setting: flush }]);
    const [placed] = stones;
    const expected = 2.2 - heightsOf(placed.stone).depth;
    expect(expected).toBeLessThan(0.5);
    expect(Math.abs(boreDistance(shapeOf(placed.stone), placed, band) - expected)).toBeLessThan(1e-3);
  });

  it("with a flat below is nearest in the middle of that, not at its corners", async () => {
    const dome = { cut: "cabochon", size: 5, width: 4, proportions: { crownHeight: 0.3, girdle: 0.05 }, level: 0 };
    const { stones, band } = await placeOn([{ ...dome, place: { ...single, turn: 0 }, setting: flush }]);
    const [placed] = stones;
    const { depth } = heightsOf(placed.stone);
    // Its corners are 2.5 mm along the band: 0.3 mm farther out there.
    const expected = FLAT_RADIUS - depth - 8.65;
    const distance = boreDistance(shapeOf(placed.stone), placed, band);
    expect(distance).toBeGreaterThanOrEqual(Math.min(expected, 0.5) - 1e-3);
    expect(distance).toBeLessThan(expected + 1e-3 + 0.5);
  });

  it("nearer than is published is warned of, with where that is from", async () => {
    const { warnings } = await placeOn([{ size: 3, place: { form: "row", count: 12 }, setting: flush }]);
    expect(warnings.map(({ code }) => code)).toEqual(["stones-near-bore"]);
    expect(warnings[0].message).toMatch(
      /^stone 1 of "stones 1" at 90° comes to 0\.36\d mm from the bore, the nearest of 12$/,
    );
    expect(warnings[0].allowed).toMatch(/at least 0.5 mm \(CAD best-practice sheet/);
  });

  it("in it is an error that tells the largest that fits", async () => {
    try {
      await placeOn([{ size: 4, place: single, setting: flush, name: "big" }]);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(AnnuletError);
      const [{ code, message, allowed, path }] = (error as AnnuletError).problems;
      const depth =
        4 *
        heightsOf({
          width: 1,
          proportions: shapeOf((await placeOn([{ size: 1, place: single, setting: flush }])).stones[0].stone).stone
            .proportions,
        }).depth;
      expect([code, path]).toEqual(["stone-too-deep", "stones[0].size"]);
      expect(message).toBe(`stone 1 of "big" at 90° reaches ${Number((depth - 2.2).toFixed(3))} mm into the bore`);
      // As deep as the wall is thick.
      const most = Math.floor((100 * 4 * 2.2) / depth) / 100;
      expect(allowed).toBe(`at most ${most} mm as it is cut and set`);
    }
  });

  it("of a comfort bore is nearer where that is narrow", async () => {
    const profile = { ...flatBand.profile, bore: { form: "comfort", rise: 0.4 } };
    const at = async (v: number) => {
      const { stones, band } = await placeOn([{ size: 3, place: { ...single, v }, setting: flush, level: 0.2 }], {
        profile,
      });
      return boreDistance(shapeOf(stones[0].stone), stones[0], band);
    };
    expect(await at(0)).toBeGreaterThan(await at(1.8));
  });
});
