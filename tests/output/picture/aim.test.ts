import { describe, expect, it } from "vitest";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { transformMesh } from "../../../src/mesh/transform.js";
import { aimAt, facing, type LookAt } from "../../../src/output/picture/aim.js";
import { makeCamera } from "../../../src/output/picture/camera.js";
import { takePicture } from "../../../src/output/picture/picture.js";
import { failureOf } from "../../support/failure-of.js";
import { box, torus } from "../../support/meshes.js";

const RADIUS = 9;
const TUBE = 1.5;
const ring = torus(RADIUS, TUBE, 180, 48);

/** The triangles of the ring that lie within 4° of an angle, on its outside or in its bore. */
function patch({ positions, triangles }: Mesh, angle: number, side: "outside" | "inside"): Uint8Array {
  return Uint8Array.from({ length: triangles.length / 3 }, (_, t) => {
    const [x, y] = [0, 1].map((k) =>
      [0, 1, 2].reduce((sum, c) => sum + positions[3 * triangles[3 * t + c] + k] / 3, 0),
    );
    const turn = Math.atan2(y, x) - (angle * Math.PI) / 180;
    const near = Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) < (4 * Math.PI) / 180;
    const r = Math.hypot(x, y);
    return near && (side === "outside" ? r > RADIUS + 0.8 * TUBE : r < RADIUS - 0.8 * TUBE) ? 1 : 0;
  });
}

/** Where red pixels lie on the mean, from the middle, over half the picture; undefined where there are none. */
function middleOfRed(lookAt: LookAt | undefined, marked: Uint8Array, zoom: number) {
  const size = 120;
  const { pixels } = takePicture(ring, { width: size, height: size, lookAt, zoom, marked, ground: "clear" });
  let [x, y, count] = [0, 0, 0];
  for (let i = 0; i < size * size; i++) {
    if (pixels[4 * i] < 2 * pixels[4 * i + 1] || pixels[4 * i] < 60) continue;
    x += (2 * ((i % size) + 0.5)) / size - 1;
    y += (2 * (Math.floor(i / size) + 0.5)) / size - 1;
    count++;
  }
  return count === 0 ? undefined : [x / count, y / count];
}

describe("looking at a place", () => {
  it("aims at the ring's outside or its bore there, wherever the axis' other side is", () => {
    for (const angle of [0, 40, 200, -77]) {
      const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      const outside = aimAt(ring, { angle }, 11);
      expect(outside.centre[0] * cos + outside.centre[1] * sin).toBeCloseTo(RADIUS + TUBE, 2);
      expect(outside.centre[1] * cos - outside.centre[0] * sin).toBeCloseTo(0, 9);
      const inside = aimAt(ring, { angle, from: "inside" }, 11);
      expect(inside.centre[0] * cos + inside.centre[1] * sin).toBeCloseTo(RADIUS - TUBE, 2);
      const size = { width: 10, height: 10, zoom: 1 };
      const eye = (from: "outside" | "inside", aim: ReturnType<typeof aimAt>) =>
        makeCamera({ view: facing({ angle, from }), ...size, ...aim }).eye;
      const [far, within] = [eye("outside", outside), eye("inside", inside)].map(([x, y]) => x * cos + y * sin);
      expect(far).toBeGreaterThan(50);
      // Beyond the axis, and still within the bore.
      expect(within).toBeLessThan(0);
      expect(within).toBeGreaterThan(TUBE - RADIUS);
    }
    const shifted = transformMesh(ring, [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 2, 0, 5, 1]);
    expect(aimAt(shifted, { angle: 0 }, 11).centre[0]).toBeCloseTo(RADIUS + TUBE + 2, 2);
    expect(aimAt(shifted, { angle: 180 }, 11).centre[0]).toBeCloseTo(2 - RADIUS - TUBE, 2);
    expect(aimAt(shifted, { angle: 0 }, 11).centre[2]).toBeCloseTo(5, 6);
  });

  it("has the place in the middle, large or small, and nothing of it from elsewhere", () => {
    for (const from of ["outside", "inside"] as const) {
      const marked = patch(ring, 200, from);
      for (const zoom of [1, 3]) {
        const middle = middleOfRed({ angle: 200, from }, marked, zoom);
        expect(Math.hypot(...(middle ?? [9]))).toBeLessThan(0.1);
        expect(
          middleOfRed({ angle: 200, from: from === "outside" ? "inside" : "outside" }, marked, zoom),
        ).toBeUndefined();
        expect(middleOfRed({ angle: 20, from }, marked, zoom)).toBeUndefined();
      }
      // A place beside it is on the side where it lies: to the right from outside, to the left from inside.
      const beside = middleOfRed({ angle: 190, from }, marked, 2) ?? [0];
      expect(Math.sign(beside[0])).toBe(from === "outside" ? 1 : -1);
    }
  });

  it("refuses where nothing is, and angles that are none", () => {
    const aside = box([1, 1, 1], [5, -0.5, 0]);
    const failure = (angle: number, from?: "inside") =>
      failureOf(() => takePicture(aside, { lookAt: { angle, from } }));
    expect(failure(180).path).toBe("lookAt");
    expect(failure(0, "inside").path).toBe("lookAt");
    expect(failure(Number.NaN).code).toBe("option-invalid");
    expect(aimAt(aside, { angle: 0 }, 1).centre[0]).toBeCloseTo(6, 9);
  });
});
