import { PerspectiveCamera, Vector3 } from "three";
import { expect, test } from "vitest";
import { pointAt } from "../../../src/workbench/ring/snap.js";
import { smallRing } from "../../support/small-ring.js";

const [WIDTH, HEIGHT] = [600, 400];

function frontCamera(): PerspectiveCamera {
  const camera = new PerspectiveCamera(26, WIDTH / HEIGHT, 0.5, 500);
  camera.position.set(4, 3, 60);
  camera.lookAt(0, 0, 0);
  camera.updateMatrixWorld();
  return camera;
}

/** Where a place is seen, CSS pixels. */
function seenAt(camera: PerspectiveCamera, point: readonly [number, number, number]) {
  const seen = new Vector3(...point).project(camera);
  return { x: ((seen.x + 1) / 2) * WIDTH, y: ((1 - seen.y) / 2) * HEIGHT, width: WIDTH, height: HEIGHT };
}

test("a corner near the pointer is meant, and what is meant is seen where the pointer is", async () => {
  const buffers = await smallRing();
  const camera = frontCamera();
  // The front face of the band, some way round it.
  const place = seenAt(camera, [9.6, 0.1, 3]);
  const pointed = pointAt(buffers, camera, place);
  expect(pointed).toBeDefined();
  if (pointed === undefined) return;
  const again = seenAt(camera, pointed.point);
  expect(Math.hypot(again.x - place.x, again.y - place.y)).toBeLessThan(pointed.corner ? 12.01 : 1e-3);
  const onceMore = pointAt(buffers, camera, again)?.point ?? [0, 0, 0];
  for (const k of [0, 1, 2]) expect(onceMore[k]).toBeCloseTo(pointed.point[k], 9);
});

test("nothing is meant beside the ring, in its bore, and where it is cut away", async () => {
  const buffers = await smallRing();
  const camera = frontCamera();
  expect(pointAt(buffers, camera, { x: 2, y: 2, width: WIDTH, height: HEIGHT })).toBeUndefined();
  expect(pointAt(buffers, camera, seenAt(camera, [0, 0, 0]))).toBeUndefined();
  const place = seenAt(camera, [9.6, 0.1, 3]);
  expect(pointAt(buffers, camera, place, [-1, 0, 0, 0])).toBeUndefined();
});
