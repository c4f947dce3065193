import { describe, expect, it } from "vitest";
import type { Motion } from "../../src/flat/motion.js";
import type { Pattern } from "../../src/pattern/laid-out.js";
import { joinPatterns, placePattern } from "../../src/pattern/move.js";
import type { FlatBody } from "../../src/relief/flat-body.js";

const body: FlatBody = {
  mode: "raised",
  names: ["leaf"],
  path: "pattern.regions[0]",
  made: "flat",
  upright: false,
  top: [],
  surface: undefined,
  outline: [
    [
      [
        [0, 0, 1],
        [2, 0, 1],
        [2, 1, 1],
      ],
    ],
  ],
  throat: [],
  seam: undefined,
  period: undefined,
  copies: 1,
  height: 1,
  rise: undefined,
  fade: undefined,
};
const pattern = (more: Partial<Pattern> = {}): Pattern => ({
  bodies: [body],
  beadLines: [],
  height: 1,
  repeats: 6,
  holes: 2,
  ...more,
});

/** u of all corners of a pattern's bodies, body by body. */
const along = ({ bodies }: Pattern) =>
  bodies.map(({ outline }) =>
    outline
      .flat(2)
      .map(([u]) => u)
      .sort((a, b) => a - b),
  );

describe("a pattern in its places", () => {
  const places: Motion[] = [
    { u: 10, v: 0, mirrored: false, flipped: false },
    { u: 30, v: 0, mirrored: true, flipped: false },
  ];

  it("has each body in each place, mirrored where the place is, and as many holes more", () => {
    const placed = placePattern(pattern(), places);
    expect(along(placed)).toEqual([
      [10, 12, 12],
      [28, 28, 30],
    ]);
    expect(placed).toMatchObject({ height: 1, repeats: 6, holes: 4 });
  });

  it("keeps the order of work: all places of a body before the next body", () => {
    const cut = { ...body, mode: "sunk" as const };
    const { bodies } = placePattern(pattern({ bodies: [body, cut] }), places);
    expect(bodies.map(({ mode }) => mode)).toEqual(["raised", "raised", "sunk", "sunk"]);
  });

  it("in no place has nothing", () => {
    expect(placePattern(pattern(), [])).toMatchObject({ bodies: [], holes: 0 });
  });
});

describe("patterns beside each other", () => {
  it("come again as one as often as they all do: by the greatest common divisor", () => {
    const repeats = (...each: number[]) => joinPatterns(each.map((n) => pattern({ repeats: n }))).repeats;
    expect([repeats(12, 18), repeats(12, 18, 8), repeats(7, 9), repeats(5), repeats(6, 1)]).toEqual([6, 2, 1, 5, 1]);
  });

  it("have all bodies, the highest height and the sum of the holes", () => {
    const joined = joinPatterns([
      pattern({ height: 0.5 }),
      pattern({ height: 2, holes: 3 }),
      pattern({ bodies: [], height: 0, holes: 0 }),
    ]);
    expect(joined).toMatchObject({ height: 2, holes: 5 });
    expect(joined.bodies).toEqual([body, body]);
  });
});
