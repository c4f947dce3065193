// Across: whole rings against closed forms
/**
 * Whole rings against closed forms from elsewhere and against a library's own measurements.
 */
import { build, checkSolid } from "annulet";
import { toBufferGeometry } from "annulet/three";
import { type Box3, type BufferGeometry, Vector3 } from "three";
import { describe, expect, it } from "vitest";

describe("a napkin ring", () => {
  it("has the volume π L³ / 6, whatever its bore (the napkin ring problem: MathWorld, Spherical Ring)", async () => {
    const length = 6;
    for (const bore of [7, 8.25, 11]) {
      // What is left of a ball whose bored hole is as long as the band is wide.
      const ball = Math.hypot(bore, length / 2);
      const { report } = await build({
        annulet: 1,
        size: { diameter: 2 * bore },
        tolerance: 0.001,
        profile: {
          width: length,
          thickness: ball - bore,
          bore: { form: "flat", edge: 0 },
          outside: { form: "free", path: `M -3 0 A ${ball} ${ball} 0 0 0 3 0` },
        },
      });
      const volume = (Math.PI * length ** 3) / 6;
      expect(volume).toBeCloseTo(113.0973, 4);
      expect(report).toMatchObject({ closed: true, genus: 1 });
      expect(Math.abs(report.volume - volume)).toBeLessThan(0.001 * report.area);
    }
  });
});

describe("a band with a domed outside and a comfort bore", () => {
  it("has the volume that Pappus gives its section, a rectangle between two circular segments", async () => {
    const { report } = await build({
      annulet: 1,
      size: { diameter: 16 },
      tolerance: 0.002,
      profile: {
        width: 3.8,
        thickness: 4,
        bore: { form: "comfort", rise: 1.3, edge: 0 },
        outside: { form: "domed", rise: 1.3, edge: 0 },
      },
    });
    // Chord c, sagitta s, all of it symmetric about r = 10.
    const [c, s] = [3.8, 1.3];
    const rho = c ** 2 / (8 * s) + s / 2;
    const phi = 2 * Math.asin(c / 2 / rho);
    const area = c * (4 - 2 * s) + rho ** 2 * (phi - Math.sin(phi));
    expect(report.volume / (2 * Math.PI * 10 * area)).toBeCloseTo(1, 2);
    expect(Math.abs(report.volume - 2 * Math.PI * 10 * area)).toBeLessThan(0.002 * report.area);
  });
});

describe("the geometry for three", () => {
  it("has the bounds and the area that three finds, and closes by our gate", async () => {
    const { report, mesh } = await build({
      annulet: 1,
      size: { system: "us", value: "7" },
      tolerance: 0.05,
      profile: { width: 5, thickness: 2, outside: { form: "domed" } },
      beads: [{ along: { v: 0 }, diameter: 0.6 }],
    });
    const geometry = toBufferGeometry(mesh);
    geometry.computeBoundingBox();
    const box = geometry.boundingBox as Box3;
    expect(box.getSize(new Vector3()).z).toBeCloseTo(report.bounds.max[2] - report.bounds.min[2], 5);
    expect(areaOf(geometry)).toBeCloseTo(report.area, 2);
    expect(checkSolid(mesh).closed).toBe(true);
  });
});

function areaOf(geometry: BufferGeometry): number {
  const flat = geometry.index === null ? geometry : geometry.toNonIndexed();
  const points = flat.getAttribute("position");
  const [a, b, c] = [new Vector3(), new Vector3(), new Vector3()];
  let area = 0;
  for (let i = 0; i < points.count; i += 3) {
    a.fromBufferAttribute(points, i);
    b.fromBufferAttribute(points, i + 1).sub(a);
    c.fromBufferAttribute(points, i + 2).sub(a);
    area += b.cross(c).length() / 2;
  }
  return area;
}
