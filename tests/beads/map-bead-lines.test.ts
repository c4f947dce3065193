import { describe, expect, it } from "vitest";
import type { BeadLines } from "../../src/beads/bead-lines.js";
import { mapBeadLines } from "../../src/beads/map-bead-lines.js";
import { STAY } from "../../src/flat/motion.js";

const run: BeadLines = {
  run: "edge",
  path: "pattern.regions[0].beads",
  lines: [
    {
      points: [
        [1, 2],
        [3, 5],
      ],
      kind: "open",
      even: true,
      reverses: true,
    },
    {
      points: [
        [0, 0],
        [1, 0],
        [0, 1],
      ],
      kind: "loop",
      even: false,
    },
  ],
  copies: 6,
  bead: {
    diameter: 0.3,
    pitch: 1.2,
    count: undefined,
    embed: 0.5,
    to: undefined,
    alternate: undefined,
    corners: "pass",
    cornerAngle: 0.5,
    shares: false,
  },
  height: 0.4,
};

describe("bead lines mapped", () => {
  it("stand in every place, line by line, and keep what has no place", () => {
    const places = [
      { ...STAY, u: 10 },
      { u: 20, v: 1, mirrored: true, flipped: false },
    ];
    const mapped = mapBeadLines(run, { places, lift: 0 });
    expect(mapped).toEqual({
      ...run,
      lines: [
        {
          ...run.lines[0],
          points: [
            [11, 2],
            [13, 5],
          ],
        },
        {
          ...run.lines[0],
          points: [
            [19, 3],
            [17, 6],
          ],
        },
        {
          ...run.lines[1],
          points: [
            [10, 0],
            [11, 0],
            [10, 1],
          ],
        },
        {
          ...run.lines[1],
          points: [
            [20, 1],
            [19, 1],
            [20, 2],
          ],
        },
      ],
    });
  });

  it("go up with what carries them", () => {
    expect(mapBeadLines(run, { places: [STAY], lift: 0.1 })).toEqual({ ...run, height: 0.5 });
  });
});
