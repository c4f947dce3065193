import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DOMED } from "../output/drawing/tiles.js";
import { annulet, tempFolder } from "./support.js";

describe("the summary of a ring", () => {
  it("tells the stretch at the seat's edge, its crown and the relief's top, as the report does", async () => {
    const stdin = JSON.stringify({ ...DOMED, tolerance: 0.1 });
    const { out } = await annulet(["make", "-", "-o", join(tempFolder(), "ring.stl")], { stdin });
    const { fit } = JSON.parse((await annulet(["make", "-", "--json"], { stdin })).out);
    const { edge, crown, topCrown } = fit.lambda;
    expect(edge.max).toBeLessThan(1);
    expect(crown).toBeGreaterThan(1);
    expect(out).toMatch(
      new RegExp(
        `^λu +${edge.max.toFixed(3)} at the seat's edge, ${crown.toFixed(3)} at its crown, ${topCrown.toFixed(3)} at the relief's top$`,
        "m",
      ),
    );
  });
});
