import { build } from "annulet";
import { describe, expect, it } from "vitest";
import { findCrossings } from "../../src/mesh/crossings.js";

const square = "M 0.2 -0.3 L 0.8 -0.3 L 0.8 0.3 L 0.2 0.3 Z";

const ring = (profile: object, height: number, path = square) => ({
  annulet: 1,
  size: { diameter: 17.5 },
  tolerance: 0.05,
  profile: { width: 2.5, thickness: 2.6, bore: { form: "flat" }, ...profile },
  proud: true,
  pattern: { fit: { repeats: 8, hold: "band" }, symmetry: "p1", regions: [{ path, height }] },
});

const hollow = { outside: { form: "concave", dip: 1.1, edge: 0 } };

/** Of an arc so wide and so deep: (w² / 4 + d²) / 2d. */
const RADIUS = (2.5 ** 2 / 4 + 1.1 ** 2) / (2 * 1.1);

describe("relief in a hollow", () => {
  it("that would fold through itself is an error that says the most that fits", async () => {
    const most = Math.floor(0.95 * RADIUS * 1000) / 1000;
    await expect(build(ring(hollow, 1.3))).rejects.toMatchObject({
      code: "height-too-large",
      path: "pattern.regions[0]",
      value: 1.3,
      allowed: `at most ${most} mm there`,
    });
    const { mesh } = await build(ring(hollow, most));
    expect((await findCrossings(mesh)).deepest).toBeLessThan(1e-4);
  });

  it("in a hollow of a band that tapers is held to the tightest place that it stands on", async () => {
    const taper = { width: 2.3, thickness: 2.6 };
    // The hollow is (2.3² / 4 + 1.1²) / 2.2 = 1.151 mm round at the back and 1.26 mm at the top.
    await expect(build(ring({ ...hollow, taper }, 1.15))).rejects.toMatchObject({ code: "height-too-large" });
    expect((await build(ring({ ...hollow, taper }, 1.05))).report.closed).toBe(true);
    expect((await build(ring(hollow, 1.15))).report.closed).toBe(true);
  });
});

describe("relief on two humps with a tight valley between", () => {
  const humps = {
    width: 6,
    outside: {
      form: "free",
      path: "M -3 1.4 C -2 2.6 -1.2 2.6 -0.6 2 C -0.3 1.7 0.3 1.7 0.6 2 C 1.2 2.6 2 2.6 3 1.4",
      edge: 0,
    },
    thickness: 2.39,
  };

  it("may be high on a hump and not over the valley", async () => {
    const onHump = "M 0.2 0.15 L 0.8 0.15 L 0.8 0.35 L 0.2 0.35 Z";
    const { mesh } = await build(ring(humps, 0.9, onHump));
    expect((await findCrossings(mesh)).deepest).toBeLessThan(1e-4);
    await expect(build(ring(humps, 0.9))).rejects.toMatchObject({ code: "height-too-large" });
  });
});
