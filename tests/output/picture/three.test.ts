// Covers: src/output/picture/mirrored.ts
/**
 * The same geometry, camera, metal and studio in three (MeshStandardMaterial with an environment map, Chromium's software
 * WebGL) at the same exposure. three knows neither what the ring mirrors of itself nor its hollows, so the ball, which has
 * neither, is compared closely and the band by its outline and the course of its light.
 */
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { build, type Mesh, type Picture, takePicture, views } from "../../../src/index.js";
import { findAlloy } from "../../../src/measure/alloys/catalogue.js";
import { lookOf } from "../../../src/measure/alloys/look.js";
import { fromSrgb } from "../../../src/output/picture/tone.js";
import { hasBrowser, runInBrowser } from "../../support/browser.js";
import { sphere } from "../../support/meshes.js";

const [WIDTH, HEIGHT] = [320, 240];

/** So low that the tone curve is straight: both then show light in proportion. */
const EXPOSURE = 0.18;

const STUDIO = fileURLToPath(new URL("../../../src/output/picture/studio.ts", import.meta.url));

/** Renders meshes as the picture's camera sees a standing ring whose box has its middle at the origin. */
function pageOf(meshes: readonly Mesh[]): string {
  const { azimuth, elevation } = views["three-quarter"];
  const data = meshes.map(({ positions, triangles }) => ({ positions: [...positions], triangles: [...triangles] }));
  return `
import * as three from "three";
import { toBufferGeometry } from "annulet/three";
import { studioLight } from ${JSON.stringify(STUDIO)};
const [WIDTH, HEIGHT] = [${WIDTH}, ${HEIGHT}];
const turn = (${azimuth} * Math.PI) / 180;

/** The studio on a sheet of longitude and latitude, turned with the camera as the picture's studio is. */
function environment() {
  const [w, h] = [1024, 512];
  const data = new Float32Array(4 * w * h);
  const out = new Float64Array(3);
  for (let j = 0; j < h; j++) {
    for (let i = 0; i < w; i++) {
      // three: u = atan2(z, x) / 2π + ½, v = asin(y) / π + ½.
      const long = ((i + 0.5) / w - 0.5) * 2 * Math.PI;
      const lat = ((j + 0.5) / h - 0.5) * Math.PI;
      const [x, y, z] = [Math.cos(lat) * Math.cos(long), Math.sin(lat), Math.cos(lat) * Math.sin(long)];
      // The studio's axes: towards = (sin, 0, cos), right = (cos, 0, −sin).
      studioLight(x * Math.cos(turn) - z * Math.sin(turn), y, x * Math.sin(turn) + z * Math.cos(turn), out);
      data.set([out[0], out[1], out[2], 1], 4 * (j * w + i));
    }
  }
  const texture = new three.DataTexture(data, w, h, three.RGBAFormat, three.FloatType);
  texture.mapping = three.EquirectangularReflectionMapping;
  texture.minFilter = texture.magFilter = three.LinearFilter;
  texture.needsUpdate = true;
  return texture;
}

export function run() {
  const renderer = new three.WebGLRenderer({ antialias: true, preserveDrawingBuffer: true, alpha: true });
  renderer.setSize(WIDTH, HEIGHT);
  renderer.setClearColor(0, 0);
  renderer.toneMapping = three.LinearToneMapping;
  renderer.toneMappingExposure = ${EXPOSURE};
  const scene = new three.Scene();
  scene.environment = new three.PMREMGenerator(renderer).fromEquirectangular(environment()).texture;
  const [r, g, b] = ${JSON.stringify(lookOf(findAlloy("au999")).colour)};
  const material = new three.MeshStandardMaterial({ color: new three.Color().setRGB(r, g, b, three.LinearSRGBColorSpace), metalness: 1, roughness: 0 });
  return ${JSON.stringify(data)}.map(({ positions, triangles }) => {
    const geometry = toBufferGeometry({ positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) }, { crease: (42 * Math.PI) / 180 });
    const array = geometry.attributes.position.array;
    let radius = 0;
    for (let i = 0; i < array.length; i += 3) radius = Math.max(radius, Math.hypot(array[i], array[i + 1], array[i + 2]));
    const focal = (0.88 * HEIGHT * Math.sqrt(48)) / 2;
    const camera = new three.PerspectiveCamera((2 * Math.atan(HEIGHT / 2 / focal) * 180) / Math.PI, WIDTH / HEIGHT, radius, 20 * radius);
    const [flat, up] = [Math.cos((${elevation} * Math.PI) / 180), Math.sin((${elevation} * Math.PI) / 180)];
    camera.position.set(7 * radius * flat * Math.sin(turn), 7 * radius * up, 7 * radius * flat * Math.cos(turn));
    camera.lookAt(0, 0, 0);
    const mesh = new three.Mesh(geometry, material);
    scene.add(mesh);
    renderer.render(scene, camera);
    scene.remove(mesh);
    const gl = renderer.getContext();
    const pixels = new Uint8Array(4 * WIDTH * HEIGHT);
    gl.readPixels(0, 0, WIDTH, HEIGHT, gl.RGBA, gl.UNSIGNED_BYTE, pixels);
    return Array.from(pixels);
  });
}`;
}

/** three's lines run from the bottom; its colours are multiplied by alpha. */
function upright(pixels: readonly number[]): Picture {
  const turned = new Uint8Array(pixels.length);
  for (let y = 0; y < HEIGHT; y++) {
    turned.set(pixels.slice(4 * (HEIGHT - 1 - y) * WIDTH, 4 * (HEIGHT - y) * WIDTH), 4 * y * WIDTH);
  }
  return { width: WIDTH, height: HEIGHT, pixels: turned };
}

/** Light of each channel, 0 to 1, of the pixels that both cover whole, in the topmost lines. */
function lightOfBoth(ours: Picture, theirs: Picture, lines: number) {
  const light: (readonly [number, number])[] = [];
  for (let i = 0; i < 4 * WIDTH * lines; i += 4) {
    if (ours.pixels[i + 3] < 255 || theirs.pixels[i + 3] < 255) continue;
    for (let k = 0; k < 3; k++) light.push([fromSrgb(ours.pixels[i + k] / 255), fromSrgb(theirs.pixels[i + k] / 255)]);
  }
  return light;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function meanRatio(pairs: readonly (readonly [number, number])[]): number {
  return meanOf(pairs.map(([a]) => a)) / meanOf(pairs.map(([, b]) => b));
}

function correlation(pairs: readonly (readonly [number, number])[]): number {
  const [a, b] = [meanOf(pairs.map(([p]) => p)), meanOf(pairs.map(([, q]) => q))];
  let [ab, aa, bb] = [0, 0, 0];
  for (const [p, q] of pairs) {
    ab += (p - a) * (q - b);
    aa += (p - a) ** 2;
    bb += (q - b) ** 2;
  }
  return ab / Math.sqrt(aa * bb);
}

/** Pixels that either covers by more than half over those that both do. */
function overlap(ours: Picture, theirs: Picture): number {
  let [both, either] = [0, 0];
  for (let i = 3; i < ours.pixels.length; i += 4) {
    const [a, b] = [ours.pixels[i] > 127, theirs.pixels[i] > 127];
    if (a && b) both++;
    if (a || b) either++;
  }
  return both / either;
}

describe.skipIf(!hasBrowser())("beside three", () => {
  const pairs: { ours: Picture; theirs: Picture }[] = [];

  beforeAll(async () => {
    const band = await build({
      annulet: 1,
      name: "invented band",
      size: { system: "iso", value: 54 },
      profile: { width: 5, thickness: 2, outside: { form: "domed", rise: 0.7, edge: 0.3 } },
    });
    const meshes = [sphere(6, 60, 120), band.mesh];
    const theirs = (await runInBrowser(pageOf(meshes))) as number[][];
    meshes.forEach((mesh, i) => {
      const options = {
        width: WIDTH,
        height: HEIGHT,
        material: "au999",
        ground: "clear",
        exposure: EXPOSURE,
        supersample: 4,
      } as const;
      pairs.push({ ours: takePicture(mesh, options), theirs: upright(theirs[i]) });
    });
  });

  it("draws the same outlines", () => {
    for (const { ours, theirs } of pairs) expect(overlap(ours, theirs)).toBeGreaterThan(0.99);
  });

  it("lights a ball the same, but for the shadow that its lower half mirrors", () => {
    const [{ ours, theirs }] = pairs;
    const light = lightOfBoth(ours, theirs, HEIGHT / 2);
    expect(light.length).toBeGreaterThan(40_000);
    expect(Math.abs(meanRatio(light) - 1)).toBeLessThan(0.02);
    expect(correlation(light)).toBeGreaterThan(0.995);
  });

  it("lights a band alike, darker where it mirrors itself", () => {
    const { ours, theirs } = pairs[1];
    const light = lightOfBoth(ours, theirs, HEIGHT);
    expect(meanRatio(light)).toBeGreaterThan(0.85);
    expect(meanRatio(light)).toBeLessThan(1);
    expect(correlation(light)).toBeGreaterThan(0.95);
  });
});
