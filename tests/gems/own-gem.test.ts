import { describe, expect, it } from "vitest";
import { gems } from "../../src/gems/catalogue.js";
import { ownGem } from "../../src/gems/own-gem.js";
import { stoneOf } from "../../src/gems/stone-of.js";
import { failureOf } from "../support/failure-of.js";

describe("a gem of one's own", () => {
  it("weighs what its density says, and bears nothing", () => {
    const paste = ownGem({ symbol: "paste", density: 2.5, hardness: 5.5, source: "our maker" });
    const { carats, heights } = stoneOf({ size: 3, gem: "paste" }, { gems: [...gems, paste] });
    expect(carats).toBeCloseTo(0.0018 * 2.5 * 9 * heights.depth, 12);
    expect(paste.density).toEqual({ value: 2.5, source: "our maker", certainty: "own" });
    expect(paste.hardness?.value).toEqual([5.5, 5.5]);
    expect([paste.heat.value, paste.ultrasonic.value]).toEqual(["after", "no"]);
    expect(ownGem({ symbol: "paste", density: 2.5 }).hardness).toBeUndefined();
  });

  it("may not take the symbol of a built-in one", () => {
    const { code, problems } = failureOf(() => ownGem({ symbol: "ruby", density: 4 }, "gems[0]"));
    expect([code, problems[0].path, problems[0].hint]).toEqual(["gem-known", "gems[0].symbol", "call it ruby-own"]);
  });
});
