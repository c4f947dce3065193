import { describe, expect, it } from "vitest";
import { seeded } from "../../../src/base/math/seeded.js";

const COUNT = 16_384;
const row = (seed: number, channel = 0) => Array.from({ length: COUNT }, (_, i) => seeded(seed, i, channel));
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Share by which two rows go together, −1 to 1. */
function correlation(a: readonly number[], b: readonly number[]): number {
  const [ma, mb] = [mean(a), mean(b)];
  const product = mean(a.map((value, i) => (value - ma) * (b[i] - mb)));
  return product / Math.sqrt(mean(a.map((value) => (value - ma) ** 2)) * mean(b.map((value) => (value - mb) ** 2)));
}

describe("numbers from a seed", () => {
  it("are these, on every machine", () => {
    const words = [seeded(1, 0, 0), seeded(1, 1, 0), seeded(1, 0, 1), seeded(2 ** 32 - 1, 7, 2)].map(
      (n) => n * 2 ** 32,
    );
    expect(words).toEqual([131_154_711, 3_877_418_086, 968_967_739, 1_290_084_684]);
  });

  it.each([0, 1, 2 ** 32 - 1])("are spread evenly from seed %i: χ² of 64 boxes", (seed) => {
    const boxes = new Array<number>(64).fill(0);
    for (const number of row(seed)) {
      boxes[Math.floor(number * 64)]++;
    }
    expect(boxes).toHaveLength(64);
    const chi = boxes.reduce((sum, count) => sum + (count - COUNT / 64) ** 2 / (COUNT / 64), 0);
    // 63 degrees of freedom: 99.9 % lie below 103.4, and 0.1 % below 32.7.
    expect(chi).toBeLessThan(103.4);
    expect(chi).toBeGreaterThan(32.7);
  });

  it("have nothing to do with those of another seed, channel, or beside them", () => {
    const most = 4 / Math.sqrt(COUNT);
    const own = row(1);
    for (const other of [row(2), row(1, 1), row(1, 2), row(2 ** 31), [...own.slice(1), own[0]]]) {
      expect(Math.abs(correlation(own, other))).toBeLessThan(most);
    }
  });
});
