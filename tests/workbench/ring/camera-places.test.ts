// Covers: src/workbench/ring/flight.ts
import { PerspectiveCamera, Vector3 } from "three";
import { describe, expect, test } from "vitest";
import {
  between,
  CAMERA_PLACES,
  type CameraPlaceName,
  distanceFor,
  poseAt,
} from "../../../src/workbench/ring/camera-places.js";
import { Flight } from "../../../src/workbench/ring/flight.js";

const SIZE = { radius: 13, bore: 8.6 };
const NAMES = Object.keys(CAMERA_PLACES) as CameraPlaceName[];

describe("places of the camera", () => {
  test.each([0.4, 1, 2.5])("a ring is seen whole in a picture of aspect %d", (aspect) => {
    const camera = new PerspectiveCamera(26, aspect, 0.5, 500);
    for (const name of ["turned", "front", "side", "top"] as const) {
      const { position, target } = poseAt(name, SIZE, distanceFor(SIZE.radius, 26, aspect));
      camera.position.copy(position);
      camera.lookAt(target);
      camera.updateMatrixWorld();
      for (let i = 0; i < 24; i++) {
        const angle = (i * Math.PI) / 12;
        const onBall = new Vector3(Math.cos(angle), Math.sin(angle), 0).applyQuaternion(camera.quaternion);
        const seen = onBall.multiplyScalar(SIZE.radius).project(camera);
        expect(Math.max(Math.abs(seen.x), Math.abs(seen.y))).toBeLessThan(0.9);
      }
    }
  });

  test("front looks along the finger, top down on the ring's top, side across it", () => {
    const along = (name: CameraPlaceName) => poseAt(name, SIZE, 50).position.normalize();
    expect(along("front").z).toBeCloseTo(1, 9);
    expect(along("top").y).toBeCloseTo(1, 5);
    expect(along("side").x).toBeCloseTo(1, 9);
  });

  test("into the bore looks at its lowest place through the opening, not through metal", () => {
    const { position, target } = poseAt("bore", SIZE, 50);
    expect(target.y).toBe(-SIZE.bore);
    // Where the line of sight passes a band of up to 12 mm: inside the bore.
    const at = target.clone().lerp(position, 6 / position.z);
    expect(Math.hypot(at.x, at.y)).toBeLessThan(SIZE.bore);
    expect(at.y).toBeGreaterThan(-SIZE.bore);
  });
});

describe("a flight", () => {
  test("begins and ends where it should, and goes round the ring the shorter way", () => {
    const [from, to] = [poseAt("turned", SIZE, 50), poseAt("side", SIZE, 50)];
    expect(between(from, to, 0).position.distanceTo(from.position)).toBeLessThan(1e-9);
    expect(between(from, to, 1).position.distanceTo(to.position)).toBeLessThan(1e-9);
    for (const name of NAMES.filter((one) => one !== "bore")) {
      const half = between(from, poseAt(name, SIZE, 50), 0.5);
      expect(half.position.length()).toBeCloseTo(50, 6);
    }
    const left = { position: new Vector3(-1, 0, -20), target: new Vector3() };
    const right = { position: new Vector3(1, 0, -20), target: new Vector3() };
    expect(between(left, right, 0.5).position.z).toBeLessThan(-19);
  });

  test("takes its time, can be ended on its way, and is there at once where it may take none", () => {
    const flight = new Flight();
    const [from, to] = [poseAt("turned", SIZE, 50), poseAt("side", SIZE, 50)];
    expect(flight.at(0)).toBeUndefined();
    flight.begin(from, to, 300);
    expect(flight.at(1000)?.position.distanceTo(from.position)).toBeLessThan(1e-9);
    expect(flight.at(1150)?.position.distanceTo(from.position)).toBeGreaterThan(1);
    expect(flight.flying).toBe(true);
    expect(flight.at(1300)).toBe(to);
    expect(flight.flying).toBe(false);
    flight.begin(from, to, 300);
    flight.end();
    expect(flight.at(2000)).toBeUndefined();
    flight.begin(from, to, 0);
    expect(flight.at(3000)).toBe(to);
  });
});
