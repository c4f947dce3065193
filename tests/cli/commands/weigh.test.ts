import { describe, expect, it } from "vitest";
import { annulet, PLAIN, put, tempFolder } from "../support.js";

const PRICED = { ...PLAIN, costing: { prices: { ag925: 2 }, currency: "shells (demo)", sprue: 20 } };

describe("annulet weigh", () => {
  it("prints every metal and the cost at the design's prices", async () => {
    const path = put(tempFolder(), "ring.json", PRICED);
    const { out: json } = await annulet(["weigh", path, "--json"]);
    const table = JSON.parse(json);
    const silver = table.rows.find(({ symbol }: { symbol: string }) => symbol === "ag925");
    expect(silver.cost.melt).toBeCloseTo(2 * 1.2 * silver.cast, 9);

    const { code, out } = await annulet(["weigh", path]);
    expect(code).toBe(0);
    for (const { symbol } of table.rows) expect(out).toContain(`${symbol} `);
    expect(out).toContain(silver.finished.toFixed(2));
    expect(out).toContain("Cost of the metal in shells (demo)");
    expect(out).toMatch(new RegExp(`ag925 +2\\.00 +${silver.cost.finished.toFixed(2)}`));
  });

  it("tells no cost without prices", async () => {
    const { out } = await annulet(["weigh", "-"], { stdin: JSON.stringify(PLAIN) });
    expect(out).not.toContain("Cost");
  });
});
