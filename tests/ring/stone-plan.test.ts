import { expect, it } from "vitest";
import { openRing } from "../../src/index.js";
import { planStones } from "../../src/ring/plan-stones.js";
import { flatBand } from "../support/place-stones.js";

it("a ring tells its stones as the plan of its design does, without the places in the order", async () => {
  const row = { size: 1.5, gem: "emerald", place: { form: "row" }, setting: { form: "flush" } };
  const design = { ...flatBand, stones: [row] };
  const [plan, told] = [await planStones(design), await openRing(design).stones()];
  expect(told.report).toEqual(plan.report);
  expect(told.cautions).toEqual(plan.cautions);
  expect(told.orders).toEqual(plan.orders.map(({ stones: _, ...order }) => order));
  expect(told.stones.length).toBe(plan.report?.count);
  const none = await openRing(flatBand).stones();
  expect(none).toEqual({ bodies: [], stones: [], report: undefined, orders: [], cautions: [] });
});
