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

  it("tells the sizes of a band that tapers at the top, at the back and at the angles between", async () => {
    const outside = { form: "flat", edge: 0 };
    const taper = { width: 4, thickness: 1.6, between: [{ angle: 30, width: 7 }] };
    const design = {
      annulet: 1,
      size: { diameter: 17 },
      tolerance: 0.1,
      profile: { width: 8, thickness: 2, outside, taper },
    };
    const stdin = JSON.stringify(design);
    const { out } = await annulet(["make", "-", "-o", join(tempFolder(), "ring.stl")], { stdin });
    expect(out).toMatch(/^band +8\.000 mm wide, 2\.000 mm thick at the top$/m);
    expect(out).toMatch(/^ +7\.000 mm wide, 1\.\d+ mm thick at 30\.0°$/m);
    expect(out).toMatch(/^ +7\.000 mm wide, 1\.\d+ mm thick at 150\.0°$/m);
    expect(out).toMatch(/^ +4\.000 mm wide, 1\.600 mm thick at the back$/m);
  });
});
