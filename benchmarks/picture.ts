/**
 * Times a picture of half a million triangles, and the PNG that is made of it.
 */
import { type Mesh, triangleCount } from "../src/mesh/mesh.js";
import { type Picture, takePicture } from "../src/output/picture/picture.js";
import { encodePng } from "../src/output/picture/png.js";
import type { Effort } from "./effort.js";
import { type Timing, timeTask } from "./time-task.js";
import { torus } from "./torus.js";

export interface PictureTimings {
  readonly triangles: number;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Share of the pixels that the ring covers: what it is checked by. */
  readonly covered: number;
  readonly timings: readonly Timing[];
}

/** 2 · 1000 · 250 triangles. */
const TORUS = { around: 1000, across: 250 };

/** Four samples a pixel. */
const SIZE = { width: 1600, height: 1200, supersample: 2 } as const;

export async function timePicture(effort: Effort): Promise<PictureTimings> {
  process.stderr.write("picture\n");
  const mesh = torus(TORUS.around, TORUS.across);
  const name = `${SIZE.width} × ${SIZE.height}, ${SIZE.supersample ** 2} samples a pixel`;
  const taken = await timeTask({ name, run: () => takePicture(mesh, SIZE) }, effort);
  const written = await timeTask({ name: "its PNG", run: () => encodePng(taken.result) }, effort);
  return {
    triangles: triangleCount(mesh),
    width: SIZE.width,
    height: SIZE.height,
    covered: coverOf(mesh),
    timings: [taken.timing, written.timing],
  };
}

function coverOf(mesh: Mesh): number {
  const { pixels }: Picture = takePicture(mesh, { ...SIZE, ground: "clear" });
  let sum = 0;
  for (let i = 3; i < pixels.length; i += 4) sum += pixels[i] / 255;
  return sum / (pixels.length / 4);
}
