import { describe, expect, it } from "vitest";
import { planStones } from "../../src/ring/plan-stones.js";
import { flatBand } from "../support/place-stones.js";

describe("planning stones", () => {
  it("tells what comes of them without building the ring", async () => {
    const warnings: string[] = [];
    const stones = [{ size: 1.5, place: { form: "row", gap: 0.03 }, setting: { form: "flush" } }];
    const plan = await planStones({ ...flatBand, stones }, { spares: 0.5, warn: ({ code }) => warnings.push(code) });
    expect(plan.report?.count).toBe(plan.orders[0].count);
    expect(plan.orders[0].spares).toBe(Math.ceil(plan.orders[0].count / 2));
    expect(plan.cautions).toHaveLength(1);
    expect(warnings).toEqual(["stones-close"]);
  });

  it("of a ring without any is empty", async () => {
    expect(await planStones(flatBand)).toEqual({ report: undefined, orders: [], cautions: [] });
  });
});
