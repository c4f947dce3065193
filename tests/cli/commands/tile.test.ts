// Covers: src/cli/write-svg.ts
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parseSvg } from "../../output/drawing/raster.js";
import { CHANNEL, DOMED } from "../../output/drawing/tiles.js";
import { annulet, namesIn, PLAIN, put, tempFolder } from "../support.js";

describe("annulet tile", () => {
  it("writes a drawing of the design, warnings beside it", async () => {
    const folder = tempFolder();
    const [design, output] = [put(folder, "ring.json", CHANNEL), join(folder, "tile.svg")];
    const { code, out, err } = await annulet(["tile", design, "-o", output]);
    expect(code).toBe(0);
    expect(out).toMatch(/^written: .*tile\.svg \(\d+\.\d kB\)\n$/);
    expect(err).toMatch(/^warning: profile.width: the band is/);
    expect(parseSvg(readFileSync(output, "utf8")).getElementsByTagName("title")[0].textContent).toBe(CHANNEL.name);
    expect(namesIn(folder)).toEqual(["ring.json", "tile.svg"]);
  });

  it("shows several tiles, and as worn", async () => {
    const folder = tempFolder();
    const output = join(folder, "tile.svg");
    const stdin = JSON.stringify(DOMED);
    await annulet(["tile", "-", "-o", output, "--repeats", "3"], { stdin });
    expect(readFileSync(output, "utf8")).toMatch(/3 shown[\s\S]*flat, as drawn/);
    await annulet(["tile", "-", "-o", output, "--as-worn"], { stdin });
    expect(readFileSync(output, "utf8")).toMatch(
      /one shown[\s\S]*as worn: laid flat at the relief&apos;s top|as worn: laid flat at the relief's top/,
    );
  });

  it("draws the chart of frieze groups without a design", async () => {
    const output = join(tempFolder(), "groups.svg");
    expect(await annulet(["tile", "--groups", "-o", output])).toMatchObject({ code: 0, err: "" });
    expect(readFileSync(output, "utf8")).toContain("p2mg: mirrors across");
  });

  it.each([
    [["tile"], /no design to draw[\s\S]*Nothing is asked for/],
    [["tile", "-"], /Nothing is asked for/],
    [["tile", "-", "-o", "tile.png"], /The drawing is SVG/],
    [["tile", "-", "--groups", "-o", "tile.svg"], /without a design/],
    [["tile", "--groups", "--as-worn", "-o", "tile.svg"], /not for the chart/],
    [["tile", "-", "-o", "tile.svg", "--repeats", "0"], /a whole number from 1/],
    [["tile", "-", "-o", "tile.svg", "--repeats", "two"], /not a number/],
  ])("refuses %j", async (words, message) => {
    const { code, out, err } = await annulet(words, { stdin: JSON.stringify(CHANNEL) });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });

  it("writes nothing where there is nothing to draw", async () => {
    const output = join(tempFolder(), "tile.svg");
    const plain = await annulet(["tile", "-", "-o", output], { stdin: JSON.stringify(PLAIN) });
    expect(plain).toMatchObject({ code: 2, out: "" });
    expect(plain.err).toMatch(/no pattern/);
    const many = await annulet(["tile", "-", "-o", output, "--repeats", "999"], { stdin: JSON.stringify(CHANNEL) });
    expect(many.code).toBe(2);
    expect(many.err).toMatch(/999 tiles cannot be shown/);
    expect(existsSync(output)).toBe(false);
  });
});
