import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mergeEqualPoints, mergeRoundedPoints, mixBits, roundDistinctPoints, tableSize } from "../../src/mesh/merge.js";
import { SEED } from "../flat/strips.js";

/** Points merged by comparing each with all before it. */
function byComparing(points: readonly (readonly number[])[]) {
  const kept: number[][] = [];
  const indexOf = points.map((point) => {
    const plain = point.map((x) => x + 0);
    const known = kept.findIndex((other) => other.every((x, k) => Object.is(x, plain[k])));
    return known >= 0 ? known : kept.push(plain) - 1;
  });
  return { indexOf, positions: kept.flat() };
}

const few = fc.constantFrom(0, -0, 1, -1, 0.1, 0.1 + 2 ** -30, 1 + 2 ** -30, 1e-310);
const clouds = fc.array(fc.tuple(few, few, few), { maxLength: 60 });

describe("merging equal points", () => {
  it("merges what comparing all pairs merges, −0 as 0, in order of first appearance", () => {
    fc.assert(
      fc.property(clouds, (points) => {
        const { indexOf, positions } = mergeEqualPoints(Float64Array.from(points.flat()));
        expect([...indexOf]).toEqual(byComparing(points).indexOf);
        expect([...positions]).toEqual(byComparing(points).positions);
      }),
      { seed: SEED },
    );
  });

  it("rounds first where that is asked for", () => {
    fc.assert(
      fc.property(clouds, (points) => {
        const rounded = points.map((point) => point.map(Math.fround));
        const { indexOf, positions } = mergeRoundedPoints(Float64Array.from(points.flat()));
        expect([...indexOf]).toEqual(byComparing(rounded).indexOf);
        expect([...positions]).toEqual(byComparing(rounded).positions);
      }),
      { seed: SEED },
    );
  });

  it("leaves its input alone", () => {
    const given = Float64Array.from([-0, 0, 0, 0, 0, 0]);
    mergeEqualPoints(given);
    expect(Object.is(given[0], -0)).toBe(true);
  });

  it("keeps ten thousand points apart, and finds each again, as its table grows", () => {
    const once = Array.from({ length: 10_000 }, (_, i) => [i / 7, i % 13, -i]).flat();
    const { indexOf, positions } = mergeEqualPoints(Float64Array.from([...once, ...once]));
    expect(positions).toEqual(Float64Array.from(once.map((x) => x + 0)));
    expect(indexOf.every((index, i) => index === i % 10_000)).toBe(true);
  });
});

describe("points rounded that must stay apart", () => {
  it("are those of Math.fround, or none where two have become one", () => {
    fc.assert(
      fc.property(clouds, (points) => {
        const rounded = points.map((point) => point.map(Math.fround));
        const apart = byComparing(rounded).positions.length === rounded.flat().length;
        const found = roundDistinctPoints(Float64Array.from(points.flat()));
        expect(found && [...found]).toEqual(apart ? rounded.flat().map((x) => x + 0) : undefined);
      }),
      { seed: SEED },
    );
  });
});

describe("the hash table", () => {
  it("is a power of two and at most half full", () => {
    expect([0, 1, 2, 3, 4, 5, 1000].map(tableSize)).toEqual([2, 2, 4, 8, 8, 16, 2048]);
  });

  it("mixes bits as the published finaliser does: no two numbers alike, one bit changed changes half of all", () => {
    // MurmurHash3's fmix32 (A. Appleby, public domain): 0 stays 0, 1 becomes 0x514e28b7.
    expect([mixBits(0), mixBits(1)]).toEqual([0, 0x514e28b7]);
    expect(new Set(Array.from({ length: 5000 }, (_, i) => mixBits(i))).size).toBe(5000);
  });
});
