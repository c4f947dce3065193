/**
 * Where an image meets itself: whether its two ends fit, and the blend that makes them.
 */
import { AnnuletError } from "../../base/errors.js";
import { smoothStep } from "../../base/math/smooth-step.js";
import { showLength } from "../../base/units.js";
import { emptyGrid, type NumberGrid } from "./number-grid.js";

/**
 * Checks that the last column goes over into the first: the step between them may be as large as the steps beside it in
 * the same line, and by the tolerance larger.
 *
 * @param across what the ends are called
 * @throws AnnuletError `image-seam` with the largest difference and its place
 */
export function requireSeam(
  { width, height, data }: NumberGrid,
  options: { readonly tolerance: number; readonly ends: string; readonly name: string; readonly path: string },
): void {
  const { tolerance, ends, name, path } = options;
  let [worst, most, line] = [0, 0, 0];
  for (let y = 0; y < height; y++) {
    const at = (x: number) => data[y * width + Math.min(width - 1, Math.max(0, x))];
    const step = Math.abs(at(0) - at(width - 1));
    const beside = Math.abs(at(1) - at(0)) + Math.abs(at(width - 1) - at(width - 2));
    if (step - beside <= worst) continue;
    [worst, most, line] = [step - beside, step, y];
  }
  if (worst <= tolerance) return;
  throw new AnnuletError({
    code: "image-seam",
    message: `the ${ends} of ${name} do not meet: their heights differ by up to ${showLength(most)}, ${line + 1} of ${height} pixels along them`,
    path,
    value: Number(most.toFixed(3)),
    allowed: `a step of at most ${showLength(tolerance)} beyond those beside it`,
    hint: 'draw the image so that it repeats, say "seam": {"blend": 0.5} to let its ends overlap and blend, or take a symmetry with mirrors',
  });
}

/**
 * Lets the two ends of every line overlap and go over into each other smoothly.
 *
 * @param share of the period that they overlap, above 0
 */
export function blendSeam({ width, height, data }: NumberGrid, share: number): NumberGrid {
  const overlap = Math.max(1, Math.min(Math.floor(width / 2), Math.round((width * share) / (1 + share))));
  const blended = emptyGrid(width - overlap, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width - overlap; x++) {
      const own = data[y * width + x];
      const other = data[y * width + width - overlap + x];
      const part = x < overlap ? smoothStep((x + 0.5) / overlap) : 1;
      blended.data[y * (width - overlap) + x] = part * own + (1 - part) * (x < overlap ? other : 0);
    }
  }
  return blended;
}
