/**
 * Nearer to the ring, or farther from it.
 */
import type { OrbitControls } from "three/addons/controls/OrbitControls.js";

/** Divides the way from the camera to what it looks at by a factor; one under 1 goes farther. */
export function goNearer(controls: OrbitControls, factor: number): void {
  // What three calls a scale is a share of the way, so that one over 1 goes farther.
  controls.dollyIn(1 / factor);
}
