import { describe, expect, it } from "vitest";
import { meetings, normalsMeet } from "../../../src/band/surface/normals-meet.js";
import { openInside } from "../../../src/ring/open-ring.js";

async function lineOf(outside: object) {
  const document = { annulet: 1, size: { diameter: 17 }, profile: { width: 4, thickness: 3, outside } };
  return (await openInside(document).ask(["wrap"])).answers.wrap.lineAt(0);
}

/** Radius of an arc 4 mm wide: (w² / 4 + d²) / 2d. */
const radiusOf = (dip: number) => (4 + dip ** 2) / (2 * dip);

describe("normals of a line", () => {
  it("of a hollow meet in its middle, at its radius", async () => {
    const line = await lineOf({ form: "concave", dip: 0.8, edge: 0 });
    const radius = radiusOf(0.8);
    expect(normalsMeet(line, radius - 0.01)).toBe(false);
    expect(normalsMeet(line, radius + 0.01)).toBe(true);
    expect(normalsMeet(line, -10)).toBe(false);
    const { least, at } = meetings(line, [-line.reach, line.reach], 1);
    expect(least).toBeCloseTo(radius, 3);
    expect(at(0.7)).toBeCloseTo(radius, 3);
    expect(meetings(line, [-line.reach, line.reach], -1).least).toBe(Number.POSITIVE_INFINITY);
  });

  it("of a dome meet inside it, those of a flat band nowhere", async () => {
    const dome = await lineOf({ form: "domed", rise: 0.8, edge: 0 });
    expect(normalsMeet(dome, 10)).toBe(false);
    expect(meetings(dome, [-dome.reach, dome.reach], -1).least).toBeCloseTo(radiusOf(0.8), 3);
    const flat = await lineOf({ form: "flat", edge: 0 });
    expect(normalsMeet(flat, 50)).toBe(false);
    expect(meetings(flat, [-1, 1], 1).at(0)).toBe(Number.POSITIVE_INFINITY);
  });
});
