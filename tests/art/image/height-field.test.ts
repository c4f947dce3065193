// Covers: src/art/image/close-seams.ts, src/art/image/fall.ts, src/art/image/frame.ts, src/art/image/number-grid.ts
// Covers: src/art/image/heights.ts, src/art/image/read-field.ts, src/art/image/resample.ts, src/art/image/sample-field.ts
// Covers: src/art/image/blend-seam.ts, src/art/image/complete-tile.ts, src/relief/image/raise-field.ts
/** Height fields of images: what they hold, how they meet, what the symmetry makes of them. */
import { describe, expect, it } from "vitest";
import type { HeightField } from "../../../src/art/image/height-field.js";
import { readField } from "../../../src/art/image/read-field.js";
import { readPicture } from "../../../src/art/image/read-picture.js";
import { raiseField } from "../../../src/relief/image/raise-field.js";
import { collector, failureOf, plainBody, region, type StripInput, stripOf } from "../../flat/strips.js";
import { greyPng } from "./pngs.js";

type Spec = Readonly<Record<string, unknown>>;

async function fieldOf(png: Uint8Array, spec: Spec = {}, strip: StripInput = {}, underRail = 0.05) {
  const { codes, warn } = collector();
  const picture = await readPicture(png, "a.png", "r.image");
  const options = { strip: stripOf(strip), tolerance: 0.01, underRail, path: "r", warn };
  return { codes, read: () => readField(region({ image: "a.png", ...spec }), picture, options) };
}

const heightAt = (field: HeightField, u: number, v: number) => {
  const x = Math.round(((u - field.left) / (field.right - field.left)) * field.columns);
  const y = Math.round(((v - field.low) / (field.high - field.low)) * field.rows);
  return field.heights[y * (field.columns + 1) + x];
};

/** mm³ between the seat and a body's surface, by its triangles as prisms. */
function volumeAbove(field: HeightField): number {
  const surface = raiseField(field, { ...plainBody, tolerance: 0.005 }).surface?.top;
  if (surface === undefined) throw new Error("no surface");
  let sum = 0;
  for (let i = 0; i < surface.triangles.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => surface.points[surface.triangles[i + k]]);
    const area = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
    expect(area).toBeGreaterThan(0);
    sum += (area * (a[2] + b[2] + c[2])) / 3;
  }
  return sum;
}

const wave = (x: number, y: number) => 0.5 + 0.25 * (Math.sin(2 * Math.PI * x) + Math.cos(4 * Math.PI * y));

describe("the relief of an image", () => {
  it("has the volume of the wave that is drawn: ∫ (base + span · wave) = area · (base + span / 2)", async () => {
    for (const map of [{ base: 0.1 }, { base: 0.1, smooth: 0 }, { base: 0.2, resolution: 0.3, smooth: 0 }]) {
      const field = (await fieldOf(greyPng(240, 240, wave), { map })).read();
      // The image fills 6 mm by 6 mm; beneath the rails its border goes on for 0.05 mm at the wave's cos = 1.
      const expected = 36 * (map.base + 0.25) + 2 * 0.05 * 6 * (map.base + 0.5 * 0.75);
      expect(Math.abs(volumeAbove(field) / expected - 1)).toBeLessThan(2e-3);
    }
  });

  it("is the wave itself at every sample to a fifth of the tolerance, from few pixels as from many", async () => {
    for (const pixels of [40, 480]) {
      const field = (await fieldOf(greyPng(pixels, pixels, wave), { map: { base: 0.1, smooth: 0 } })).read();
      for (let u = 0; u <= 6; u += 0.5) {
        for (let v = -2.5; v <= 2.5; v += 0.5) {
          const x = Math.round((u / 6) * field.columns) / field.columns;
          const y = Math.round(((v - field.low) / (field.high - field.low)) * field.rows) / field.rows;
          const across = 0.5 - (field.low + y * (field.high - field.low)) / 6;
          expect(Math.abs(heightAt(field, u, v) - (0.1 + 0.5 * wave(x, across)))).toBeLessThan(2e-3);
        }
      }
    }
  });

  it("is upright: the image's top is towards +v, its left at u = 0", async () => {
    const field = (
      await fieldOf(
        greyPng(60, 60, (x, y) => (x < 0.5 && y < 0.5 ? 1 : 0)),
        { map: { seam: { blend: 0.3 } } },
      )
    ).read();
    expect(heightAt(field, 1.8, 1.5)).toBeCloseTo(0.5, 3);
    for (const [u, v] of [
      [1.8, -1.5],
      [4.8, 1.5],
      [4.8, -1.5],
    ])
      expect(heightAt(field, u, v)).toBeLessThan(0.01);
  });

  it("is light where it is high, raised or sunk, and turns over by invert", async () => {
    const png = greyPng(32, 32, () => 0.25);
    const height = async (spec: Spec) => heightAt((await fieldOf(png, spec)).read(), 3, 0);
    expect(await height({})).toBeCloseTo(0.125, 4);
    expect(await height({ map: { invert: true } })).toBeCloseTo(0.375, 4);
    const sunk = { mode: "sunk", height: undefined, depth: 0.4 };
    expect(await height(sunk)).toBeCloseTo(0.3, 4);
    expect(await height({ ...sunk, map: { invert: true, base: 0.05 } })).toBeCloseTo(0.15, 4);
  });

  it("shows steps of 16 bits: a ramp through 1/65535 each rises evenly", async () => {
    const ramp = greyPng(256, 4, (x) => (20_000 + Math.floor(x * 256)) / 65_535);
    const field = (await fieldOf(ramp, { height: 10, map: { over: "tile", smooth: 0, seam: { blend: 0.05 } } })).read();
    const row = Array.from(field.heights.subarray(0, field.columns + 1));
    const middle = row.slice(8, field.columns - 8);
    const rise = (middle[middle.length - 1] - middle[0]) / (middle.length - 1);
    expect(rise).toBeGreaterThan(0);
    for (const [i, height] of middle.slice(1).entries()) {
      expect(Math.abs(height - middle[i] - rise)).toBeLessThan(rise / 10);
    }
  });

  it("falls to nothing at edges without rails, and stands to them where told", async () => {
    const flat = greyPng(16, 16, () => 1);
    const falling = (await fieldOf(flat, {}, {}, 0)).read();
    expect(heightAt(falling, 3, falling.low)).toBeLessThan(falling.level);
    expect(heightAt(falling, 3, falling.low + 0.35)).toBeCloseTo(0.5, 6);
    const upright = (await fieldOf(flat, { map: { edge: 0 } }, {}, 0)).read();
    expect(heightAt(upright, 3, upright.low)).toBeCloseTo(0.5, 6);
    const railed = (await fieldOf(flat)).read();
    expect(railed.high).toBeCloseTo(3.05, 9);
    expect(heightAt(railed, 3, railed.high)).toBeCloseTo(0.5, 6);
    const ending = (await fieldOf(flat, {}, { cover: 180, repeats: 4 })).read();
    expect([ending.repeats, ending.right]).toEqual([false, 24]);
    expect(heightAt(ending, 0, 0)).toBeLessThan(ending.level);
    expect(heightAt(ending, 12, 0)).toBeCloseTo(0.5, 6);
  });

  it("has nothing where it is clear or black, and says so where that is everywhere", async () => {
    expect(failureOf((await fieldOf(greyPng(8, 8, () => 0))).read)).toMatchObject({
      code: "image-blank",
      path: "r.image",
    });
  });
});

describe("symmetry", () => {
  /** A blob in the upper left quarter. */
  const blob = greyPng(96, 96, (x, y) => Math.max(0, 1 - 8 * Math.hypot(x - 0.2, y - 0.3)));
  const places = {
    own: [1.2, 1.2],
    mirror: [4.8, 1.2],
    below: [1.2, -1.2],
    turned: [4.8, -1.2],
    glide: [4.2, -1.2],
  } as const;

  it.each([
    ["p1", ["own"]],
    ["p11g", ["own", "glide"]],
    ["p1m1", ["own", "mirror"]],
    ["p2", ["own", "turned"]],
    ["p11m", ["own", "below"]],
    ["p2mm", ["own", "mirror", "below", "turned"]],
  ] as const)("%s completes the image as it does drawn regions", async (symmetry, expected) => {
    const field = (await fieldOf(blob, { map: { resolution: 0.06, smooth: 0 } }, { symmetry })).read();
    const found = Object.entries(places).filter(([, [u, v]]) => heightAt(field, u, v) > 0.4);
    expect(found.map(([name]) => name)).toEqual(expected);
  });

  it("makes ends meet that do not by themselves", async () => {
    const slope = greyPng(64, 64, (x) => x);
    expect(failureOf((await fieldOf(slope)).read)).toMatchObject({ code: "image-seam", path: "r.map.seam" });
    const field = (await fieldOf(slope, {}, { symmetry: "p1m1" })).read();
    expect(heightAt(field, 0, 0)).toBeGreaterThan(0.47);
    const rows = (
      await fieldOf(
        greyPng(64, 64, (_, y) => y),
        {},
        { symmetry: "p2mm", rows: 2, aspect: 0.5 },
      )
    ).read();
    expect(heightAt(rows, 3, 0)).toBeGreaterThan(0.47);
  });
});

describe("tiles that vary", () => {
  it.each([
    ["all the way round", { repeats: 9, cycle: 3 }, { right: 18, copies: 3 }],
    ["over a part", { repeats: 4, cycle: 3, cover: 180 }, { right: 24, copies: 1 }],
  ] as const)("%s the image stands on those that are named", async (_, strip, place) => {
    const flat = greyPng(16, 16, () => 1);
    for (const edge of [0, 0.3]) {
      const field = (await fieldOf(flat, { tiles: [0, 1], map: { edge, smooth: 0 } }, strip)).read();
      expect(field).toMatchObject(place);
      for (const u of [3, 6, 9]) expect(heightAt(field, u, 0)).toBeCloseTo(0.5, 6);
      expect(heightAt(field, 15, 0)).toBe(0);
      expect(heightAt(field, 12, 0)).toBeCloseTo(edge === 0 ? 0.5 : 0, 6);
    }
    expect(failureOf((await fieldOf(flat, { tiles: [3] }, strip)).read)).toMatchObject({ code: "tile-not-in-cycle" });
  });
});

describe("the seam", () => {
  it("is exact where the image repeats, and an error says by how much it does not", async () => {
    expect((await fieldOf(greyPng(64, 64, wave))).read().repeats).toBe(true);
    const error = failureOf((await fieldOf(greyPng(64, 64, (x, y) => (y < 0.5 ? x : 0.5)))).read);
    expect(error.code).toBe("image-seam");
    expect(error.value).toBeCloseTo(0.5 * (63 / 64), 2);
  });

  it("is blended without a cliff", async () => {
    const field = (
      await fieldOf(
        greyPng(256, 64, (x) => x),
        { map: { base: 0.1, seam: { blend: 1 } } },
      )
    ).read();
    const row = Array.from(field.heights.subarray(0, field.columns));
    const step = field.right / field.columns;
    const steepest = Math.max(...row.map((height, i) => Math.abs(height - row[(i + 1) % row.length]) / step));
    // A smooth step over 1 mm of nearly 0.5 mm is nowhere steeper than 1.5 · 0.5.
    expect(steepest).toBeLessThan(0.75);
  });

  it("is looked at between rows of tiles too, and not where nothing meets", async () => {
    const downward = greyPng(64, 64, (_, y) => y);
    expect((await fieldOf(downward)).read().rows).toBeGreaterThan(0);
    expect(failureOf((await fieldOf(downward, {}, { rows: 2 })).read)).toMatchObject({ code: "image-seam" });
    expect((await fieldOf(downward, {}, { rows: 2, symmetry: "p11m" })).read().rows).toBeGreaterThan(0);
    const once = { map: { over: "band" } };
    const slope = greyPng(640, 64, (x) => x);
    expect((await fieldOf(slope, once, { cover: 180, repeats: 4 })).read()).toMatchObject({ copies: 1, right: 24 });
    expect(failureOf((await fieldOf(slope, once)).read)).toMatchObject({ code: "image-seam" });
  });
});

describe("resolution", () => {
  it("is refused where the band would have too many samples, with the finest there may be", async () => {
    const error = failureOf((await fieldOf(greyPng(64, 64, wave), { map: { resolution: 0.01 } })).read);
    expect(error).toMatchObject({ code: "resolution-too-fine", path: "r.map.resolution", value: 0.01 });
    expect(error.allowed).toMatch(/0\.03/);
  });

  it("tells how far an image is stretched", async () => {
    const { codes, read } = await fieldOf(greyPng(64, 32, wave));
    read();
    expect(codes).toEqual(["image-stretched"]);
  });
});
