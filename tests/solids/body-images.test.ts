import { describe, expect, it } from "vitest";
import type { Point2, Point3 } from "../../src/base/math/point.js";
import { FORGET, Memory } from "../../src/base/memory.js";
import { type Motion, STAY } from "../../src/flat/motion.js";
import { type FlatBody, moveBody } from "../../src/relief/flat-body.js";
import { bodyImages } from "../../src/solids/body-images.js";

/** mm */
const [ROUND, SAME, HEIGHT] = [60, 0.02, 0.4];

const ACROSS: Motion = { ...STAY, mirrored: true };
const ALONG: Motion = { ...STAY, flipped: true };

function bodyOf(rings: readonly (readonly Point2[])[], parts: Partial<FlatBody> = {}): FlatBody {
  return {
    mode: "raised",
    names: ["part"],
    path: "pattern.regions[0]",
    made: "flat",
    upright: false,
    top: [],
    surface: undefined,
    outline: [rings.map((ring) => ring.map(([u, v]): Point3 => [u, v, HEIGHT]))],
    throat: [],
    seam: undefined,
    period: undefined,
    copies: 1,
    height: HEIGHT,
    rise: undefined,
    fade: undefined,
    ...parts,
  };
}

/** A triangle that is no image of itself. */
const wedge: readonly Point2[] = [
  [2, 0.5],
  [5, 0.8],
  [3, 2],
];

const oblong = (left: number, right: number, low: number, high: number): Point2[] => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];

const images = (bodies: readonly FlatBody[], motion = ACROSS) =>
  bodyImages(bodies, { motion, round: ROUND, same: SAME, remember: FORGET });

const wedgeBody = (parts: Partial<FlatBody> = {}) => bodyOf([wedge], parts);
const pairOf = (parts: Partial<FlatBody>, motion = ACROSS) => [
  wedgeBody(),
  moveBody({ ...wedgeBody(), ...parts }, motion),
];

describe("the images of bodies", () => {
  it("are each other, left and right or above and below, in any order, or each its own", () => {
    expect(images(pairOf({}))).toEqual([1, 0]);
    expect(images(pairOf({}, ALONG), ALONG)).toEqual([1, 0]);
    const own = bodyOf([oblong(-1, 1, -1, 1)]);
    const [one, other] = pairOf({});
    expect(images([one, own, other])).toEqual([2, 1, 0]);
    expect(images([own], ALONG)).toEqual([0]);
    expect(images(pairOf({}), ALONG)).toBeUndefined();
    expect(images([wedgeBody()])).toBeUndefined();
  });

  it.each<[string, Partial<FlatBody>]>([
    ["higher", { height: HEIGHT + 2 * SAME }],
    ["of another section", { made: "domed" }],
    ["sunk", { mode: "sunk" }],
    ["of a weave, over here and under there", { made: undefined }],
    ["one that rises", { rise: { at: () => 0.1, from: 0, step: 1, tolerance: 0.01 } }],
    ["one of heights", { surface: { top: { points: [], triangles: [] }, foot: { points: [], triangles: [] } } }],
    ["one that fades", { fade: { ends: [-20, 20], length: 3, tolerance: 0.01 } }],
    ["one that comes again more often", { copies: 2 }],
    ["pieces that come again", { period: 20 }],
  ])("are not a body and one %s", (_, parts) => {
    expect(images(pairOf(parts))).toBeUndefined();
  });

  it("are not what is worked before a cut and what is worked after it", () => {
    const cut = bodyOf([oblong(-8, 8, -3, 3)], { mode: "sunk" });
    const [one, other] = pairOf({});
    expect(images([one, cut, other])).toBeUndefined();
    expect(images([one, other, cut])).toEqual([1, 0, 2]);
  });

  it("are not a hollow and a hole, which are worked together", () => {
    const cuts = (mode: "sunk" | "pierced") => [wedgeBody({ mode: "sunk" }), moveBody(wedgeBody({ mode }), ACROSS)];
    expect(images(cuts("sunk"))).toEqual([1, 0]);
    expect(images(cuts("pierced"))).toBeUndefined();
  });

  it("are asked both ways: one may have all of the other's sides and more", () => {
    const hole = oblong(3, 3.4, 0.9, 1.2).toReversed();
    const [plain, holed] = [wedgeBody(), bodyOf([wedge, hole])];
    for (const pair of [
      [plain, moveBody(holed, ACROSS)],
      [holed, moveBody(plain, ACROSS)],
    ])
      expect(images(pair)).toBeUndefined();
    expect(images([holed, moveBody(holed, ACROSS)])).toEqual([1, 0]);
  });

  it.each([
    [0.5, true],
    [1.5, false],
  ])("a nick of %f tolerances in one of them: alike %s", (tolerances, alike) => {
    const nicked = (depth: number): Point2[] => [
      [1, 0],
      [4, 0],
      [4, 2],
      [2.6, 2],
      [2.6, 2 - depth],
      [2.2, 2 - depth],
      [2.2, 2],
      [1, 2],
    ];
    const pair = [bodyOf([nicked(tolerances * SAME)]), moveBody(bodyOf([nicked(0)]), ACROSS)];
    expect(images(pair) !== undefined).toBe(alike);
  });

  it("are asked for ground and shape: a frame is not what it frames", () => {
    const [outer, inner] = [oblong(1, 5, -2, 2), oblong(2, 4, -1, 1)];
    const frame = bodyOf([outer, inner.toReversed()]);
    const within = bodyOf([inner, outer.toReversed()]);
    expect(images([frame, moveBody(within, ACROSS)])).toBeUndefined();
  });

  it("of bodies that fade do so at both ends alike", () => {
    const own = (low: number, high: number) =>
      bodyOf([oblong(-9, 9, -1, 1)], { fade: { ends: [low, high], length: 3, tolerance: 0.01 } });
    expect(images([own(-9, 9)])).toEqual([0]);
    expect(images([own(-9, 8)])).toBeUndefined();
    expect(images([own(-9, 8)], ALONG)).toEqual([0]);
  });

  it("of bodies from seam to seam are looked for over the seam, and the seam itself is no side", () => {
    const rail = (seam: readonly [number, number], parts: Partial<FlatBody> = {}) =>
      bodyOf([oblong(seam[0], seam[1], -1, 1)], { seam, copies: 6, ...parts });
    expect(images([rail([-3, 7])])).toEqual([0]);
    expect(images([rail([-3, 7])], ALONG)).toEqual([0]);
    const toothed = bodyOf([[...oblong(-3, 7, -1, 1).slice(0, 3), [2.5, 1], [2, 1.5], [1, 1], [-3, 1]]], {
      seam: [-3, 7],
      copies: 6,
    });
    expect(images([toothed])).toBeUndefined();
  });

  it("are asked anew about another axis, of another body and within another tolerance, though an answer is remembered", () => {
    const memory = new Memory();
    const [own, aside] = [bodyOf([oblong(-1, 1, -1, 1)]), bodyOf([oblong(-1, 1 + 1.5 * SAME, -1, 1)])];
    const ask = (body: FlatBody, motion: Motion, same = SAME) =>
      bodyImages([body], { motion, round: ROUND, same, remember: memory.begin(() => 0) });
    expect(ask(own, ACROSS)).toEqual([0]);
    expect(ask(own, { ...ACROSS, u: 1 })).toBeUndefined();
    expect(ask(aside, ACROSS)).toBeUndefined();
    expect(ask(aside, ACROSS, 2 * SAME)).toEqual([0]);
    expect(ask(own, ACROSS)).toEqual([0]);
  });
});
