// Covers: src/output/drawing/leader.ts
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { outlineMoments } from "../../../src/band/profile/moments.js";
import { buildProfile } from "../../../src/band/profile/profile.js";
import { profileSchema } from "../../../src/design/profile/profile.js";
import { readDesign } from "../../../src/design/read.js";
import { figureElement, stackFigures, WIDEST } from "../../../src/output/drawing/figure.js";
import { drawSection } from "../../../src/output/sheet/section-figure.js";
import { resolveSize } from "../../../src/size/size.js";
import { covered, onlyClass, parseSvg } from "../drawing/raster.js";
import { textBoxes } from "./text-boxes.js";

/** The demo's designs, all of whose sections are drawn. */
const EXAMPLES = new URL("../../../examples/", import.meta.url);
const designs = readdirSync(EXAMPLES)
  .filter((file) => /^[a-z]+-[a-z-]+\.json$/.test(file))
  .map((file) => [file, readDesign(readFileSync(new URL(file, EXAMPLES), "utf8"))] as const);

const BORE = resolveSize({ system: "iso", value: 55 }).diameter / 2;

function sectionOf(sizes: z.input<typeof profileSchema>, relief: number) {
  const spec = profileSchema.parse(sizes);
  const profile = buildProfile(spec, BORE, 0.01);
  const { outside } = spec;
  const channel = outside.form === "channel" ? { rail: outside.rail, depth: outside.depth } : {};
  const figure = drawSection(profile, { relief, ...channel });
  return { profile, figure, svg: stackFigures([figure], "section") };
}

describe("the cross-section", () => {
  it("is found for every demo design", () => expect(designs.length).toBeGreaterThan(15));

  it.each(designs)("of %s covers its exact area, by resvg", (_, { profile: spec }) => {
    const { profile, figure, svg } = sectionOf(spec, 0);
    const scale = Number.parseInt(figure.scale, 10);
    const { area, box } = covered(onlyClass(svg, "section"), 20);
    const exact = outlineMoments(profile.outline).area * scale ** 2;
    expect(Math.abs(area / exact - 1)).toBeLessThan(0.002);
    expect((box.right - box.left) / scale).toBeCloseTo(profile.width, 1);
    expect((box.bottom - box.top) / scale).toBeCloseTo(profile.outsideRadius - profile.boreRadius, 1);
  });

  it.each(designs)("of %s has no text over another or beyond the figure", (_, design) => {
    for (const relief of [0, 0.2, 0.5]) {
      const { figure } = sectionOf(design.profile, relief);
      expect(figure.width).toBeLessThanOrEqual(WIDEST);
      const boxes = textBoxes(figureElement(figure));
      expect(boxes.length).toBeGreaterThan(5);
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) {
          const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
          expect(apart, `${a.text} over ${b.text}`).toBe(true);
        }
        expect(a.left).toBeGreaterThan(0);
        expect(a.right).toBeLessThan(figure.width);
        expect(a.top).toBeGreaterThan(0);
        expect(a.bottom).toBeLessThan(figure.height);
      });
    }
  });

  it("tells the sizes that were asked for", () => {
    const { profile, svg } = sectionOf(
      {
        width: 8.2,
        thickness: 2.1,
        bore: { form: "comfort", rise: 0.2, edge: 0.3 },
        outside: { form: "channel", rail: 0.9, depth: 0.75, crown: 0, edge: 0.15 },
      },
      0.5,
    );
    const texts = textBoxes(svg).map(({ text }) => text);
    for (const text of ["8.200", "2.100", "0.900", "6.400", "0.750", "0.500", "1.350", "4× R 0.15", "2× R 0.30"]) {
      expect(texts).toContain(text);
    }
    expect(texts).toContain(`bore ⌀ ${(2 * profile.boreRadius).toFixed(3)}`);
    // Each dimension's line is as long as its number says, at the figure's scale.
    const dimensions = [...parseSvg(svg).getElementsByTagName("g")].filter(
      (g) => g.getAttribute("class") === "dimension",
    );
    expect(dimensions.length).toBe(9);
    for (const dimension of dimensions) {
      const value = Number(dimension.getElementsByTagName("text")[0].textContent);
      const lines = [...dimension.getElementsByTagName("path")].map((path) => path.getAttribute("d") ?? "");
      const tips = lines
        .filter((d) => d.endsWith("Z"))
        .map((d) => (/^M([\d.]+) ([\d.]+)/.exec(d) ?? []).slice(1).map(Number));
      const length = Math.hypot(tips[0][0] - tips[1][0], tips[0][1] - tips[1][1]);
      expect(length / 10).toBeCloseTo(value, 3);
    }
  });

  it("takes a smaller scale for what has no room, and says it", () => {
    const broad = {
      width: 20,
      thickness: 2,
      bore: { form: "flat", edge: 0 },
      outside: { form: "flat", edge: 0 },
    } as const;
    expect(sectionOf(broad, 0).figure.scale).toBe("5:1");
    expect(sectionOf({ ...broad, width: 6 }, 0).figure.scale).toBe("10:1");
  });
});
