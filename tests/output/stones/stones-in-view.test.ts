import { describe, expect, it } from "vitest";
import { polygonArea } from "../../../src/base/math/polygon.js";
import { CUT_NAMES } from "../../../src/gems/stone.js";
import { stonesInView } from "../../../src/output/stones/stones-in-view.js";
import { FLAT_RADIUS, placeOn } from "../../support/place-stones.js";

const single = (angle: number, v: number, turn: number) => ({ form: "single", angle, v, turn });
const flush = { form: "flush" };

describe("the stones of a ring for views", () => {
  it("stand where they were asked for, in space and laid flat", async () => {
    const stones = [
      { cut: "oval", size: 2, width: 1.4, place: single(200, 0.7, 30), setting: flush, gem: "ruby" },
      { size: 1.5, place: { form: "row", count: 4, over: { from: 20, to: 80 } }, setting: flush },
    ];
    const { stones: shown, bodies } = stonesInView(await placeOn(stones));
    expect(shown.map(({ body, group, number }) => [body, group, number])).toEqual([
      [0, 0, 1],
      ...[2, 3, 4, 5].map((number) => [1, 1, number]),
    ]);
    expect(bodies.map(({ gem }) => gem.name)).toEqual(["Ruby", "Diamond"]);
    const [oval] = shown;
    expect(oval.flat).toMatchObject({ surface: "seat", v: 0.7 });
    expect(oval.flat.angle).toBeCloseTo(200, 6);
    // Counter-clockwise from outside: from the way of growing angles towards +z.
    expect(oval.flat.turn).toBeCloseTo(30, 6);
    const [x, y, z] = oval.at;
    expect([(Math.atan2(y, x) * 180) / Math.PI + 360, z]).toEqual([expect.closeTo(200, 6), expect.closeTo(0.7, 6)]);
    expect(Math.hypot(x, y)).toBeLessThan(FLAT_RADIUS);
    expect(shown.slice(1).map(({ flat }) => flat.angle)).toEqual([20, 40, 60, 80].map((a) => expect.closeTo(a, 5)));
  });

  it.each(CUT_NAMES)("a %s: its planes bound its corners, its facets fill its outline from above", async (cut) => {
    const { bodies } = stonesInView(await placeOn([{ cut, size: 2.4, place: single(90, 0, 0), setting: flush }]));
    const [{ mesh, planes, outline, facets, round }] = bodies;
    for (let i = 0; i < planes.length; i += 4) {
      const [a, b, c, offset] = planes.slice(i, i + 4);
      let most = Number.NEGATIVE_INFINITY;
      for (let p = 0; p < mesh.positions.length; p += 3) {
        const [x, y, z] = mesh.positions.subarray(p, p + 3);
        most = Math.max(most, a * x + b * y + c * z - offset);
      }
      expect(Math.abs(most)).toBeLessThan(1e-9);
    }
    const whole = polygonArea(outline);
    const sum = facets.reduce((area, ring) => area + polygonArea(ring), 0);
    expect(round).toBe(cut === "cabochon");
    if (round) expect(facets).toEqual([]);
    // Chords of two finenesses: 0.01 mm of a width of 1 mm or more.
    else expect(Math.abs(sum / whole - 1)).toBeLessThan(0.02);
  });
});
