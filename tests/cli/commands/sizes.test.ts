// Covers: src/cli/show.ts, src/cli/table.ts
import { describe, expect, it } from "vitest";
import { sizeSystems } from "../../../src/size/catalogue.js";
import { annulet } from "../support.js";

describe("annulet sizes", () => {
  // ISO 8653: the size is the circumference in mm. UK N¼ is 53.75 + 1.25 / 4 mm (Rowlett's dictionary of units, BS 6820:1987).
  it("shows a label in every system, with sources", async () => {
    const { code, out } = await annulet(["sizes", "54"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^ISO 8653 54: circumference 54\.000 mm, diameter 17\.189 mm$/m);
    expect(out).toMatch(/^uk .* N¼ +54\.063 +17\.209 +\+0\.063 +54\.06 to 54\.66$/m);
    for (const { name, source } of sizeSystems) expect(out).toContain(`  ${name}: ${source}`);
  });

  it("reads labels in the system named, also of several words", async () => {
    // US 6½ is 0.458 + 0.032 · 6.5 in (en.wikipedia.org, Ring size): 16.916 mm.
    const { out } = await annulet(["sizes", "6", "1/2", "--system", "us", "--json"]);
    const size = JSON.parse(out);
    expect(size.diameter).toBeCloseTo(25.4 * (0.458 + 0.032 * 6.5), 9);
    expect(size.systems.map((row: { system: string }) => row.system)).toEqual(sizeSystems.map(({ name }) => name));
    expect(size.systems.every((row: { source: string }) => row.source.length > 0)).toBe(true);
  });

  it("takes a diameter or a circumference", async () => {
    expect(JSON.parse((await annulet(["sizes", "--diameter", "17.5", "--json"])).out).circumference).toBeCloseTo(
      Math.PI * 17.5,
      9,
    );
    expect((await annulet(["sizes", "--circumference", "55"])).out).toMatch(
      /^circumference 55\.000 mm, diameter 17\.507 mm/,
    );
  });

  it("names the systems that know a label which iso does not", async () => {
    const { code, err } = await annulet(["sizes", "N"]);
    expect(code).toBe(2);
    expect(err).toMatch(/--system uk/);
  });

  it("prints the chart from 41 to 76", async () => {
    const { out } = await annulet(["sizes"]);
    const rows = out.split("\n").filter((line) => /^ *\d+\.\d{3} /.test(line));
    expect(rows).toHaveLength(36);
    expect(rows[0].trim().split(/\s+/).slice(0, 2)).toEqual(["13.051", "41"]);
    const { out: json } = await annulet(["sizes", "--json"]);
    expect(JSON.parse(json).map((row: { circumference: number }) => row.circumference)).toEqual(
      Array.from({ length: 36 }, (_, i) => 41 + i),
    );
  });

  it.each([
    [["54", "--diameter", "17"], /more than one way/],
    [["--system", "uk"], /there is none/],
    [["54", "--system", "mars"], /iso, us, us-gauge/],
    [["--diameter", "3"], /5/],
    [["Ω"], /no size/],
  ])("refuses %j with exit code 2", async (words, complaint) => {
    const { code, out, err } = await annulet(["sizes", ...words]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(complaint);
  });
});
