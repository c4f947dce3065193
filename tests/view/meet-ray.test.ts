import { Mesh, Raycaster, Vector3 } from "three";
import { expect, test } from "vitest";
import { geometryOf } from "../../src/view/geometry.js";
import { cornersOf, meetRay } from "../../src/view/meet-ray.js";
import { smallRing } from "../support/small-ring.js";

/** A sequence of numbers from 0 to 1 that is the same each time (Park and Miller, 1988). */
function* numbers(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 48_271) % 2_147_483_647;
    yield state / 2_147_483_647;
  }
}

test("rays meet what three's own search finds", async () => {
  const buffers = await smallRing();
  const mesh = new Mesh(geometryOf(buffers));
  const random = numbers(7);
  const next = () => random.next().value;
  let met = 0;
  for (let i = 0; i < 60; i++) {
    const origin = [60 * next() - 30, 60 * next() - 30, 40 * next() - 20] as const;
    const target = [20 * next() - 10, 20 * next() - 10, 6 * next() - 3] as const;
    const direction = [target[0] - origin[0], target[1] - origin[1], target[2] - origin[2]] as const;
    const ours = meetRay(buffers, { origin, direction });
    const [theirs] = new Raycaster(new Vector3(...origin), new Vector3(...direction).normalize()).intersectObject(mesh);
    expect(ours === undefined, `ray ${i}`).toBe(theirs === undefined);
    if (ours === undefined) continue;
    met++;
    expect(new Vector3(...ours.point).distanceTo(theirs.point)).toBeLessThan(1e-5);
    const corners = cornersOf(buffers, ours.triangle).map((corner) => new Vector3(...corner));
    const bounds = corners.reduce((sum, corner) => sum + corner.distanceTo(theirs.point), 0);
    const around =
      corners[0].distanceTo(corners[1]) + corners[1].distanceTo(corners[2]) + corners[2].distanceTo(corners[0]);
    expect(bounds).toBeLessThanOrEqual(around + 1e-6);
  }
  expect(met).toBeGreaterThan(20);
});

test("what is cut away is passed, and so is what is seen from behind", async () => {
  const buffers = await smallRing();
  const ray = { origin: [0, 40, 0.3], direction: [0, -1, 0] } as const;
  const whole = meetRay(buffers, ray);
  expect(whole?.point[1]).toBeGreaterThan(8);
  // Without the upper half the ray goes on to the bore at the bottom, seen from inside the finger's hole.
  const lower = meetRay(buffers, ray, [0, -1, 0, 0]);
  expect(lower?.point[1]).toBeLessThan(-8);
  expect(meetRay(buffers, { origin: [0, 0, 40], direction: [0, 0, -1] })).toBeUndefined();
  expect(meetRay(buffers, { origin: [0, 40, 0], direction: [0, 1, 0] })).toBeUndefined();
});
