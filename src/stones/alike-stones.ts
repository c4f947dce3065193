/**
 * Whether stones come again under a turn or a mirror: each has its image among them, as large, cut and set alike, and turned so
 * that its own corners, grains and prongs come to lie on the other's.
 */
import { vec3 } from "gl-matrix";
import { type AboutAxis, broughtBy, turnAbout } from "../base/math/about-axis.js";
import type { Point3 } from "../base/math/point.js";
import { PointGrid } from "../base/math/point-grid.js";
import { radians, TURN } from "../base/units.js";
import type { SettingSpec } from "../design/stones/setting.js";
import type { CutName } from "../gems/stone.js";
import type { PlacedStone } from "./placed-stone.js";

/** An image is this near to what it is the image of, mm: places are told by one formula, so they differ by rounding alone. */
const SAME = 1e-5;

/** Unit vectors that point the same way differ by less. */
const SAME_WAY = 1e-5;

/** @param by a turn about the finger axis, or a mirror that keeps it */
export function stonesComeAgain(stones: readonly PlacedStone[], by: AboutAxis): boolean {
  const grid = new PointGrid<PlacedStone>(SAME);
  for (const stone of stones) grid.add(stone.at, stone);
  return stones.every((stone) => {
    const at = broughtBy(by, stone.at);
    return grid.near(at).some((other) => apart(other.at, at) <= SAME && isImage(stone, other, by));
  });
}

function isImage(stone: PlacedStone, other: PlacedStone, by: AboutAxis): boolean {
  if (stone.group !== other.group || apart(broughtBy(by, stone.out), other.out) > SAME_WAY) return false;
  const [one, two] = [stone.stone, other.stone];
  if (Math.abs(one.length - two.length) > SAME || Math.abs(one.width - two.width) > SAME) return false;
  if (Math.abs(stone.level - other.level) > SAME) return false;
  const [ways, others] = [waysOf(stone), waysOf(other)];
  return ways.every((way) => others.some((there) => apart(broughtBy(by, way), there) <= SAME_WAY));
}

/** Directions in which a stone or its setting differs from what it would be turned about its axis. */
function waysOf({ stone, setting, along, out }: PlacedStone): Point3[] {
  const across = vec3.cross([0, 0, 0], out, along);
  return [...CORNERS[stone.cut], ...anglesOf(setting)].map((angle) => {
    const [cos, sin] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
    const [x, y, z] = [0, 1, 2].map((k) => cos * along[k] + sin * across[k]);
    return [x, y, z];
  });
}

/** Directions of a cut, degrees from its length, that come again where it is its own image. */
const CORNERS: Readonly<Record<CutName, readonly number[]>> = {
  round: [],
  oval: [0, 180],
  marquise: [0, 180],
  pear: [0],
  princess: [0, 90, 180, 270],
  "square-step": [0, 90, 180, 270],
  emerald: [0, 180],
  baguette: [0, 180],
  "tapered-baguette": [0],
  cabochon: [0, 180],
};

/** Where a setting has something at an angle, degrees from the stone's length. */
function anglesOf(setting: SettingSpec): number[] {
  const even = (count: number, first: number) => Array.from({ length: count }, (_, i) => first + (360 * i) / count);
  if (setting.form === "prongs") return even(setting.count, setting.turn);
  if (setting.form === "bead-set" && setting.ready === "full")
    return even(setting.grains, setting.grains === 4 ? 45 : 90);
  return [];
}

/** The most equal parts of the round, dividing a number, by which stones come again. */
export function stoneUnits(stones: readonly PlacedStone[], most: number): number {
  for (let units = most; units > 1; units--) {
    if (most % units === 0 && stonesComeAgain(stones, turnAbout(TURN / units))) return units;
  }
  return 1;
}

function apart([ax, ay, az]: Point3, [bx, by, bz]: Point3): number {
  return Math.hypot(ax - bx, ay - by, az - bz);
}
