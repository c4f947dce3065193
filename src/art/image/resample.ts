/**
 * Weights by which pixels become samples: where samples are coarser, the mean over each sample's span; where they are
 * finer, the cubic through four pixels (Catmull and Rom, 1974: C1 and through every pixel), kept between the four so that
 * it does not overshoot at a cliff.
 */
import type { Taps } from "./number-grid.js";

/**
 * The taps of samples.
 *
 * @param places where the samples lie, in pixels from the line's beginning: the first pixel's middle is at ½
 * @param step pixels from sample to sample
 */
export function sampleTaps(places: readonly number[], step: number): Taps[] {
  return places.map((place) => (step > 1 ? meanTaps(place, step) : cubicTaps(place)));
}

function meanTaps(place: number, step: number): Taps {
  const [low, high] = [place - step / 2, place + step / 2];
  const first = Math.floor(low);
  const weights: number[] = [];
  for (let pixel = first; pixel < high; pixel++) {
    weights.push((Math.min(pixel + 1, high) - Math.max(pixel, low)) / step);
  }
  return { first, weights, bounded: false };
}

function cubicTaps(place: number): Taps {
  const before = Math.floor(place - 0.5);
  const t = place - 0.5 - before;
  const weights = [
    (-t + 2 * t ** 2 - t ** 3) / 2,
    (2 - 5 * t ** 2 + 3 * t ** 3) / 2,
    (t + 4 * t ** 2 - 3 * t ** 3) / 2,
    (-(t ** 2) + t ** 3) / 2,
  ];
  return { first: before - 1, weights, bounded: true };
}

/** The Gaussian is cut off beyond this many standard deviations: 0.3 % of it lies there. */
const REACH = 3;

/** Taps that smooth a line of `count` samples by a Gaussian. */
export function smoothTaps(count: number, deviation: number): Taps[] {
  const reach = Math.ceil(REACH * deviation);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * deviation ** 2)));
  const total = bell.reduce((sum, weight) => sum + weight, 0);
  const weights = bell.map((weight) => weight / total);
  return Array.from({ length: count }, (_, i) => ({ first: i - reach, weights, bounded: false }));
}
