import { expect, it } from "vitest";
import { stoneFacts, stonesOfFacts } from "../../../src/output/page/stone-facts.js";
import { stonesInView } from "../../../src/output/stones/stones-in-view.js";
import { placeOn } from "../../support/place-stones.js";

it("a page holds a ring's stones to a twentieth of a micrometre, and each body once", async () => {
  const row = { size: 1.5, place: { form: "row", count: 6, over: { from: 0, to: 100 } }, setting: { form: "flush" } };
  const shown = stonesInView(await placeOn([row]));
  const told = stonesOfFacts(JSON.parse(JSON.stringify(stoneFacts(shown))));
  expect([told.bodies.length, told.stones.length]).toEqual([1, 6]);
  expect(told.bodies[0].mesh.triangles).toEqual(shown.bodies[0].mesh.triangles);
  const numbers = (stones: typeof told) => [
    ...stones.bodies.flatMap(({ mesh, planes }) => [...mesh.positions, ...planes]),
    ...stones.stones.flatMap(({ at, out, along }) => [...at, ...out, ...along]),
  ];
  const [before, after] = [numbers(shown), numbers(told)];
  expect(after.length).toBe(before.length);
  expect(Math.max(...after.map((value, i) => Math.abs(value - before[i])))).toBeLessThanOrEqual(5.0001e-5);
});
