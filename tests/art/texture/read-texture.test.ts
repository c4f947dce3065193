// Covers: src/art/texture/*
/** Height fields of textures: held against every point of their lattice, against shifts, images and counts. */
import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import type { HeightField } from "../../../src/art/image/height-field.js";
import { textures } from "../../../src/art/texture/index.js";
import { nearbyIn } from "../../../src/art/texture/nearby.js";
import { readTexture } from "../../../src/art/texture/read-texture.js";
import { ROW, type SeedLattice, seedLattice } from "../../../src/art/texture/seed-lattice.js";
import { friezeGroup, friezeGroups } from "../../../src/base/frieze/symmetry.js";
import { finish } from "../../../src/base/pausing.js";
import { GRAIN_LENGTHS, type TextureName } from "../../../src/design/art/texture.js";
import { collector, failureOf, region, type StripInput, stripOf } from "../../flat/strips.js";

type Spec = Readonly<Record<string, unknown>>;

const DIGESTS = {
  hammered: "fd954d54c58a00b9",
  bark: "43fd3b08155f51d2",
  brushed: "3103c2209fe2b324",
  stippled: "039f515179d5ff42",
};

const NAMES = Object.keys(textures) as TextureName[];

function fieldOf(texture: Spec, spec: Spec = {}, strip: StripInput = {}, underRail = 0.05, tolerance = 0.02) {
  const full = region({ texture: { size: 0.8, length: 1.6, ...texture }, ...spec });
  if (full.texture === undefined) throw new Error("no texture");
  const { warn } = collector();
  return finish(readTexture(full, full.texture, { strip: stripOf(strip), tolerance, underRail, path: "r", warn }));
}

/** Of textures without a grain no length is said. */
const plain = (form: TextureName) => ({ form, length: GRAIN_LENGTHS[form] === undefined ? undefined : 1.6 });

const rowOf = ({ heights, columns }: HeightField, y: number) =>
  Array.from(heights.subarray(y * (columns + 1), (y + 1) * (columns + 1)));

/** A lattice whose sizes are powers of two, so that a shift by its period changes no bit. */
const dyadic = (own: Partial<Parameters<typeof seedLattice>[0]> = {}) =>
  seedLattice({
    width: 8,
    height: 4,
    along: 1,
    across: 4 / (4 * ROW),
    irregular: 1,
    seed: 3,
    operations: friezeGroup("p1").operations,
    ...own,
  });

/** The points of five by five periods, from a place, in cells. */
function allPoints({ columns, rows, pitch, moved, chance }: SeedLattice, u: number, v: number) {
  const points: { x: number; y: number; chance: number }[] = [];
  for (let row = -2 * rows; row < 3 * rows; row++) {
    for (let column = -2 * columns; column < 3 * columns; column++) {
      const cell = (((row % rows) + rows) % rows) * columns + (((column % columns) + columns) % columns);
      const set = row % 2 === 0 ? 0 : 0.5;
      const x = column + set + moved[cell][0] - u / pitch[0];
      points.push({ x, y: ROW * (row + moved[cell][1] - v / pitch[1]), chance: chance[cell] });
    }
  }
  return points;
}

/** The four textures as their definitions have them, over all points, by code of its own. */
const DEFINED: Record<TextureName, (points: ReturnType<typeof allPoints>, length: number) => number> = {
  hammered: (points) => Math.min(...points.map(({ x, y, chance }) => x * x + y * y + 0.15 * chance)),
  stippled: (points) =>
    Math.min(
      0,
      ...points.map(({ x, y, chance: c }) => (0.7 + 0.3 * c) * ((x * x + y * y) / (0.34 + 0.1 * c) ** 2 - 1)),
    ),
  brushed: (points) =>
    Math.min(
      0,
      ...points.map(({ x, y, chance }) => {
        const [length, width] = [1 - (x / 0.9) ** 2, 1 - (y / (0.4 + 0.4 * chance)) ** 2];
        return -(0.3 + 0.7 * chance) * Math.max(0, length) * Math.max(0, width);
      }),
    ),
  bark: (points, length) => {
    const [own, ...others] = points.slice().sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
    const ways = others.map((other) => {
      // The line half way between both, in widths: how far the place lies from it, by its foot.
      const normal = [(other.x - own.x) / length, other.y - own.y];
      const middle = (other.x ** 2 + other.y ** 2 - own.x ** 2 - own.y ** 2) / 2;
      return middle / Math.hypot(normal[0], normal[1]);
    });
    const t = Math.min(1, Math.min(...ways) / 0.35);
    return (0.55 + 0.45 * own.chance) * t * t * (3 - 2 * t);
  },
};

/** By how much two heights add up to other than 0.7 mm, at most. */
const offWhole = (a: ArrayLike<number>, b: ArrayLike<number>) =>
  Math.max(...Array.from(a, (height, i) => Math.abs(height + b[i] - 0.7)));

describe.each(NAMES)("%s", (form) => {
  it("is the same by the points nearby as by all of them, also where each is moved as far as it goes", () => {
    const away = dyadic();
    const corners = { ...away, moved: away.moved.map(([x, y]) => [0.4 * Math.sign(x), 0.4 * Math.sign(y)] as const) };
    for (const lattice of [away, corners]) {
      const near = nearbyIn(lattice);
      const height = textures[form].height({ across: false, length: 3 });
      for (let u = 0.03; u < 8; u += 0.31) {
        for (let v = -1.9; v < 2; v += 0.23) {
          expect(height(near(u, v))).toBeCloseTo(DEFINED[form](allPoints(lattice, u, v), 3), 12);
        }
      }
    }
  });

  it("comes again after its period to the last bit, along and across, and not before", () => {
    const near = nearbyIn(dyadic());
    const height = textures[form].height({ across: false, length: 3 });
    let differs = 0;
    for (let u = -2; u < 2; u += 1 / 8) {
      for (let v = -1; v < 1; v += 1 / 8) {
        const own = height(near(u, v));
        expect(height(near(u + 8, v))).toBe(own);
        expect(height(near(u - 16, v + 4))).toBe(own);
        if (Math.abs(height(near(u + 4, v)) - own) > 1e-6) differs++;
      }
    }
    expect(differs).toBeGreaterThan(100);
  });

  it("runs along or across: turned, it is the same of a lattice that is turned", () => {
    if (GRAIN_LENGTHS[form] === undefined) return;
    const lattice = dyadic();
    const near = nearbyIn(lattice);
    const [along, across] = [false, true].map((turned) => textures[form].height({ across: turned, length: 3 }));
    const copy = ({ count, x, y, chance }: ReturnType<typeof near>) => ({ count, x: y.slice(), y: x.slice(), chance });
    for (let u = 0; u < 8; u += 0.37) expect(across(copy(near(u, 0.4)))).toBe(along(near(u, 0.4)));
  });

  it.each(friezeGroups.map(({ name }) => name))("over a tile is its own image in %s to the last bit", (symmetry) => {
    const field = fieldOf(plain(form), { map: { base: 0.1 } }, { symmetry });
    const { columns, rows, heights } = field;
    const at = (x: number, y: number) => heights[y * (columns + 1) + (((x % columns) + columns) % columns)];
    for (const { flipX, flipY, shift } of friezeGroup(symmetry).operations) {
      for (let y = 0; y <= rows; y++) {
        for (let x = 0; x <= columns; x++) {
          const image = at((flipX ? -x : x) + shift * columns, flipY ? rows - y : y);
          if (image !== at(x, y)) throw new Error(`${symmetry}: ${x}, ${y}: ${at(x, y)} and ${image}`);
        }
      }
    }
    // The last column is the first, and the step over it no rougher than those elsewhere.
    const steps = Array.from({ length: columns }, (_, x) => Math.abs(at(x + 1, rows / 2) - at(x, rows / 2)));
    expect(rowOf(field, 3)[columns]).toBe(rowOf(field, 3)[0]);
    expect(steps[columns - 1]).toBeLessThanOrEqual(Math.max(...steps.slice(0, -1)));
  });

  it("goes from its base to its base and its height exactly, raised or sunk, as told", () => {
    for (const [spec, range] of [
      [{ map: { base: 0.1 } }, [0.1, 0.6]],
      [{ mode: "sunk", height: undefined, depth: 0.25, map: { base: 0.05, edge: 0 } }, [0.05, 0.3]],
    ] as const) {
      const { heights } = fieldOf(plain(form), spec);
      expect(Math.min(...heights)).toBeCloseTo(range[0], 12);
      expect(Math.max(...heights)).toBeCloseTo(range[1], 12);
    }
  });

  it("turned over or sunk is the same the other way: heights add up to the whole", () => {
    const map = { base: 0.1, edge: 0 };
    const own = fieldOf(plain(form), { map });
    const turned = fieldOf(plain(form), { map: { ...map, invert: true } });
    expect(offWhole(own.heights, turned.heights)).toBeLessThan(1e-12);
    const depth = { mode: "sunk", height: undefined, depth: 0.5 };
    const [pits, dots] = [map, { ...map, invert: true }].map((how) => fieldOf(plain(form), { ...depth, map: how }));
    expect(offWhole(pits.heights, dots.heights)).toBeLessThan(1e-12);
    // What is raised low is sunk deep: the middle line stands on the same samples, raised or sunk.
    const [low, deep] = [own, pits].map((field) => rowOf(field, field.rows / 2));
    expect(offWhole(low, deep)).toBeLessThan(0.06);
  });
});

/** Places of a field that are lower than all eight round them. */
function pitsOf({ columns, rows, heights }: HeightField): number {
  let count = 0;
  const at = (x: number, y: number) => heights[y * (columns + 1) + ((x + columns) % columns)];
  for (let y = 1; y < rows; y++) {
    for (let x = 0; x < columns; x++) {
      const round = [-1, 0, 1].flatMap((j) => [-1, 0, 1].map((i) => at(x + i, y + j)));
      if (round.filter((height) => height > at(x, y)).length === 8) count++;
    }
  }
  return count;
}

describe("what is counted", () => {
  it("has a dent for each point: 6 mm by 6 mm at 0.8 mm are 8 by 8", () => {
    const pits = pitsOf(fieldOf({ form: "hammered", length: undefined }, { map: { base: 0.1, resolution: 0.05 } }));
    // 8 in a row and 8 rows, those on the upper edge once more on the lower; one that is struck into another may be lost.
    expect(pits).toBeGreaterThan(50);
    expect(pits).toBeLessThanOrEqual(8 * 9);
    const larger = fieldOf(
      { form: "hammered", size: 1.6, length: undefined },
      { map: { base: 0.1, resolution: 0.05 } },
    );
    expect(pitsOf(larger)).toBeGreaterThan(10);
    expect(pitsOf(larger)).toBeLessThanOrEqual(4 * 5);
  });

  it("comes again in every row and tile, and once alone over the band", () => {
    const rows = fieldOf({ form: "stippled", length: undefined }, { map: { base: 0.1 } }, { rows: 2, tileWidth: 4 }, 0);
    const middle = rows.rows / 2;
    for (let y = 4; y < middle - 4; y++) {
      const upper = rowOf(rows, y + middle);
      expect(Math.max(...rowOf(rows, y).map((height, x) => Math.abs(height - upper[x])))).toBeLessThan(1e-6);
    }
    const band = fieldOf({ form: "stippled", length: undefined }, { map: { base: 0.1, over: "band" } });
    expect([band.copies, band.repeats, band.right]).toEqual([1, true, 54]);
    const line = rowOf(band, band.rows / 2);
    const ninth = Math.round(band.columns / 9);
    expect(
      line.filter((height, x) => Math.abs(height - line[(x + ninth) % band.columns]) > 0.01).length,
    ).toBeGreaterThan(50);
    expect(line[0]).toBe(line[band.columns]);
  });
});

it("is the same on every machine: the digest of all heights", () => {
  const digests = NAMES.map((form) => {
    const { heights } = fieldOf(plain(form), { map: { base: 0.1 } }, { symmetry: "p11g" });
    const bytes = new DataView(new ArrayBuffer(8 * heights.length));
    for (const [i, height] of heights.entries()) bytes.setFloat64(8 * i, height, true);
    return [form, createHash("sha256").update(bytes).digest("hex").slice(0, 16)];
  });
  expect(Object.fromEntries(digests)).toEqual(DIGESTS);
});

describe("limits", () => {
  const failure = (texture: Spec, spec: Spec = {}, strip: StripInput = {}) =>
    failureOf(() => fieldOf({ form: "hammered", length: undefined, ...texture }, spec, strip));

  it("refuses what samples cannot follow, and says how fine they would have to be", () => {
    expect(failure({ size: 0.3 }, { map: { resolution: 0.1 } })).toMatchObject({
      code: "texture-too-fine",
      path: "r.texture.size",
      value: 0.3,
    });
    // Also at a tolerance far coarser than its detail.
    expect(() => fieldOf({ form: "hammered", size: 0.6, length: undefined }, {}, {}, 0.05, 0.1)).not.toThrow();
  });

  it("refuses what has no room to come again", () => {
    expect(failure({ size: 3.1 })).toMatchObject({
      code: "texture-too-coarse",
      path: "r.texture.size",
      allowed: "at most 3 mm",
    });
    expect(() => fieldOf({ form: "hammered", size: 3, length: undefined })).not.toThrow();
    expect(failure({ form: "brushed", size: 0.3 })).toMatchObject({
      code: "texture-too-coarse",
      path: "r.texture.length",
      value: 3.5999999999999996,
      hint: 'give it a shorter "length"',
    });
    expect(failure({ form: "bark", size: 0.5, length: 4.5, along: "across" })).toMatchObject({
      path: "r.texture.length",
    });
  });

  it("refuses what is lower than anything that is there", () => {
    expect(failure({}, { height: 0.01 })).toMatchObject({ code: "texture-too-low", path: "r.height" });
    expect(failure({}, { mode: "sunk", height: undefined, depth: 0.01 })).toMatchObject({ path: "r.depth" });
  });
});
