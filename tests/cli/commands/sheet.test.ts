import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { decode } from "fast-png";
import { describe, expect, it } from "vitest";
import { findChromium } from "../../../src/cli/print-pdf.js";
import { densitySpan, showGrams } from "../../../src/output/report/show-grams.js";
import { build } from "../../../src/ring/build.js";
import { CHANNEL } from "../../output/drawing/tiles.js";
import { annulet, namesIn, put, tempFolder } from "../support.js";

/** Poppler reads what Chromium printed. */
const hasPoppler = ["pdftotext", "pdftoppm"].every((name) =>
  (process.env.PATH ?? "").split(":").some((folder) => existsSync(join(folder, name))),
);

/** Pixels a mm at which a page is looked at. */
const FINENESS = 200 / 25.4;

/** Grey, of 255, up to which a pixel is full ink, and up to which it is some: thin lines come out grey. */
const [FULL_INK, SOME_INK] = [60, 190];

/**
 * A page's size and the lengths of its scale bars, mm. A bar's left half is the only thing on a sheet without pictures that is
 * ink for 0.7 mm down and 9 mm along; its frame goes on to its right end.
 */
function measurePage(pdf: string, page: number, folder: string) {
  const name = join(folder, `page-${page}`);
  const range = ["-f", String(page), "-l", String(page)];
  execFileSync("pdftoppm", ["-r", String(25.4 * FINENESS), "-gray", "-png", "-singlefile", ...range, pdf, name]);
  const { width, height, data, channels } = decode(readFileSync(`${name}.png`));
  const [thick, long] = [Math.round(0.7 * FINENESS), Math.round(9 * FINENESS)];
  const runAt = (x: number, y: number, ink: number) => {
    let end = x;
    while (end < width && data[(y * width + end) * channels] <= ink) end++;
    return end - x;
  };
  for (let y = 0; y + 2 * thick < height; y++) {
    for (let x = 0; x < width; x++) {
      const run = runAt(x, y, FULL_INK);
      const isThick =
        run >= long && [0.5, 1].every((share) => runAt(x + 2, y + Math.round(share * thick), FULL_INK) >= long - 4);
      if (isThick) {
        const rows = Array.from({ length: 2 * thick }, (_, i) => y - Math.round(thick / 4) + i);
        const longest = Math.max(...rows.map((row) => runAt(x, row, SOME_INK)));
        return { width: width / FINENESS, height: height / FINENESS, bars: [longest / FINENESS] };
      }
      x += run;
    }
  }
  return { width: width / FINENESS, height: height / FINENESS, bars: [] };
}

describe("annulet sheet", () => {
  it("writes the sheet and its drawings, warnings beside them", async () => {
    const folder = tempFolder();
    const design = put(folder, "ring.json", CHANNEL);
    const [html, svg] = [join(folder, "sheet.html"), join(folder, "drawings.svg")];
    const { code, out, err } = await annulet(["sheet", design, "-o", html, "-o", svg, "--pictures", "0"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^written: .*sheet\.html \(.*kB\)\nwritten: .*drawings\.svg \(.*kB\)\n$/);
    expect(err).toMatch(/^warning: profile.width: the band is/);
    expect(readFileSync(html, "utf8")).toMatch(/^<!doctype html>[\s\S]*annulet \d+\.\d+\.\d+<\/footer>/);
    expect(readFileSync(svg, "utf8")).toMatch(/^<\?xml/);
    expect(namesIn(folder)).toEqual(["drawings.svg", "ring.json", "sheet.html"]);
  });

  it.each([
    [["sheet", "-"], /name an output: -o sheet.html/],
    [["sheet", "-", "-o", "sheet.doc"], /HTML, PDF or SVG/],
    [["sheet", "-", "-o", "sheet.html", "--paper", "a4"], /--paper is for PDF/],
    [["sheet", "-", "-o", "sheet.html", "--pictures", "-5"], /0 to 8192/],
    [["sheet", "-", "-o", "sheet.html", "--pictures", "8193"], /0 to 8192/],
  ])("refuses %j", async (words, message) => {
    const { code, out, err } = await annulet(words, { stdin: JSON.stringify(CHANNEL) });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });

  it("finds no Chromium where there is none", () => {
    expect(findChromium("/nowhere:/neither")).toBeUndefined();
    expect(findChromium("")).toBeUndefined();
  });
});

describe.skipIf(findChromium() === undefined || !hasPoppler)("the printed sheet", () => {
  let built: ReturnType<typeof build> | undefined;

  it.each([
    ["a4", 210, 297],
    ["letter", 215.9, 279.4],
  ])("on %s is true to size and says what the report says", async (paper, width, height) => {
    const folder = tempFolder();
    const [design, pdf] = [put(folder, "ring.json", CHANNEL), join(folder, "sheet.pdf")];
    const words = ["sheet", design, "-o", pdf, "--paper", paper, "--pictures", "0"];
    expect((await annulet(words)).code).toBe(0);

    const text = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" });
    built ??= build(CHANNEL);
    const { report } = await built;
    for (const value of [report.size.diameter, report.band.width, report.volume]) {
      expect(text).toContain(value.toFixed(3));
    }
    for (const { symbol, finished, cast, melt } of report.weights.rows) {
      const span = densitySpan(report.weights, symbol);
      for (const weight of [finished, cast, melt]) expect(text).toContain(` ${showGrams(weight, span)}`);
    }
    expect(text).toContain("Cautions");

    const pages = (text.match(/\f/g) ?? []).length;
    expect(pages).toBeLessThanOrEqual(5);
    const sizes = Array.from({ length: pages }, (_, i) => measurePage(pdf, i + 1, folder));
    for (const size of sizes) {
      expect(Math.abs(size.width - width)).toBeLessThan(0.5);
      expect(Math.abs(size.height - height)).toBeLessThan(0.5);
    }
    const bars = sizes.flatMap(({ bars }) => bars);
    expect(bars).toHaveLength(1);
    // The frame's line is 0.13 mm wide, half of it beyond each end.
    expect(Math.abs(bars[0] - 20.13)).toBeLessThan(0.2);
  });
});
