// Covers: src/output/drawing/band-row.ts
import { describe, expect, it } from "vitest";
import { drawFindings } from "../../../src/output/drawing/findings-drawing.js";
import { checkDesign } from "../../../src/ring/check-design.js";
import { covered, ofClass, parseSvg, sheetSize } from "./raster.js";

const DESIGN = {
  annulet: 1,
  name: "Moss & <rill>",
  tolerance: 0.05,
  size: { diameter: 17.5 },
  profile: { width: 7, thickness: 1.9, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
  pattern: {
    fit: { hold: "band", repeats: 10 },
    regions: [{ path: "M 1 -1 h 1 v 2 h -1 Z M 2.13 -1 h 1 v 2 h -1 Z", unit: "mm", height: 0.4 }],
  },
};

describe("the drawing of findings", () => {
  it("rings every place once, inside the sheet, with the finding's number", async () => {
    const check = await checkDesign(DESIGN);
    const svg = drawFindings(check);
    const document = parseSvg(svg);
    const rings = ofClass(document, "place");
    expect(rings.length).toBeGreaterThan(0);
    const places = check.findings.flatMap((one) => one.places);
    expect(rings.length).toBeLessThanOrEqual(places.length);
    const numbers = new Set(rings.flatMap((ring) => (ring.textContent ?? "").split(" ")));
    expect([...numbers].sort()).toEqual(check.findings.map((_, i) => String(i + 1)));
    const { width, height } = sheetSize(document);
    const { box } = covered(svg, 4);
    expect(box.right).toBeLessThanOrEqual(width);
    expect(box.bottom).toBeLessThanOrEqual(height);
  });

  it("puts a place where it lies: four times its distance along and across", async () => {
    const check = await checkDesign(DESIGN);
    const { band } = check;
    const ringAt = (angle: number, v: number) => {
      const [finding] = check.findings;
      const svg = drawFindings({ ...check, findings: [{ ...finding, places: [{ angle, v }] }] });
      const [circle] = ofClass(parseSvg(svg), "place")[0].getElementsByTagName("circle");
      return [Number(circle.getAttribute("cx")), Number(circle.getAttribute("cy"))];
    };
    const [x0, y0] = ringAt(band.start + 10, 0);
    const [x1, y1] = ringAt(band.start + 40, 1);
    expect(x1 - x0).toBeCloseTo((4 * band.around * 30) / 360, 2);
    expect(y0 - y1).toBeCloseTo(4, 3);
  });

  it("says so where every limit is kept", async () => {
    const svg = drawFindings({ ...(await checkDesign(DESIGN)), findings: [] });
    expect(parseSvg(svg).documentElement?.textContent).toContain("Every limit is kept.");
  });
});
