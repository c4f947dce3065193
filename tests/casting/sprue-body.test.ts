import { describe, expect, it } from "vitest";
import { TURN } from "../../src/base/units.js";
import { sprueBody, sprueOutline, sprueReach } from "../../src/casting/sprue-body.js";
import { checkSolid } from "../../src/judge/gate.js";
import { signedVolume } from "../../src/mesh/volume.js";

const FINE = 1e-5;

/** An n-gon's area over its circle's. */
const polygonShare = (sides: number) => (sides / TURN) * Math.sin(TURN / sides);

function build(shape: Parameters<typeof sprueOutline>[0], foot: number, tolerance: number) {
  const outline = sprueOutline(shape, tolerance);
  if (outline === undefined) throw new Error("the fillet does not fit");
  const mesh = sprueBody(outline, foot, tolerance);
  const sides = (mesh.positions.length / 3 - 2) / (outline.length + 1);
  return { outline, mesh, sides, volume: signedVolume(mesh) / polygonShare(sides) };
}

describe("the sprue's body", () => {
  // A frustum holds π h (R² + R r + r²) / 3 (any handbook of geometry).
  it.each([
    [2.5, 2.5, 8, 0.4],
    [2.5, 4, 8, 0.4],
    [3, 1.2, 12, 0.7],
  ])("from %d to %d mm is a frustum on its foot", (diameter, end, length, foot) => {
    const { volume, mesh, sides } = build({ diameter, end, length, fillet: 0 }, foot, 0.01);
    const [wide, narrow] = [diameter / 2, end / 2];
    const frustum = (Math.PI * length * (wide ** 2 + wide * narrow + narrow ** 2)) / 3;
    expect(volume).toBeCloseTo(frustum + Math.PI * wide ** 2 * foot, 9);
    expect(Number.isInteger(sides)).toBe(true);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 0 });
  });

  // Pappus: a plane region turned about an axis holds its area times the way of its centroid. The region is a square of
  // side f without a quarter disc, whose centroid lies 4 f / 3π from its two straight sides.
  it.each([
    [2.5, 0.6],
    [1.5, 1.2],
  ])("of %d mm flares by a quarter of a torus of %d mm", (diameter, fillet) => {
    const [length, foot, radius] = [8, 0.5, diameter / 2];
    const { volume, outline, mesh } = build({ diameter, end: diameter, length, fillet }, foot, FINE);
    const disc = (Math.PI * fillet ** 2) / 4;
    const moment = fillet ** 2 * (radius + fillet / 2) - disc * (radius + fillet - (4 * fillet) / (3 * Math.PI));
    const expected = Math.PI * (radius ** 2 * length + (radius + fillet) ** 2 * foot) + TURN * moment;
    expect(volume / expected).toBeCloseTo(1, 4);
    expect(sprueReach(outline)).toBeCloseTo(radius + fillet, 12);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 0 });
  });

  it.each([2.5, 4, 1.5])("is tangent to the plane and to a stem that ends %d mm wide", (end) => {
    const fillet = 0.8;
    const { outline } = build({ diameter: 2.5, end, length: 8, fillet }, 0.5, FINE);
    const lean = Math.atan2(8, (end - 2.5) / 2);
    const chord = (from: number, to: number) =>
      Math.atan2(outline[to][1] - outline[from][1], outline[to][0] - outline[from][0]);
    // A chord leans by half its step from the tangent at its end.
    const step = (Math.PI - lean) / (outline.length - 2);
    expect(Math.PI - chord(0, 1)).toBeLessThan(step);
    expect(chord(outline.length - 3, outline.length - 2) - lean).toBeLessThan(step);
    expect(chord(outline.length - 2, outline.length - 1)).toBeCloseTo(lean, 9);
  });

  it("has none where the fillet is longer than the stem", () => {
    expect(sprueOutline({ diameter: 2, end: 2, length: 1, fillet: 1.5 }, FINE)).toBeUndefined();
  });
});
