/**
 * Sizes on the screen: what a pixel of the page measures at a place in space.
 */
import { type Camera, type Object3D, Vector2, Vector3, type WebGLRenderer } from "three";

const place = new Vector3();
const size = new Vector2();

/** mm that a CSS pixel stands for at an object; for any camera with a projection of its own. */
export function pixelAt(object: Object3D, camera: Camera, heightPx: number): number {
  place.setFromMatrixPosition(object.matrixWorld).applyMatrix4(camera.matrixWorldInverse);
  // The fourth row of the projection gives the depth by which it divides: the distance, or 1 where lines stay parallel.
  const p = camera.projectionMatrix.elements;
  const depth = p[11] * place.z + p[15];
  return (2 * Math.max(depth, Number.MIN_VALUE)) / (p[5] * heightPx);
}

/** The height of what is drawn on, CSS pixels. */
export function heightOf(renderer: WebGLRenderer): number {
  return renderer.getSize(size).y;
}
