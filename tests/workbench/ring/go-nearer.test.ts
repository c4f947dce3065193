import { PerspectiveCamera } from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { expect, test } from "vitest";
import { goNearer } from "../../../src/workbench/ring/go-nearer.js";

test("plus comes nearer and minus goes farther, by the same share of the way", () => {
  const camera = new PerspectiveCamera();
  camera.position.set(0, 0, 60);
  const controls = new OrbitControls(camera, null);
  goNearer(controls, 1.25);
  expect(camera.position.length()).toBeCloseTo(48, 9);
  goNearer(controls, 1 / 1.25);
  expect(camera.position.length()).toBeCloseTo(60, 9);
});
