/**
 * A small software renderer: a mesh to a PNG that looks like polished silver on a light ground.
 *
 * A z-buffer gives each pixel its triangle and smooth normal; the colour comes from a studio mirrored in the metal,
 * darkened in hollows. Back faces come out magenta, so a hole or a reversed triangle cannot be missed.
 */
import { encode } from "fast-png";
import type { Mesh } from "../../src/mesh/mesh.js";
import { type Camera, makeCamera, pixelRay, projectPoints } from "./render/camera.js";
import { type Ground, makeGround } from "./render/ground.js";
import { cornerNormals } from "./render/normals.js";
import { openness } from "./render/occlusion.js";
import { BACK, FRONT, type Raster, rasterize } from "./render/raster.js";
import { BACKDROP, SILVER, softStudio, studio } from "./render/studio.js";
import { add, cross, dot, normalize, type Vec } from "./render/vector.js";

export interface RenderOptions {
  /** Picture's width, pixels, default 1000. */
  readonly width?: number;
  /** Picture's height, pixels, default 750. */
  readonly height?: number;
  /** Camera's place about the up axis, degrees, default 60. With z up, 0 stands on +x and 90 on +y. */
  readonly azimuth?: number;
  /** Camera's height over the ground, degrees −90 to 90, default 35. */
  readonly elevation?: number;
  /** Enlargement; 1 (default) shows the whole mesh. */
  readonly zoom?: number;
  /** Samples a pixel along each side, default 2. */
  readonly supersample?: number;
  /** Point in the picture's middle, mm; default the middle of the bounding box. */
  readonly target?: Vec;
  /** Axis that points up: z (default) lays a ring on the table, y stands it up. */
  readonly up?: "y" | "z";
  /** Edges sharper than this stay sharp, degrees, default 30. */
  readonly crease?: number;
}

const DEFAULTS = {
  width: 1000,
  height: 750,
  azimuth: 60,
  elevation: 35,
  zoom: 1,
  supersample: 2,
  up: "z",
  crease: 30,
} as const;

/** Magenta, sRGB 0 to 1: a colour that metal and ground never take. */
const BACK_FACE: Vec = [1, 0, 1];

/** How far hollows are looked for, in bounding radii. */
const OCCLUSION_REACH = 0.12;

/** Share of the look that is mirror; the rest is a soft sheen. */
const MIRROR = 0.8;

/** Renders the mesh; returns the bytes of an 8-bit RGB PNG. Vertices must be shared for shading to be smooth. */
export function renderMesh(mesh: Mesh, options: RenderOptions = {}): Uint8Array {
  const { width, height, azimuth, elevation, zoom, supersample, up, crease } = { ...DEFAULTS, ...options };
  const { centre, radius } = boundingSphere(mesh.positions);
  const camera = makeCamera({
    width: width * supersample,
    height: height * supersample,
    azimuth: (azimuth * Math.PI) / 180,
    elevation: (elevation * Math.PI) / 180,
    zoom,
    target: options.target ?? centre,
    radius,
    up,
  });
  const raster = rasterize(
    mesh,
    projectPoints(camera, mesh.positions),
    cornerNormals(mesh, crease),
    camera.width,
    camera.height,
  );
  const open = openness(raster, camera, OCCLUSION_REACH * radius);
  // From below the ground would hide the mesh, so it is left out.
  const ground = elevation > 0 ? makeGround(mesh, camera, centre, radius) : undefined;
  const shade = makeShader(raster, open, camera, ground);

  const data = new Uint8Array(width * height * 3);
  const samples = supersample * supersample;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum: Vec = [0, 0, 0];
      for (let s = 0; s < samples; s++) {
        sum = add(sum, shade(x * supersample + (s % supersample), y * supersample + Math.floor(s / supersample)));
      }
      for (let k = 0; k < 3; k++) data[(y * width + x) * 3 + k] = Math.round((255 * sum[k]) / samples);
    }
  }
  return encode({ width, height, data, depth: 8, channels: 3 });
}

/** The colour of a sample, sRGB 0 to 1. */
function makeShader(raster: Raster, open: Float32Array, camera: Camera, ground: Ground | undefined) {
  const towards = cross(camera.right, camera.up);
  const intoStudio = (d: Vec): Vec => [dot(d, camera.right), dot(d, camera.up), dot(d, towards)];
  return (x: number, y: number): Vec => {
    const at = y * camera.width + x;
    const ray = pixelRay(camera, x, y);
    if (raster.side[at] === BACK) return BACK_FACE;
    if (raster.side[at] !== FRONT) return backdrop(ray);
    let n = normalize([raster.normal[at * 3], raster.normal[at * 3 + 1], raster.normal[at * 3 + 2]]);
    const facing = dot(n, ray);
    // Smooth normals turn away from the eye near the outline: bring them back to the edge.
    if (facing > -0.01) n = normalize(add(n, ray, -facing - 0.01));
    const mirrored = intoStudio(add(ray, n, -2 * dot(ray, n)));
    const sky = open[at];
    const light =
      MIRROR * studio(mirrored) * (0.15 + 0.85 * sky ** 2.2) + (1 - MIRROR) * 1.5 * softStudio(intoStudio(n)) * sky;
    return [tone(light * SILVER[0]), tone(light * SILVER[1]), tone(light * SILVER[2])];
  };

  function backdrop(ray: Vec): Vec {
    const fall = dot(ray, camera.up);
    if (ground === undefined || fall >= 0) return BACKDROP;
    const reach = (ground.level - dot(camera.eye, camera.up)) / fall;
    const sky = ground.skyAt(add(camera.eye, ray, reach));
    const shadow = 0.5 + 0.5 * sky;
    return [BACKDROP[0] * shadow, BACKDROP[1] * shadow, BACKDROP[2] * shadow];
  }
}

/** Linear light to sRGB 0 to 1, highlights rolled off (Reinhard's curve with white at 2.2), then gamma 2.2. */
function tone(light: number): number {
  const rolled = (light * (1 + light / 2.2 ** 2)) / (1 + light);
  return Math.min(1, 1.25 * rolled) ** (1 / 2.2);
}

function boundingSphere(positions: Float64Array): { centre: Vec; radius: number } {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    low[i % 3] = Math.min(low[i % 3], positions[i]);
    high[i % 3] = Math.max(high[i % 3], positions[i]);
  }
  const centre: Vec = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  let radius = 0;
  for (let i = 0; i < positions.length; i += 3) {
    radius = Math.max(
      radius,
      Math.hypot(positions[i] - centre[0], positions[i + 1] - centre[1], positions[i + 2] - centre[2]),
    );
  }
  return { centre, radius };
}
