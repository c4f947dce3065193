// Covers: src/design/art/texture.ts
/** Textures from the document to the ring. */
import { build, checkDesign, flatTile, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { failureOf } from "../../flat/strips.js";

type Fields = Readonly<Record<string, unknown>>;

const CHANNEL = { form: "channel", rail: 0.8, depth: 0.6, edge: 0.15 };
const DOMED = { form: "domed", rise: 0.4, edge: 0.3 };
const HAMMERED = { form: "hammered", size: 1.5 };

const design = (region: Fields, pattern: Fields = {}, outside: Fields = CHANNEL) => ({
  annulet: 1,
  size: { diameter: 18 },
  tolerance: 0.03,
  profile: { width: 7, thickness: 2.4, bore: { form: "flat" }, outside },
  pattern: {
    fit: { repeats: 9, hold: "band" },
    regions: [{ texture: HAMMERED, height: 0.3, map: { base: 0.1 }, ...region }],
    ...pattern,
  },
});

const sunk = { mode: "sunk", height: undefined, depth: 0.3 };

describe("rings with a texture are closed", () => {
  it.each([
    ["hammered into a dome, once round", design({ ...sunk, map: { over: "band" } }, {}, DOMED)],
    [
      "bark between rails, its own mirror",
      design({ texture: { form: "bark", size: 1.4, length: 2 } }, { symmetry: "p2mm" }),
    ],
    [
      "brushed across a part of the band",
      design({ texture: { form: "brushed", size: 1, length: 2, along: "across" } }, { cover: 200 }, DOMED),
    ],
    [
      "stippled in two rows, dots raised on nothing",
      design(
        { texture: { form: "stippled", size: 1.2 }, map: { invert: true } },
        { fit: { repeats: 12, rows: 2, hold: "band" }, symmetry: "p11g" },
      ),
    ],
    [
      "on every third tile, and cut by what comes after it",
      design(
        {},
        {
          cycle: 3,
          regions: [
            { texture: HAMMERED, height: 0.3, map: { base: 0.1 }, tiles: [1] },
            { path: "M 0.4 0 A 0.1 0.1 0 0 0 0.6 0 A 0.1 0.1 0 0 0 0.4 0 Z", mode: "sunk", depth: 0.3 },
          ],
        },
      ),
    ],
  ])("%s", async (_, document) => {
    const { report } = await build(document);
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
  });
});

it("is told by check as low as its lowest height says, like a height map", async () => {
  const { findings } = await checkDesign(design({ name: "beaten", height: 0.02, map: { base: 0.02 } }));
  expect(findings.find(({ rule }) => rule === "relief")?.message).toContain("beaten");
});

it("is drawn on the tile, the same for the same seed and another for another", async () => {
  const rings = async (seed: number) =>
    (await flatTile(design({ texture: { ...HAMMERED, seed } }))).regions.map((one) => one.rings);
  const [one, again, other] = [await rings(1), await rings(1), await rings(2)];
  expect(one.length).toBeGreaterThan(2);
  expect(again).toEqual(one);
  expect(other).not.toEqual(one);
});

describe("the document", () => {
  const problems = (region: Fields) =>
    failureOf(() => readDesign(design(region))).problems.map(({ code, path }) => `${code} ${path?.split("].")[1]}`);

  it("has a seed, and is set at random, where nothing is said", () => {
    expect(readDesign(design({})).pattern?.regions[0].texture).toEqual({ ...HAMMERED, irregular: 1, seed: 1 });
  });

  it("wants nothing beside a texture that belongs to outlines or images", () => {
    expect(problems({ path: "M 0 0 L 1 0" })).toEqual(["value-invalid texture"]);
    expect(problems({ image: "a.png" })).toEqual(["value-invalid texture"]);
    expect(problems({ height: undefined })).toEqual(["value-missing height"]);
    expect(problems({ mode: "pierced", height: undefined })).toEqual(["value-invalid mode"]);
    expect(problems({ round: 0.1 })).toEqual(["value-invalid round"]);
    expect(problems({ beneath: true })).toEqual(["value-invalid beneath"]);
    expect(problems({ edge: { form: "wave", width: 1, depth: 0.1 }, within: ["b"] })).toEqual([
      "value-invalid edge",
      "value-invalid within",
    ]);
    expect(problems({ map: { smooth: 0.1, seam: { blend: 1 } } })).toEqual([
      "value-invalid map.smooth",
      "value-invalid map.seam",
    ]);
    expect(problems({ tiles: [0], map: { over: "band" } })).toEqual(["value-invalid tiles"]);
  });

  it("wants a grain of what has one alone, and numbers that a seed may be", () => {
    expect(problems({ texture: { ...HAMMERED, length: 3, along: "across" } })).toEqual([
      "value-invalid texture.length",
      "value-invalid texture.along",
    ]);
    expect(problems({ texture: { form: "bark", size: 1, length: 0.5 } })).toEqual(["value-invalid texture.length"]);
    expect(problems({ texture: { ...HAMMERED, seed: 1.5 } })).toHaveLength(1);
    expect(problems({ texture: { ...HAMMERED, seed: 2 ** 32 } })).toEqual(["value-invalid texture.seed"]);
    expect(problems({ texture: { form: "hamered", size: 1 } })).toHaveLength(1);
  });
});

it("is no outline for others, and cannot be cut off where tiles keep their size on a taper", async () => {
  const regions = [
    { name: "beaten", texture: HAMMERED, height: 0.4 },
    { path: "M 0.1 0 L 0.5 0 L 0.3 0.2 Z", height: 0.3, within: ["beaten"] },
  ];
  await expect(build(design({}, { regions }))).rejects.toMatchObject({
    code: "region-without-outline",
    path: "pattern.regions[1].within[0]",
  });
  const tapers = design({}, { fit: { repeats: 9, taper: "keep" } });
  const profile = { ...tapers.profile, taper: { width: 5 } };
  await expect(build({ ...tapers, profile })).rejects.toMatchObject({
    code: "cannot-keep-size",
    path: "pattern.regions[0].texture",
  });
});
