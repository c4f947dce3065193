import { openRing } from "annulet";
import { expect, it } from "vitest";
import { stoneSilhouettes } from "../../../src/workbench/section/stone-silhouettes.js";

const setting = { form: "flush" };

it("a row's stone stands in the section at its height and depth, the nearest to the cut, each row once", async () => {
  const design = {
    annulet: 1,
    size: { diameter: 17 },
    profile: { width: 8, thickness: 2.4, outside: { form: "flat" } },
    stones: [
      { size: 1.2, place: { form: "row", along: { v: 2 } }, setting },
      { size: 1.5, gem: "ruby", place: { form: "row", over: { from: 100, to: 200 }, to: 1 }, setting },
      { size: 1, place: { form: "single", angle: 90, v: -2 }, setting },
    ],
  };
  const stones = await openRing(design).stones();
  const shown = stoneSilhouettes(stones, design, 90);
  expect(shown.map(({ group }) => group)).toEqual([0, 1]);
  const [low, ruby] = shown.map(({ outline }) => {
    const [ws, rs] = [0, 1].map((axis) => outline.map((point) => point[axis]));
    return { from: Math.min(...ws), to: Math.max(...ws), top: Math.max(...rs), deep: Math.min(...rs) };
  });
  expect([low.from, low.to]).toEqual([expect.closeTo(1.4, 3), expect.closeTo(2.6, 3)]);
  // Flush: the table lies in the surface, 8.5 + 2.4 mm from the axis.
  expect(low.top).toBeCloseTo(10.9, 1);
  // A brilliant is some six tenths as deep as wide.
  expect(low.top - low.deep).toBeGreaterThan(0.55 * 1.2);
  expect(low.top - low.deep).toBeLessThan(0.65 * 1.2);
  // The end of the open row is the nearest to the top: one of 1 mm.
  expect(ruby.to - ruby.from).toBeCloseTo(1, 2);
  const back = stoneSilhouettes(stones, design, 150)[1].outline.map(([w]) => w);
  expect(Math.max(...back) - Math.min(...back)).toBeGreaterThan(1.2);
  expect(stoneSilhouettes({ bodies: [], stones: [] }, {}, 90)).toEqual([]);
});
