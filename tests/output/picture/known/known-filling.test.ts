import { describe, expect, it } from "vitest";
import { knownFilling } from "../../../../src/output/picture/known/known-filling.js";
import { openInside } from "../../../../src/ring/open-ring.js";

const TOLERANCE = 0.02;

const document = (plain: "open" | "filled", taper?: object) => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: TOLERANCE,
  profile: {
    width: 6,
    thickness: 2,
    bore: { form: "flat" },
    outside: { form: "channel", depth: 0.6, crown: 0.3 },
    taper,
  },
  pattern: { fit: { repeats: 9, hold: "band" }, cover: 240, plain },
});

async function normalsOf(plain: "open" | "filled", taper?: object) {
  const { answers } = await openInside(document(plain, taper), {}).ask(["pattern", "wrap"]);
  const known = knownFilling(answers.pattern, answers.wrap, TOLERANCE);
  return (degrees: number, radius: number, w: number) => {
    const found: number[][] = [];
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    known(radius * cos, radius * sin, w, (nx, ny, nz) => found.push([nx * cos + ny * sin, nz, ny * cos - nx * sin]));
    return found;
  };
}

describe("the top of a plain zone that is filled", () => {
  it("faces along the radius, from end to end and no farther, whatever the floor beneath does", async () => {
    const at = await normalsOf("filled");
    const top = 10.5;
    for (const [degrees, w] of [
      [270, 0],
      [211, 1.5],
      [-31, -2],
    ]) {
      const [[radial, axial]] = at(degrees, top, w);
      expect(radial).toBeCloseTo(1, 12);
      expect(axial).toBe(0);
    }
    const beside = [at(205, top, 0), at(90, top, 0), at(270, top, 2.9), at(270, 10.3, 0), at(270, 9.9, 1)];
    expect(beside).toEqual([[], [], [], [], []]);
  });

  it("leans along the band as the rails of a band that tapers do", async () => {
    const at = await normalsOf("filled", { thickness: 1.7, width: 5 });
    for (const degrees of [215, 240, 270, 320]) {
      const away = ((degrees - 90 + 540) % 360) - 180;
      const t = Math.abs(away) / 180;
      const radius = 8.5 + 2 - 0.3 * (3 * t * t - 2 * t ** 3);
      const slope = (-0.3 * (6 * t - 6 * t * t) * Math.sign(away)) / Math.PI;
      const [[radial, axial, along]] = at(degrees, radius, 0.5);
      expect(axial).toBe(0);
      expect(along / radial).toBeCloseTo(-slope / radius, 4);
      expect(at(degrees, radius - 0.1, 0.5)).toEqual([]);
    }
  });

  it("is nowhere where the plain zone is open", async () => {
    expect((await normalsOf("open"))(270, 10.48, 0)).toEqual([]);
  });
});
