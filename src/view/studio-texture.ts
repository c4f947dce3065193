/**
 * The studio that metal mirrors, as a texture of three: the same soft boxes, walls and ground as in pictures, worked out here
 * and read from no file.
 */
import {
  DataTexture,
  DataUtils,
  EquirectangularReflectionMapping,
  HalfFloatType,
  LinearFilter,
  RGBAFormat,
} from "three";
import { studioLight } from "../output/picture/studio.js";

/** Texels along the horizon; half as many up. A soft box's edge fades over a fifth of a radian, 12 of them. Chosen. */
const WIDTH = 256;
const HEIGHT = WIDTH / 2;

/**
 * Light by direction, in an equirectangular map: y is up, and the camera stands towards +z.
 *
 * Give it to a scene's `environment` or a material's `envMap`; three blurs it by itself. Dispose of it as of any texture.
 */
export function studioTexture(): DataTexture {
  const texels = new Uint16Array(4 * WIDTH * HEIGHT);
  const light = new Float64Array(3);
  for (let j = 0; j < HEIGHT; j++) {
    const [level, y] = circleAt(((j + 0.5) / HEIGHT - 0.5) * Math.PI);
    for (let i = 0; i < WIDTH; i++) {
      const [cos, sin] = circleAt(((i + 0.5) / WIDTH - 0.5) * 2 * Math.PI);
      studioLight(level * cos, y, level * sin, light);
      for (let k = 0; k < 3; k++) texels[4 * (j * WIDTH + i) + k] = DataUtils.toHalfFloat(light[k]);
      texels[4 * (j * WIDTH + i) + 3] = DataUtils.toHalfFloat(1);
    }
  }
  const texture = new DataTexture(texels, WIDTH, HEIGHT, RGBAFormat, HalfFloatType);
  texture.mapping = EquirectangularReflectionMapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}

function circleAt(angle: number): readonly [cos: number, sin: number] {
  return [Math.cos(angle), Math.sin(angle)];
}
