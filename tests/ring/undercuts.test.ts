// Covers: src/judge/castability/measure-undercut.ts, src/judge/castability/on-beads.ts
import { describe, expect, it } from "vitest";
import { checkDesign } from "../../src/ring/check-design.js";
import { fontFiles } from "../support/fonts.js";

const [WIDTH, RISE] = [6, 1.2];

/** Of the circle through the sides' tops and the crown, mm. */
const RADIUS = ((WIDTH / 2) ** 2 + RISE ** 2) / (2 * RISE);

const DEGREES = 180 / Math.PI;

const domed = { form: "domed", rise: RISE, edge: 0 };

/** A rectangle of each of eight tiles, from v to v. */
const design = ([low, high]: readonly [number, number], more: object = {}, outside: object = domed) => ({
  annulet: 1,
  tolerance: 0.02,
  size: { diameter: 17.5 },
  profile: { width: WIDTH, thickness: 2.2, bore: { form: "flat", edge: 0.2 }, outside },
  pattern: {
    fit: { hold: "band", repeats: 8 },
    regions: [{ unit: "mm", path: `M 1 ${low} h 3 V ${high} h -3 Z`, height: 0.5, ...more }],
  },
});

async function undercut(document: object) {
  const { results, findings } = await checkDesign(document);
  const result = results.find(({ rule }) => rule === "undercut");
  return { result, finding: findings.find(({ rule }) => rule === "undercut") };
}

describe("undercuts of the outside", () => {
  it("a wall that follows a dome's normal leans over by the dome's tilt at its place, on its own side alone", async () => {
    const { result, finding } = await undercut(design([0.5, 2]));
    // The outer wall: its normal is the dome's tangent, which falls by the tilt.
    expect(Math.abs((result?.figure as number) - (2 / RADIUS) * DEGREES)).toBeLessThan(0.3);
    expect(finding).toMatchObject({ severity: "note", limit: 5, unit: "°", source: "common practice, no source" });
    expect(finding?.message).toMatch(/lean over the radius by up to 2\d\.\d°/);
    // Eight walls, 3 mm long at the reference radius and 0.5 mm high: the radius there is within 8 % of that.
    const area = Number(/([\d.]+) mm² in all/.exec(finding?.message ?? "")?.[1]);
    expect(Math.abs(area / (8 * 3 * 0.5) - 1)).toBeLessThan(0.08);
    expect(finding?.places.length).toBe(10);
    for (const { v } of finding?.places ?? []) expect(Math.abs(v - 2)).toBeLessThan(0.05);
  });

  it("a groove's wall leans over on the side of the crown", async () => {
    const { result, finding } = await undercut(design([0.8, 2], { mode: "sunk", depth: 0.4, height: undefined }));
    expect(Math.abs((result?.figure as number) - (0.8 / RADIUS) * DEGREES)).toBeLessThan(0.3);
    for (const { v } of finding?.places ?? []) expect(Math.abs(v - 0.8)).toBeLessThan(0.1);
  });

  it("walls with more draft than the tilt stand clear", async () => {
    const section = { form: "flat", height: 0.5, draft: 30 };
    const { result } = await undercut(design([0.5, 2], { height: undefined, section }));
    expect(result).toMatchObject({ figure: null, kept: true });
  });

  it("none is found on a flat band with slanted walls on coarse facets, nor of beads, the bore and the band's own sides", async () => {
    const slanted = { path: "M 1 -1 L 4 0.5 L 3.5 1.5 L 0.5 0 Z", beads: { on: "border", diameter: 0.5 } };
    const flat = { form: "flat", edge: 0.2 };
    const { result } = await undercut(design([0, 1], slanted, flat));
    expect(result).toMatchObject({ figure: null, kept: true });
    expect(result?.without).toContain("beads");
  });

  it("letters and engravings in the bore are none", async () => {
    const { pattern: _, ...bare } = design([0, 1]);
    const lettering = [{ at: "bore", text: "MARSH", depth: 0.3 }];
    const { results } = await checkDesign({ ...bare, lettering }, { files: fontFiles });
    expect(results.find(({ rule }) => rule === "undercut")?.figure).toBeNull();
  });
});
