/**
 * Hatching of cut metal: thin lines at 45° on the screen, as far apart wherever the cut lies.
 */
import { Color, DoubleSide, ShaderMaterial, Vector2, type WebGLRenderer } from "three";

/** Any colours that three reads. */
export interface HatchColours {
  /** Of the cut face. */
  readonly metal: string | number;
  /** Of its lines. */
  readonly line: string | number;
}

/** Between lines, and how wide they are; CSS pixels. Chosen. */
const APART = 8;
const WIDE = 1.1;

const VERTEX = "void main() { gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0); }";

const FRAGMENT = `
uniform vec3 metal;
uniform vec3 line;
uniform float pixels;
void main() {
  float across = (gl_FragCoord.x + gl_FragCoord.y) * 0.70710678 / pixels;
  float away = abs(mod(across, ${APART.toFixed(1)}) - ${(APART / 2).toFixed(1)});
  float ink = 1.0 - smoothstep(${(WIDE / 2).toFixed(2)} - 0.5 / pixels, ${(WIDE / 2).toFixed(2)} + 0.5 / pixels, away);
  gl_FragColor = vec4(mix(metal, line, ink), 1.0);
  #include <colorspace_fragment>
}`;

/** A flat material, seen from both sides. */
export function hatchMaterial({ metal, line }: HatchColours): ShaderMaterial {
  const material = new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: { metal: { value: new Color(metal) }, line: { value: new Color(line) }, pixels: { value: 1 } },
    side: DoubleSide,
    toneMapped: false,
  });
  const [size, buffer] = [new Vector2(), new Vector2()];
  material.onBeforeRender = (renderer: WebGLRenderer) => {
    material.uniforms.pixels.value = renderer.getDrawingBufferSize(buffer).y / renderer.getSize(size).y;
  };
  return material;
}
