import { describe, expect, test } from "vitest";
import { MIDDLE_MIRROR, mirrorAt, turnAbout } from "../../src/base/math/about-axis.js";
import { radians, TURN } from "../../src/base/units.js";
import { stonesComeAgain, stoneUnits } from "../../src/stones/alike-stones.js";
import type { PlacedStone } from "../../src/stones/placed-stone.js";
import { setOnFlat } from "../support/set-group.js";

const flush = { form: "flush" };
const across = mirrorAt(TURN / 4);
const rowOf = (document: Record<string, unknown>) => setOnFlat(document, { count: 12 }).stones;

describe("a row all round", () => {
  const stones = rowOf({ size: 1.5, setting: flush });

  test("comes again as often as it has stones, and in its divisors", () => {
    expect(stoneUnits(stones, 12)).toBe(12);
    expect(stoneUnits(stones, 8)).toBe(4);
    expect(stonesComeAgain(stones, turnAbout(TURN / 5))).toBe(false);
    expect(stonesComeAgain(stones, across)).toBe(true);
  });

  test.each<[string, (stone: PlacedStone) => PlacedStone]>([
    [
      "stands a fiftieth of a millimetre farther on",
      ({ at: [x, y, z], ...rest }) => ({ ...rest, at: [x, y, z + 0.02] }),
    ],
    ["is larger", (stone) => ({ ...stone, stone: { ...stone.stone, width: 1.52, length: 1.52 } })],
    ["stands higher", (stone) => ({ ...stone, level: 0.02 })],
    ["leans", (stone) => ({ ...stone, out: [0, Math.cos(0.01), Math.sin(0.01)] })],
    ["is of another group", (stone) => ({ ...stone, group: 1 })],
  ])("does not where one %s", (_, change) => {
    expect(stoneUnits([change(stones[0]), ...stones.slice(1)], 12)).toBe(1);
  });
});

test("what a stone is turned by does not matter where it is round, but where it has corners or prongs", () => {
  const turned = (stones: readonly PlacedStone[]) => {
    const [first, ...rest] = stones;
    const angle = radians(20);
    const { along, out, at } = first;
    const side = [
      out[1] * along[2] - out[2] * along[1],
      out[2] * along[0] - out[0] * along[2],
      out[0] * along[1] - out[1] * along[0],
    ];
    const [x, y, z] = along.map((a, k) => Math.cos(angle) * a + Math.sin(angle) * side[k]);
    return [{ ...first, at, along: [x, y, z] as const }, ...rest];
  };
  expect(stoneUnits(turned(rowOf({ size: 1.5, setting: flush })), 12)).toBe(12);
  expect(stoneUnits(turned(rowOf({ cut: "princess", size: 1.5, setting: flush })), 12)).toBe(1);
  expect(stoneUnits(turned(rowOf({ size: 1.5, level: 0.5, setting: { form: "prongs" } })), 12)).toBe(1);
});

test("a mirror keeps prongs that stand evenly about the stone's length, and no others; nor a pear that points along", () => {
  const prongs = (turn: number) => rowOf({ size: 1.5, level: 0.5, setting: { form: "prongs", turn } });
  expect(stonesComeAgain(prongs(45), across)).toBe(true);
  expect(stonesComeAgain(prongs(30), across)).toBe(false);
  expect(stonesComeAgain(rowOf({ cut: "pear", size: 2, setting: flush }), across)).toBe(false);
  expect(stonesComeAgain(rowOf({ cut: "pear", size: 2, setting: flush }), MIDDLE_MIRROR)).toBe(true);
});
