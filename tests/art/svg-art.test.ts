// Covers: src/art/svg/art-box.ts, src/art/svg/load-drawings.ts
/** Regions whose art is an SVG file, from the document to the ring. */
import { AnnuletError, build, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { loadDrawings } from "../../src/art/svg/load-drawings.js";
import { readSvgArt } from "../../src/art/svg-art.js";
import type { FileSource } from "../../src/base/files.js";
import type { RegionSpec } from "../../src/design/pattern/region.js";
import { areaOf, collector, failureOf, region, stripOf } from "../flat/strips.js";
import { svg } from "./svg/svgs.js";

const LEAF = svg('<path d="M10 50 Q50 0 90 50 Q50 100 10 50Z"/>');

async function artOf(text: string, spec: Readonly<Record<string, unknown>> = {}) {
  const { warn, codes } = collector();
  const parsed: RegionSpec = region({ svg: "a.svg", ...spec });
  const drawings = await loadDrawings([{ name: "a.svg", where: "r.svg" }], { "a.svg": text }, warn);
  const drawing = [...drawings.values()][0];
  return {
    codes,
    place: () =>
      readSvgArt(stripOf(), { ...parsed, svg: "a.svg" }, drawing, { tolerance: 0.005, where: "r.svg", warn }),
  };
}

const design = (regionSpec: Readonly<Record<string, unknown>>) => ({
  annulet: 1,
  size: { diameter: 18 },
  tolerance: 0.03,
  profile: { width: 6, thickness: 1.6, bore: { form: "flat" }, outside: { form: "flat", edge: 0.2 } },
  pattern: { fit: { repeats: 10, hold: "band" }, regions: [{ height: 0.4, ...regionSpec }] },
});

describe("a region from a file", () => {
  it("is as large on the tile as its place says", async () => {
    const { place } = await artOf(svg('<rect x="25" y="25" width="50" height="50"/>'));
    expect(areaOf(stripOf(), place().closed)).toBeCloseTo(9, 6);
    const art = await artOf(svg('<rect x="25" y="25" width="50" height="50"/>'), { place: { by: "art" } });
    expect(areaOf(stripOf(), art.place().closed)).toBeCloseTo(36, 2);
  });

  it("goes by its art where the file has no page", async () => {
    const { place } = await artOf(svg('<circle cx="1000" cy="0" r="7"/>', ""));
    expect(areaOf(stripOf(), place().closed) / (9 * Math.PI)).toBeCloseTo(1, 2);
  });

  it("tells what cleaning changed", async () => {
    const { codes, place } = await artOf(svg('<path d="M0 0L60 60L60 0L0 60Z"/>'));
    place();
    expect(codes).toEqual(["svg-cleaned"]);
  });

  it("may not leave the tile's neighbourhood, nor show nothing", async () => {
    const far = await artOf(LEAF, { place: { at: [3, 0] } });
    expect(failureOf(far.place)).toMatchObject({ code: "path-outside-tile", path: "r.svg" });
    const hidden = await artOf(svg('<rect x="200" width="9" height="9"/>'));
    expect(failureOf(hidden.place)).toMatchObject({ code: "svg-empty" });
  });

  it("makes the same ring as its outline drawn as a path", async () => {
    // On a tile as wide as it is high, y from 100 to 0 becomes −½ to ½. Straight lines are the same however flattened.
    const kite = svg('<path d="M10 50 L40 10 L90 50 L40 90Z"/>');
    const path = "M 0.1 0 L 0.4 0.4 L 0.9 0 L 0.4 -0.4 Z";
    const [drawn, file] = await Promise.all([
      build(design({ path, unit: "tile" })),
      build(design({ svg: "leaf.svg", place: { fit: [1, 1] } }), { files: { "leaf.svg": kite } }),
    ]);
    expect(file.report.closed).toBe(true);
    expect(file.report.volume).toBeCloseTo(drawn.report.volume, 3);
  });

  it("takes ribbons and beads as drawn regions do", async () => {
    const { report } = await build(
      design({ svg: "leaf.svg", ribbon: { width: 0.6 }, beads: { diameter: 0.4, on: "centre" } }),
      { files: async () => LEAF },
    );
    expect(report.closed).toBe(true);
    expect(report.beads[0].count).toBeGreaterThan(50);
  });
});

describe("the files that a design names", () => {
  const failure = async (files?: Parameters<typeof build>[1]) => {
    const error: unknown = await build(design({ svg: "leaf.svg" }), files).catch((caught: unknown) => caught);
    if (!(error instanceof AnnuletError)) throw new Error(`no AnnuletError: ${error}`);
    return error;
  };

  it("must be handed over", async () => {
    const sources: (FileSource | undefined)[] = [undefined, {}, { other: LEAF }, () => undefined];
    for (const files of sources) {
      expect(await failure({ files })).toMatchObject({ code: "svg-file-missing", path: "pattern.regions[0].svg" });
    }
  });

  it("tell why they cannot be read", async () => {
    const broken = () => {
      throw new Error("the disk is asleep");
    };
    expect((await failure({ files: broken })).message).toMatch(/disk is asleep/);
    expect(await failure({ files: { "leaf.svg": new Uint8Array([0x3c, 0xff]) } })).toMatchObject({
      code: "svg-encoding",
    });
    expect(await failure({ files: { "leaf.svg": "<svg" } })).toMatchObject({ code: "svg-malformed" });
  });

  it("are asked for once each", async () => {
    const asked: string[] = [];
    const ask = async (name: string) => {
      asked.push(name);
      return LEAF;
    };
    const { warn } = collector();
    await loadDrawings(
      ["a", "b", "a"].map((name) => ({ name, where: "r.svg" })),
      ask,
      warn,
    );
    expect(asked).toEqual(["a", "b"]);
  });
});

describe("the document", () => {
  const problems = (spec: Readonly<Record<string, unknown>>) =>
    failureOf(() => readDesign(design(spec))).problems.map(({ code, path }) => `${code} ${path}`);

  it("wants a path or a file, not both, and a place only for a file", () => {
    expect(problems({})).toEqual(["value-missing pattern.regions[0].path"]);
    expect(problems({ path: "M 0 0 L 1 0", svg: "a.svg" })).toEqual(["value-invalid pattern.regions[0].svg"]);
    expect(problems({ path: "M 0 0 L 1 0", place: {} })).toEqual(["value-invalid pattern.regions[0].place"]);
    expect(problems({ svg: "a.svg", place: { trun: 3 } })).toEqual(["unknown-key pattern.regions[0].place.trun"]);
  });
});
