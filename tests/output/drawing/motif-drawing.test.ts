import { beforeAll, describe, expect, it } from "vitest";
import { sampleDesign } from "../../../src/art/motifs/sample.js";
import { listMotifs } from "../../../src/design/motifs/list.js";
import { drawMotifs, type MotifSample } from "../../../src/output/drawing/motif-drawing.js";
import { flatTile } from "../../../src/ring/flat-tile.js";
import { covered, ofClass, onlyClass, parseSvg, sheetSize } from "./raster.js";

/** Pixels a millimetre, and millimetres of the sheet for one of a tile. */
const RASTER = 16;
const ZOOM = 2;

const shown = ["arcade", "braid", "leaf-vine", "star"];
const entries = listMotifs().filter(({ name }) => shown.includes(name));

describe("the sheet of motifs", () => {
  let samples: MotifSample[];
  let svg: string;
  beforeAll(async () => {
    samples = await Promise.all(
      entries.map(async (motif) => ({ motif, tile: await flatTile(sampleDesign(motif), { tiles: 3 }) })),
    );
    svg = drawMotifs(samples);
  });

  it("is well-formed, in millimetres, with each motif's name and use", () => {
    const document = parseSvg(svg);
    expect(sheetSize(document).width).toBeGreaterThan(100);
    for (const { name, group } of entries) {
      const [cell] = ofClass(document, name);
      expect(cell.textContent).toContain(`${name}${group}, aspect`);
    }
  });

  it.each(shown)("covers as much of %s, rasterised by resvg, as its outlines enclose", (name) => {
    const { tile } = samples.find(({ motif }) => motif.name === name) as MotifSample;
    const enclosed = tile.regions.flatMap(({ rings }) => rings).reduce((sum, ring) => sum + areaOf(ring), 0);
    const { area } = covered(onlyClass(onlyClass(svg, name), "region"), RASTER);
    expect(area / (enclosed * ZOOM ** 2)).toBeCloseTo(1, 2);
  });
});

/** Signed area by the shoelace formula. */
function areaOf(ring: readonly (readonly [number, number])[]): number {
  return ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length];
    return sum + (x * v - u * y) / 2;
  }, 0);
}
