import { describe, expect, it } from "vitest";
import { makeBand } from "../../src/band/make-band.js";
import { radians, TURN } from "../../src/base/units.js";
import { profileSchema } from "../../src/design/profile/profile.js";
import { surfaceAt } from "../../src/marks/mark-surface.js";

const BORE = 8.75;
const TOP = { width: 8, thickness: 2.2 };
const BACK = { width: 4, thickness: 1.6 };
const CHANNEL = { form: "channel", rail: 0.9, depth: 0.5, edge: 0, root: 0 };

/** Width and thickness by the smooth step 3t² − 2t³ of the share of the half round from the top. */
function sizesAt(angle: number): { W: number; T: number } {
  const away = Math.abs(angle - TURN / 4) % TURN;
  const t = Math.min(away, TURN - away) / (TURN / 2);
  const share = t * t * (3 - 2 * t);
  const between = (top: number, back: number) => top + share * (back - top);
  return { W: between(TOP.width, BACK.width), T: between(TOP.thickness, BACK.thickness) };
}

describe("a surface for marks on a band that tapers", () => {
  const bore = { form: "flat", edge: 0 };
  const band = makeBand(profileSchema.parse({ ...TOP, bore, outside: CHANNEL, taper: BACK }), BORE, 0.005);
  const place = (at: "seat" | "rail" | "bore", angle: number, v = 0) =>
    surfaceAt({ at, v, angle, path: "hallmark" }, band, -0.4);

  it.each([0, 90, 150, 270])("is as wide as the band is at the mark's angle, %d°", (angle) => {
    const { W } = sizesAt(radians(angle));
    expect(place("bore", angle).wrap.seatLength).toBeCloseTo(W, 4);
    expect(place("seat", angle).wrap.seatLength).toBeCloseTo(W - 2 * CHANNEL.rail, 4);
    expect(place("rail", angle).wrap.seatLength).toBeCloseTo(CHANNEL.rail, 4);
  });

  it("lies on the band at every other angle too", () => {
    const surfaces = { seat: place("seat", 270), rail: place("rail", 270), bore: place("bore", 270) };
    for (let angle = 0.05; angle < TURN; angle += 0.37) {
      const { W, T } = sizesAt(angle);
      const at = (name: keyof typeof surfaces) => {
        const { wrap } = surfaces[name];
        const [x, y, z] = wrap.forward(wrap.uAt(angle), 0, 0);
        return [Math.hypot(x, y), z];
      };
      expect(at("seat")[0]).toBeCloseTo(BORE + T - CHANNEL.depth, 4);
      expect(at("rail")[0]).toBeCloseTo(BORE + T, 4);
      expect(at("rail")[1]).toBeCloseTo((W - CHANNEL.rail) / 2, 4);
      expect(at("bore")[0]).toBeCloseTo(BORE, 9);
    }
  });
});

describe("a surface for marks on a domed band", () => {
  const outside = { form: "domed", rise: 0.6, edge: 0 };
  const band = makeBand(profileSchema.parse({ ...TOP, outside }), BORE, 0.005);

  it("has its lengths true along the band at the mark's own v", () => {
    for (const v of [0, 1.5, -2.5]) {
      const { wrap } = surfaceAt({ at: "seat", v, angle: 90, path: "hallmark" }, band, 0);
      const [x, y] = wrap.forward(1, v, 0);
      expect(wrap.stretchAt(1, v, 0).along).toBeCloseTo(1, 9);
      expect(Math.atan2(y, x) * Math.hypot(x, y)).toBeCloseTo(1, 9);
    }
  });
});
