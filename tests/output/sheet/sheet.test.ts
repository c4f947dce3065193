// Covers: src/output/drawing/figure.ts, src/output/sheet/*, src/ring/bench-sheet.ts, src/ring/steps/put-sheet.ts
// Covers: src/ring/steps/sheet-pictures.ts
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { decode } from "fast-png";
import { beforeAll, describe, expect, it } from "vitest";
import { stackFigures } from "../../../src/output/drawing/figure.js";
import { cautions } from "../../../src/output/report/cautions.js";
import { densitySpan, showGrams } from "../../../src/output/report/show-grams.js";
import { drawPatternFigure } from "../../../src/output/sheet/pattern-figure.js";
import { drawTileFigure } from "../../../src/output/sheet/tile-figure.js";
import { benchSheet } from "../../../src/ring/bench-sheet.js";
import { checkDesign } from "../../../src/ring/check-design.js";
import { flatTile } from "../../../src/ring/flat-tile.js";
import type { BenchSheet } from "../../../src/ring/steps/put-sheet.js";
import { sizeTable } from "../../../src/size/size-table.js";
import { bytesOf } from "../../support/fonts.js";
import { covered, ofClass, onlyClass, parseSvg, sheetSize } from "../drawing/raster.js";
import { CHANNEL, CHANNEL_AREA } from "../drawing/tiles.js";

const example = (name: string) => readFileSync(new URL(`../../../examples/${name}.json`, import.meta.url), "utf8");

/** The one font that the examples name. */
const fontOnly = () => bytesOf("nunito");

/** Text of the sheet as a reader sees it. */
function textOf(html: string): string {
  const body = html.slice(html.indexOf("<body>"));
  return body
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ");
}

describe("the bench sheet", () => {
  const document = {
    ...CHANNEL,
    name: 'Two "squares" <&>',
    beads: [{ along: "rail", diameter: 0.4 }],
    casting: { shrinkage: 1.5, finishing: 0.05 },
    costing: { prices: { ag925: 1.25 }, currency: "EUR" },
  };
  let sheet: BenchSheet;
  let text: string;

  beforeAll(async () => {
    sheet = await benchSheet(document, { tool: "annulet test", pictureWidth: 80 });
    text = textOf(sheet.html);
  });

  it("needs nothing but itself: no script, nothing fetched, no address but the namespace", () => {
    expect(sheet.html).not.toMatch(/<script|<link|@import|url\(/i);
    const addresses = [...sheet.html.matchAll(/\b(?:src|href)="([^"]{0,30})/g)].map(([, address]) => address);
    expect(addresses).toHaveLength(3);
    for (const address of addresses) expect(address).toMatch(/^data:image\/png;base64,/);
    expect([...new Set(sheet.html.match(/https?:[^"\s]*/g))]).toEqual(["http://www.w3.org/2000/svg"]);
  });

  it("says what the report and the castability checks say", async () => {
    const { report } = sheet;
    expect(text).toContain('Two "squares" <&>');
    const { finished, cast, master } = report.allowances;
    const numbers = [
      report.size.diameter,
      report.band.width,
      report.volume,
      ...[finished, cast, master].flatMap(({ bore, width, wall, volume }) => [bore, width, wall, volume]),
      ...report.beads.flatMap(({ ratio, spacing }) => [ratio, spacing]),
    ];
    for (const number of numbers) expect(text).toContain(number.toFixed(3));
    for (const { symbol, finished: grams, cast: casting, melt } of report.weights.rows) {
      const span = densitySpan(report.weights, symbol);
      for (const weight of [grams, casting, melt]) expect(text).toContain(` ${showGrams(weight, span)} `);
    }
    for (const { count } of report.beads) expect(text).toContain(` ${count} `);
    for (const { label } of sizeTable(report.size.circumference)) expect(text).toContain(label);
    for (const warning of report.warnings) expect(text).toContain(warning.message.replace(/\s+/g, " "));
    for (const { text: caution } of cautions) expect(text).toContain(caution);
    const { findings } = await checkDesign(document);
    expect(findings.length).toBeGreaterThan(0);
    for (const { message } of findings) expect(text).toContain(message);
    expect(text).toContain(((report.weights.rows[0].melt * 125) / 100).toFixed(2));
    expect(text).toContain("annulet test");
  });

  it("carries the digest of the design's text, as another implementation makes it", async () => {
    expect(text).toContain(createHash("sha256").update(JSON.stringify(document)).digest("hex"));
    const file = example("marram-band");
    const { html, drawings } = await benchSheet(file, { pictureWidth: 0 });
    expect(html).toContain(createHash("sha256").update(file).digest("hex"));
    // A plain band has a section and nothing to unroll.
    expect(html).not.toContain("<img");
    expect(ofClass(parseSvg(drawings), "section-figure")).toHaveLength(1);
    expect(ofClass(parseSvg(drawings), "pattern-figure")).toHaveLength(0);
  });

  it("holds pictures that a decoder reads back", () => {
    const files = [...sheet.html.matchAll(/base64,([^"]*)"/g)].map(([, text]) => decode(Buffer.from(text, "base64")));
    expect(files.map(({ width, height }) => `${width}x${height}`)).toEqual(["80x60", "80x60", "80x60"]);
  });

  it("gives the drawings alone as well-formed SVG in mm, each in its own group", () => {
    const svg = parseSvg(sheet.drawings);
    for (const name of ["section-figure", "pattern-figure", "tile-figure"]) expect(ofClass(svg, name)).toHaveLength(1);
    const { width, height } = sheetSize(svg);
    const { box } = covered(onlyClass(sheet.drawings, "section-figure"), 4);
    expect(box.right).toBeLessThan(width);
    expect(box.bottom).toBeLessThan(height);
  });

  it("shows a cover with a medallion: one span of tiles, one tile, the medallion", async () => {
    const document = JSON.parse(example("reedbed-medallion"));
    const cover = { ...document, pattern: { ...document.pattern, cover: 240 } };
    const { html, report } = await benchSheet(cover, { pictureWidth: 0 });
    const { repeats = 0, medallion = 0 } = report.fit ?? {};
    expect(medallion).toBeGreaterThan(0);
    expect(html.match(/class="tile-figure"/g)).toHaveLength(2);
    expect(html).toContain("Medallion, flat");
    expect(textOf(html)).toContain(`${(repeats - medallion) / 2} tiles, at the reference radius`);
  });

  it("lists lettering with its font, the hallmark's field and the sprue, and marks the design's own alloy", async () => {
    const document = JSON.parse(example("reedbed-tollgate"));
    const sprue = { diameter: 2.5, length: 8 };
    const { html } = await benchSheet({ ...document, sprue }, { files: fontOnly, pictureWidth: 0 });
    const text = textOf(html);
    expect(text).toContain('"TURN BACK BEFORE THE TIDE" on the +z rail at 90° sunk 0.2 mm 1.900');
    expect(text).toContain('"GATE 7" in the bore at 90° sunk 0.25 mm 2.000');
    expect(text).toContain("field for a hallmark on the seat at 270°");
    expect(text).toContain("Nunito_800ExtraBold.ttf");
    expect(text).toMatch(/Drawn sprue: \d+\.\d{3} mm³, [\d.]+ g in ag925/);
    expect(html.match(/<tr class="own">.*?<\/tr>/g)).toEqual([expect.stringContaining("Sterling silver")]);
    expect(text).not.toMatch(/value:/);
  });

  it("draws every lane", async () => {
    const { html } = await benchSheet(example("reedbed-lanes"), { pictureWidth: 0 });
    expect(html.match(/class="pattern-figure"/g)).toHaveLength(3);
    expect(html.match(/class="tile-figure"/g)).toHaveLength(3);
  });
});

describe("the pattern at true size and the tile enlarged", () => {
  it("cover the regions' area, and a bar of 20 mm stands beneath the pattern", async () => {
    const tile = await flatTile(CHANNEL);
    const all = await flatTile(CHANNEL, { tiles: tile.round.repeats });
    const pattern = stackFigures([drawPatternFigure(all)], "pattern");
    const area = CHANNEL_AREA * tile.fit.tileWidth ** 2;
    expect(covered(onlyClass(pattern, "regions"), 40).area / (all.tiles * area)).toBeCloseTo(1, 2);
    const bar = covered(onlyClass(pattern, "scale-bar").replaceAll(/<text.*?<\/text>/g, ""), 40).box;
    expect(Math.abs(bar.right - bar.left - 20)).toBeLessThan(0.05);
    const figure = drawTileFigure(tile);
    expect(figure.scale).toBe("10:1");
    expect(covered(onlyClass(stackFigures([figure], "tile"), "regions"), 10).area / (100 * area)).toBeCloseTo(1, 2);
  });

  it("turns a pattern that is too long for the paper, and leaves others", async () => {
    const bangle = await benchSheet({ ...CHANNEL, size: { circumference: 185 } }, { pictureWidth: 0 });
    const size = (html: string) =>
      /<svg[^>]*width="([\d.]+)mm" height="([\d.]+)mm"[^>]*class="pattern-figure"/.exec(html)?.slice(1).map(Number) ??
      [];
    const [width, height] = size(bangle.html);
    expect(height).toBeGreaterThan(185);
    expect(width).toBeLessThan(60);
    expect(size((await benchSheet(CHANNEL, { pictureWidth: 0 })).html)[0]).toBeGreaterThan(60);
  });

  it("keeps its axes and marks within the figure at any scale", async () => {
    const figure = drawTileFigure(await flatTile(example("saltmarsh-lattice")));
    const svg = stackFigures([figure], "tile");
    const [seat, axes] = ["borders", "symmetry"].map((name) => {
      const kept = new Set([name]);
      return covered(
        svg
          .replaceAll(/<g class="([a-z-]+)">/g, (all, one) =>
            kept.has(one) || one === "tile-figure" ? all : `<g class="${one}" display="none">`,
          )
          .replace(/<rect class="paper"[^>]*\/>/, ""),
        10,
      ).box;
    });
    expect(axes.right - seat.right).toBeLessThan(2);
    expect(seat.top - axes.top).toBeLessThan(2);
  });
});
