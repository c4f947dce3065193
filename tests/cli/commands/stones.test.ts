// Covers: src/cli/stones/*
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { gems } from "../../../src/gems/catalogue.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { formats } from "../../../src/output/files/catalogue.js";
import { readMesh } from "../../../src/output/files/read-mesh.js";
import { annulet, tempFolder } from "../support.js";

describe("annulet stones", () => {
  it("prints sizes of round diamonds, and every gem with how sure its density is", async () => {
    const { code, out } = await annulet(["stones"]);
    expect(code).toBe(0);
    // 0.0061 d² · depth at 61.16 % of depth: 6.5 mm are 1.0246 ct.
    expect(out).toMatch(/^ *6\.5 +1\.0246 +3\.975 +0\.983 +0\.195 +2\.798$/m);
    for (const { symbol, name, density } of gems) {
      const line = out.split("\n").find((one) => one.startsWith(`${symbol} `));
      expect(line).toContain(name);
      expect(line).toContain(density.certainty);
    }
    expect(out).toContain("small stones are cut deeper");
  });

  it("prints the sizes of another cut and gem, without what is known of round diamonds alone", async () => {
    const { out } = await annulet(["stones", "--cut", "tapered-baguette", "--gem", "ruby"]);
    expect(out).toMatch(/^Tapered baguette, ruby$/m);
    expect(out).toMatch(/^ *4 × 2 × 1\.4 /m);
    expect(out).not.toContain("small stones are cut deeper");
  });

  it("shows one stone in all terms", async () => {
    const { code, out } = await annulet(["stones", "--cut", "oval", "--size", "6x4", "--gem", "sapphire"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^size +6 × 4 mm$/m);
    // 0.0020 · 4.00 · 5² · 2.446 ct; a fifth of it in grams.
    expect(out).toMatch(/^weight +0\.4893 ct, 0\.0979 g: 0\.00800 × mean diameter² × depth$/m);
    expect(out).toMatch(/^crown +0\.605 mm, 15\.1 % of the width, 34\.50°$/m);
    expect(out).toMatch(/^facets +58 \(1 table, 8 star, 8 bezel, .*round the girdle$/m);
    expect(out).toMatch(/^metal +2\.646 mm under a level table: flush set/m);
    expect(out).toMatch(/^setting +may be cast in place \(common practice, no source\)$/m);
  });

  it("tells of a cabochon its dome, and of no metal below it", async () => {
    const { out } = await annulet(["stones", "--cut", "cabochon", "--size", "8x6", "--gem", "opal"]);
    expect(out).toMatch(/^facets +1 \(1 base\), and \d+ round the girdle, \d+ over the dome$/m);
    expect(out).not.toMatch(/^(metal|table|pavilion|culet) /m);
    expect(out).toMatch(/^beware .*no stone for flush setting/m);
  });

  it("finds the size of a weight, and prints it as JSON with sources", async () => {
    const { out } = await annulet(["stones", "--carat", "0.5", "--json"]);
    const stone = JSON.parse(out);
    expect(stone.carats).toBeCloseTo(0.5, 12);
    expect(stone.width).toBeCloseTo(Math.cbrt(0.5 / (0.0061 * 0.611598)), 4);
    expect(stone.caratsByVolume).toBeCloseTo(0.4965, 3);
    expect(stone.material.density.source).not.toBe("");
    expect(stone.formula.source).toContain("a1-diamond.com");
    const all = JSON.parse((await annulet(["stones", "--json"])).out);
    expect(all.gems).toHaveLength(gems.length);
    expect(all.sizes[0].carats).toBeCloseTo(0.0061 * 0.8 ** 3 * 0.611598, 6);
  });

  it("writes the stone's facets in every format", async () => {
    const folder = tempFolder();
    const paths = [...new Set(formats.flatMap(({ extensions }) => extensions))].map((end) =>
      join(folder, `stone${end}`),
    );
    const words = ["stones", "--cut", "emerald", "--size", "7x5", ...paths.flatMap((path) => ["-o", path])];
    const { code, out } = await annulet(words);
    expect(code).toBe(0);
    expect(paths.length).toBeGreaterThanOrEqual(4);
    for (const path of paths) {
      expect(out).toContain(`written: ${path}`);
      const check = checkSolid(await readMesh(readFileSync(path), path));
      expect(check.faults).toEqual([]);
      // GLB holds single precision metres.
      expect(Math.abs(check.volume / 59.1627 - 1)).toBeLessThan(1e-4);
    }
  });

  it("cuts it otherwise, and finer", async () => {
    const words = ["stones", "--size", "3", "--json", "--proportions", "table=0.6, crownAngle=33"];
    const stone = JSON.parse((await annulet(words)).out);
    expect(stone.angles.crown).toBeCloseTo(33, 9);
    expect(stone.proportions.table).toBe(0.6);
    const fine = JSON.parse((await annulet([...words, "--tolerance", "0.0005"])).out);
    expect(fine.facets.girdle).toBeGreaterThan(stone.facets.girdle);
    expect(
      JSON.parse((await annulet(["stones", "--size", "3", "--proportions", "tolkowsky", "--json"])).out).proportions
        .table,
    ).toBe(0.53);
  });

  it.each<[string[], RegExp]>([
    [["--size", "six"], /no size of a stone[\s\S]*6x4/],
    [["--size", "3", "--carat", "1"], /by its size or by its weight/],
    [["--size", "3", "--gem", "saphire"], /no gem "saphire"[\s\S]*did you mean "sapphire"/],
    [["--size", "3", "--proportions", "deep"], /These are no proportions/],
    [["--size", "3", "--proportions", "table=0.9"], /do not close[\s\S]*table 0\.01 to 0\.7/],
    [["--size", "3", "--proportions", "crownHeight=0"], /a number above 0/],
    [["--cut", "ovel", "--size", "3"], /Allowed choices are round, oval/],
    [["--cut", "oval", "--size", "4x6"], /another width/],
    [["-o", "stone.stl"], /no stone to write/],
    [["--size", "3", "-o", "stone.png"], /no format goes by this/],
  ])("refuses %j", async (words, message) => {
    const { code, out, err } = await annulet(["stones", ...words]);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(message);
    expect(existsSync("stone.stl")).toBe(false);
  });
});
