import { describe, expect, it } from "vitest";
import { heightsOf } from "../../src/gems/stone.js";

describe("the heights of a stone", () => {
  it("are shares of its width", () => {
    // 6.5 mm at Tolkowsky's proportions with a girdle of 3 %: 1.053, 0.195, 2.8015 and 4.0495 mm (computed).
    const proportions = { table: 0.53, crownHeight: 0.162, girdle: 0.03, pavilionDepth: 0.431, culet: 0 };
    const { crown, girdle, pavilion, depth } = heightsOf({ width: 6.5, proportions });
    expect(crown).toBeCloseTo(1.053, 3);
    expect(girdle).toBeCloseTo(0.195, 3);
    expect(pavilion).toBeCloseTo(2.8015, 6);
    expect(depth).toBeCloseTo(4.0495, 6);
  });
});
