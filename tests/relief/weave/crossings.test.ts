import { describe, expect, it } from "vitest";
import { findCrossings } from "../../../src/relief/weave/crossings.js";
import { failureOf } from "../../flat/strips.js";
import { lineOf, loopOf, trefoil } from "./knots.js";

const count = (...strands: Parameters<typeof findCrossings>[0]) => findCrossings(strands, [-100, 100], "weave").length;

describe("crossings", () => {
  it("lie where lines cross, with the angle and place on each", () => {
    const [found, ...rest] = findCrossings(
      [
        lineOf([
          [0, 0],
          [4, 0],
        ]),
        lineOf([
          [1, -1],
          [3, 1],
        ]),
      ],
      [-100, 100],
      "weave",
    );
    expect(rest).toEqual([]);
    expect(found.at).toEqual([2, 0]);
    const [level, steep] = [...found.passes].sort((a, b) => a.strand - b.strand);
    expect([level.s, level.angle]).toEqual([2, 0]);
    expect(steep.s).toBeCloseTo(Math.SQRT2, 12);
    expect(steep.angle).toBeCloseTo(Math.PI / 4, 12);
  });

  it.each([
    [
      "in a vertex of one",
      [
        [0, 0],
        [2, 0],
        [4, 0],
      ],
      [
        [2, -1],
        [2, 1],
      ],
      1,
    ],
    [
      "in a vertex of both",
      [
        [0, 0],
        [2, 0],
        [4, 0],
      ],
      [
        [2, -1],
        [2, 0],
        [2, 1],
      ],
      1,
    ],
    [
      "in a corner of both, side by side",
      [
        [0, 1],
        [2, 0],
        [4, 1],
      ],
      [
        [0, -1],
        [2, 0],
        [4, -1],
      ],
      0,
    ],
    [
      "in a corner of both, through",
      [
        [0, 1],
        [2, 0],
        [4, -1],
      ],
      [
        [0, -1],
        [2, 0],
        [4, 1],
      ],
      1,
    ],
    [
      "with an end of one",
      [
        [0, 0],
        [4, 0],
      ],
      [
        [2, 0],
        [2, 1],
      ],
      0,
    ],
    [
      "along each other",
      [
        [0, 0],
        [4, 0],
      ],
      [
        [1, 0],
        [3, 0],
      ],
      0,
    ],
    [
      "nowhere",
      [
        [0, 0],
        [4, 0],
      ],
      [
        [1, 1],
        [3, 1],
      ],
      0,
    ],
  ] as [string, [number, number][], [number, number][], number][])("of lines that meet %s", (_, a, b, wanted) => {
    expect(count(lineOf(a), lineOf(b))).toBe(wanted);
  });

  it("of a line with itself: three of the trefoil, one of a curl, none of a circle", () => {
    expect(count(trefoil)).toBe(3);
    expect(
      count(
        lineOf([
          [0, 0],
          [3, 0],
          [3, 2],
          [2, 2],
          [2, -1],
        ]),
      ),
    ).toBe(1);
    expect(count(loopOf((t) => [Math.cos(t), Math.sin(t)]))).toBe(0);
  });

  it("that are too many are refused before they stall", () => {
    const comb = (turn: boolean) =>
      lineOf(
        Array.from({ length: 400 }, (_, i): [number, number] => {
          const [along, across] = [Math.floor(i / 2) * 0.05, (i + (i >> 1)) % 2 === 0 ? 0 : 10];
          return turn ? [across, along] : [along, across];
        }),
      );
    const error = failureOf(() => count(comb(false), comb(true)));
    expect([error.code, error.path]).toEqual(["weave-too-fine", "weave"]);
    const tangle = lineOf(Array.from({ length: 20000 }, (_, i): [number, number] => [i % 2 === 0 ? 0 : 5, i / 1e4]));
    expect(failureOf(() => count(tangle)).code).toBe("weave-too-fine");
  });
});
