import { describe, expect, it } from "vitest";
import { finish } from "../../src/base/pausing.js";
import { type Motion, STAY } from "../../src/flat/motion.js";
import { checkSolid } from "../../src/judge/gate.js";
import { openInside } from "../../src/ring/open-ring.js";
import { isSurfaceImage } from "../../src/solids/surface-images.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { uniteRing } from "../../src/union/union.js";
import { greyPng } from "../art/image/pngs.js";

const [WIDTH, HEIGHT] = [24, 20];
const REPEATS = 7;

/** Symmetric across and along, in pixels. */
const both = (x: number, y: number) => 0.5 + 0.25 * Math.cos(2 * Math.PI * x) + 0.2 * Math.cos(2 * Math.PI * y);
/** Its own image under a half turn alone. */
const turned = (x: number, y: number) => 0.5 + 0.2 * Math.sin(2 * Math.PI * x) * Math.sin(2 * Math.PI * y);
/** Only what the group makes of it. */
const none = (x: number, y: number) => 0.4 + 0.1 * Math.sin(2 * Math.PI * x) + 0.2 * y * Math.cos(2 * Math.PI * x + 1);

type Shade = (x: number, y: number) => number;

/** A shade with one pixel one step of 8 bits higher, off every mirror. */
const speck =
  (of: Shade, steps: number): Shade =>
  (x, y) => {
    const isIt = Math.floor(x * WIDTH) === 5 && Math.floor(y * HEIGHT) === 6;
    return of(x, y) + (isIt ? steps / 255 : 0);
  };

const partsOf = async (shade: Shade, pattern: object = {}) => {
  const document = {
    annulet: 1,
    size: { diameter: 17 },
    tolerance: 0.01,
    profile: { width: 6, thickness: 2, outside: { form: "flat", edge: 0.2 } },
    pattern: {
      fit: { repeats: REPEATS, hold: "band" },
      symmetry: "p1",
      regions: [{ image: "a.png", height: 0.4, map: { resolution: 0.2 } }],
      ...pattern,
    },
  };
  const files = { "a.png": greyPng(WIDTH, HEIGHT, shade) };
  const { answers } = await openInside(document, { files }).ask(["parts", "pattern"]);
  return { parts: answers.parts, body: answers.pattern.bodies[0] };
};

const STOPS = { cover: 150, fit: { repeats: 3, hold: "band" } };

describe("how a ring with an image comes again", () => {
  it.each<[string, Shade, object, object]>([
    ["symmetric itself", both, {}, { units: REPEATS, mirrored: true }],
    ["completed by p1m1", none, { symmetry: "p1m1" }, { units: REPEATS, mirrored: true }],
    ["completed by p2mm", none, { symmetry: "p2mm" }, { units: REPEATS, mirrored: true }],
    ["completed by p11m", none, { symmetry: "p11m" }, { units: REPEATS, mirrored: false }],
    ["that stops, completed by p2", none, { symmetry: "p2", ...STOPS }, { units: 1, halfTurned: true }],
    ["that stops, its own image under a half turn", turned, STOPS, { units: 1, mirrored: false, halfTurned: true }],
  ])("%s", async (_, shade, pattern, found) => {
    const { parts } = await partsOf(shade, pattern);
    expect(parts.symmetry).toMatchObject(found);
    const group = "symmetry" in pattern ? pattern.symmetry : shade === both ? "p2mm" : "p1";
    const upper = parts.symmetry?.sectors.some((sector) => sector.upper === true);
    expect(upper).toBe(group === "p2mm" || group === "p11m");
  });

  it.each([
    ["of one step of 8 bits", 1],
    ["of a fifth of the height", 51],
  ])("a single pixel higher, by a difference %s, leaves no mirror and no half turn", async (_, steps) => {
    const { parts } = await partsOf(speck(both, steps));
    expect(parts.symmetry).toMatchObject({ units: REPEATS, mirrored: false });
    expect(parts.symmetry?.sectors.some(({ upper }) => upper === true)).toBe(false);
    expect((await partsOf(speck(turned, steps), STOPS)).parts.symmetry).toBeUndefined();
    expect((await partsOf(speck(both, steps), STOPS)).parts.symmetry).toBeUndefined();
  });

  it("half of it makes the ring that one union makes", async () => {
    for (const [shade, pattern] of [[both, {}] as const, [turned, STOPS] as const]) {
      const { parts } = await partsOf(shade, pattern);
      const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid };
      const half = await uniteRing(parts, options);
      const whole = await uniteRing({ ...parts, symmetry: undefined }, options);
      expect([half.road, whole.road]).toEqual([shade === both ? "mirror" : "turn", "whole"]);
      expect(half.check).toMatchObject({ closed: true, components: 1, genus: whole.check.genus });
      expect(Math.abs(half.check.volume / whole.check.volume - 1)).toBeLessThan(1e-6);
    }
  });
});

describe("the image of a surface", () => {
  const across: Motion = { ...STAY, mirrored: true };
  const along: Motion = { ...STAY, flipped: true };
  const askedOf = async (shade: Shade) => {
    const { top } = (await partsOf(shade)).body.surface as NonNullable<
      Awaited<ReturnType<typeof partsOf>>["body"]["surface"]
    >;
    const us = top.points.map(([u]) => u);
    const [left, right] = [Math.min(...us), Math.max(...us)];
    const ask = (motion: Motion, other = top) =>
      finish(isSurfaceImage(top, other, { motion, left, period: right - left }));
    return { top, ask, period: right - left };
  };

  it("is itself under its mirrors, about both its sides and its middle, and nowhere else", async () => {
    const { ask, period } = await askedOf(both);
    for (const u of [0, period, 2 * period]) {
      expect(ask({ ...across, u })).toBe(true);
      expect(ask({ ...across, u, flipped: true })).toBe(true);
    }
    expect(ask(along)).toBe(true);
    expect(ask({ ...across, u: period / 2 })).toBe(false);
    expect(ask({ ...along, v: 0.2 })).toBe(false);
  });

  it("is not itself with one corner 10 nm higher, one diagonal swapped, or one triangle fewer", async () => {
    const { top, ask } = await askedOf(both);
    const at = top.points.findIndex(([u, v, h]) => h > 0.2 && u > 0.5 && v > 0.5);
    const raised = top.points.map(([u, v, h], i) => [u, v, i === at ? h + 1e-5 : h] as const);
    expect(ask(along, { ...top, points: raised })).toBe(false);
    expect(ask(along, { ...top, triangles: top.triangles.slice(3) })).toBe(false);
    const [a, b] = [top.triangles[0], top.triangles[1]];
    const beside = top.triangles.findIndex((c, i) => {
      const next = top.triangles[i % 3 === 2 ? i - 2 : i + 1];
      return i > 2 && c === b && next === a;
    });
    // The two triangles on a side, parted by the other diagonal.
    const [first, second] = [top.triangles[2], top.triangles[beside % 3 === 0 ? beside + 2 : beside - 1]];
    const start = beside - (beside % 3);
    const swapped = top.triangles.slice();
    swapped.splice(0, 3, first, a, second);
    swapped.splice(start, 3, second, b, first);
    expect(beside).toBeGreaterThan(2);
    expect(ask(along, { ...top, triangles: swapped })).toBe(false);
  });
});
