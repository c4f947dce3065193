// Covers: src/output/drawing/legend.ts, src/output/drawing/pens.ts, src/output/drawing/region-drawing.ts
// Covers: src/output/drawing/tile-fills.ts, src/output/drawing/tile-notes.ts
// Covers: src/output/drawing/tile-place.ts, src/output/drawing/drawn-tile.ts
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { drawTile } from "../../../src/output/drawing/tile-drawing.js";
import { flatTile } from "../../../src/ring/flat-tile.js";
import { covered, ofClass, onlyClass, parseSvg, sheetSize } from "./raster.js";
import { CHANNEL, CHANNEL_AREA, DOMED } from "./tiles.js";

/** Pixels a millimetre. */
const ZOOM = 40;

const example = (name: string) => readFileSync(new URL(`../../../examples/${name}.json`, import.meta.url), "utf8");

describe("a tile's drawing", () => {
  it("is well-formed, in millimetres, and nothing stands beyond the sheet", async () => {
    for (const [document, tiles] of [
      [example("saltmarsh-lattice"), 9],
      [example("sluice-resizable"), 2],
    ] as const) {
      const svg = drawTile(await flatTile(document, { tiles }));
      const { width, height } = sheetSize(parseSvg(svg));
      const everything = onlyClass(svg, "notes");
      const { box } = covered(everything, 4);
      expect(box.bottom).toBeLessThan(height - 5);
      expect(box.right).toBeLessThan(width - 5);
    }
  });

  it("carries names with signs that XML keeps for itself, and without those that it forbids", async () => {
    const name = 'Moss & "Rill" <1>\u0000\u001b';
    const {
      regions: [square],
    } = CHANNEL.pattern;
    const pattern = { ...CHANNEL.pattern, regions: [{ ...square, name: "a<b>&\"'" }] };
    const document = parseSvg(drawTile(await flatTile({ ...CHANNEL, name, pattern })));
    expect(document.getElementsByTagName("title")[0].textContent).toBe('Moss & "Rill" <1>\uFFFD\uFFFD');
    expect(ofClass(document, "region")[0].getAttribute("data-names")).toBe("a<b>&\"'");
  });

  it("covers the regions' area", async () => {
    for (const tiles of [1, 3]) {
      const tile = await flatTile(CHANNEL, { tiles });
      const { area } = covered(onlyClass(drawTile(tile), "regions"), ZOOM);
      expect(area / (tiles * CHANNEL_AREA * tile.fit.tileWidth ** 2)).toBeCloseTo(1, 2);
    }
  });

  it("enlarges the tile and not its figures", async () => {
    const tile = await flatTile(CHANNEL);
    const drawn = drawTile(tile, { scale: 5 });
    const { area } = covered(onlyClass(drawn, "regions"), 10);
    expect(area / (25 * CHANNEL_AREA * tile.fit.tileWidth ** 2)).toBeCloseTo(1, 2);
    for (const length of [tile.fit.tileWidth, tile.fit.tileHeight]) expect(drawn).toContain(`>${length.toFixed(3)}<`);
    expect(drawn).toContain("Scale 5:1");
    const sizes = [drawn, drawTile(tile)].map((svg) => sheetSize(parseSvg(svg)));
    expect(sizes[0].height).toBeGreaterThan(sizes[1].height);
    for (const scale of [0, 101, Number.NaN]) {
      expect(() => drawTile(tile, { scale })).toThrow(expect.objectContaining({ code: "scale-out-of-range" }));
    }
  });

  it("shades one fundamental region: half the tile where one mirror completes it", async () => {
    const tile = await flatTile(CHANNEL, { tiles: 2 });
    const svg = drawTile(tile).replaceAll(/fill-opacity="[^"]*"/g, "");
    const { area, box } = covered(onlyClass(svg, "fundamental-region"), ZOOM);
    expect(area / (tile.fit.tileWidth * tile.seatLength)).toBeCloseTo(0.5, 2);
    expect(box.right - box.left).toBeCloseTo(tile.fit.tileWidth / 2, 1);
  });

  it("draws each bead once at its true diameter, and those shared on a border at both", async () => {
    const tile = await flatTile(example("saltmarsh-lattice"), { tiles: 2 });
    const circles = ofClass(parseSvg(drawTile(tile)), "bead");
    const counted = tile.runs.filter(({ onRail }) => !onRail).reduce((sum, { count }) => sum + count, 0);
    expect(circles.filter((one) => one.getAttribute("class") === "bead")).toHaveLength(
      (2 * counted) / tile.fit.repeats,
    );
    expect(circles.map((one) => Number(one.getAttribute("r")))).toEqual(circles.map(() => 0.17));
    const { textContent } = parseSvg(drawTile(tile)).documentElement as unknown as { textContent: string };
    expect(textContent).toContain(`${circles.length} circles on 2 tiles`);
  });

  it("has a scale bar of 10 mm and a tile of its true width", async () => {
    const tile = await flatTile(CHANNEL);
    const bar = covered(onlyClass(drawTile(tile), "scale-bar").replaceAll(/<text.*?<\/text>/g, ""), ZOOM).box;
    expect(bar.right - bar.left).toBeCloseTo(10, 1);
    const edge = ofClass(parseSvg(drawTile(tile)), "seat-edge")[0].getAttribute("d") ?? "";
    const [from, to] = (edge.match(/[\d.]+ /g) ?? []).map(Number);
    expect(to - from).toBeCloseTo(tile.fit.tileWidth, 3);
  });

  it("tells dimensions, repeats, size and stretch in words", async () => {
    const tile = await flatTile(CHANNEL, { tiles: 2 });
    const { textContent } = parseSvg(drawTile(tile)).documentElement as unknown as { textContent: string };
    const { fit, lambda } = tile;
    for (const told of [
      "Two squares",
      `${fit.repeats} tiles round the band, 2 shown`,
      "iso 54: bore 17.189 mm",
      fit.tileWidth.toFixed(3),
      (2 * fit.tileWidth).toFixed(3),
      lambda.topCrown.toFixed(4),
    ]) {
      expect(textContent).toContain(told);
    }
  });

  it("bulges as worn on a domed band, each row by its own λu", async () => {
    const tile = await flatTile(DOMED);
    const { fit, top, lambda } = tile;
    const svg = drawTile(tile, { asWorn: true });
    const texts = ofClass(parseSvg(svg), "dimension").map((one) => one.textContent ?? "");
    expect(texts.some((text) => text.includes((fit.tileWidth * lambda.topCrown).toFixed(3)))).toBe(true);
    expect(texts.some((text) => text.includes((fit.tileWidth * lambda.top.min).toFixed(3)))).toBe(true);
    // By Pappus, the band of surface over one tile is its rows' lengths added up across.
    let area = 0;
    const steps = 2000;
    for (let i = 0; i < steps; i++) {
      const [v, next] = [i, i + 1].map((k) => tile.seatLength * (k / steps - 0.5));
      const [[a, y], [b, z]] = [top.develop(fit.tileWidth, v), top.develop(fit.tileWidth, next)];
      area += ((a + b) / 2) * (z - y);
    }
    const shaded = covered(onlyClass(svg, "fundamental-region").replaceAll(/fill-opacity="[^"]*"/g, ""), ZOOM);
    expect(shaded.area / (area / 2)).toBeCloseTo(1, 2);
    expect(area).toBeGreaterThan(1.02 * fit.tileWidth * tile.seatLength);
  });

  it("is the flat tile as worn on a flat seat, longer by λu everywhere", async () => {
    const tile = await flatTile(CHANNEL);
    const { area } = covered(onlyClass(drawTile(tile, { asWorn: true }), "regions"), ZOOM);
    expect(area / (CHANNEL_AREA * tile.fit.tileWidth ** 2 * tile.lambda.topCrown)).toBeCloseTo(1, 2);
  });
});
