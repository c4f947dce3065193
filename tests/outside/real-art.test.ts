// Across: drawings that were not made for this
/**
 * Art that others drew: every file of bootstrap-icons (MIT; a dev dependency) through the import, its area against the
 * coverage that resvg rasterises, and a seeded choice of them made into whole rings.
 *
 * How many rings: environment ANNULET_REAL_ART, default 20.
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Resvg } from "@resvg/resvg-js";
import { AnnuletError, build } from "annulet";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outlineDrawing } from "../../src/art/svg/outline-drawing.js";
import { placeDrawing } from "../../src/art/svg/place-drawing.js";
import { readSvg } from "../../src/art/svg/read-svg.js";
import type { Warning } from "../../src/base/errors.js";
import { ringArea } from "../../src/flat/polygons.js";

const SEED = 20261125;
const RINGS = Number(process.env.ANNULET_REAL_ART ?? 20);

const folder = fileURLToPath(new URL("../../node_modules/bootstrap-icons/icons/", import.meta.url));
const names = readdirSync(folder)
  .filter((name) => name.endsWith(".svg"))
  .sort();
const textOf = (name: string) => readFileSync(folder + name, "utf8");

/** Every icon is placed on a page of so many mm, and rasterised with so many pixels. */
const [PAGE, PIXELS] = [16, 256];

/** Area of an icon as it is imported, mm². */
function importedArea(text: string, name: string, warnings: Warning[] = []): number {
  const drawing = readSvg(text, name, "svg", (warning) => warnings.push(warning));
  if (drawing.page === undefined) throw new Error(`${name} has no page`);
  const place = placeDrawing(undefined, drawing.page, { unit: "mm", width: PAGE, height: PAGE, aspect: 1 });
  const { region } = outlineDrawing(drawing, { place, scale: 1e6, tolerance: 1e-3, where: "svg" });
  return region.reduce((sum, ring) => sum + ringArea(ring), 0) / 1e12;
}

/** Area that resvg covers, mm². Faint paint counts as paint on a ring, so opacities are taken off first. */
function rasterArea(text: string): number {
  const opaque = text.replace(/ fill-opacity="[^"]*"/g, "");
  const { pixels, width, height } = new Resvg(opaque, {
    fitTo: { mode: "width", value: PIXELS },
    font: { loadSystemFonts: false },
  }).render();
  let covered = 0;
  for (let i = 3; i < pixels.length; i += 4) covered += pixels[i];
  return (covered / 255 / (width * height)) * PAGE * PAGE;
}

describe(`bootstrap-icons, ${names.length} files`, () => {
  it("cover the area that resvg covers, each to 1 %", () => {
    const wrong: string[] = [];
    const warnings: Warning[] = [];
    let [worst, importing] = [0, 0];
    for (const name of names) {
      const text = textOf(name);
      const start = performance.now();
      const area = importedArea(text, name, warnings);
      importing += performance.now() - start;
      const expected = rasterArea(text);
      const difference = Math.abs(area - expected);
      worst = Math.max(worst, difference / expected);
      if (difference > 0.01 * expected) wrong.push(`${name}: ${area} mm², resvg ${expected}`);
    }
    console.log(
      `${names.length} files imported in ${Math.round(importing)} ms, ${wrong.length} areas wrong, ${warnings.length} warnings; largest difference ${(100 * worst).toFixed(2)} %`,
    );
    expect(names.length).toBeGreaterThan(2000);
    expect(wrong).toEqual([]);
    expect(warnings.map(({ message }) => message)).toEqual([]);
  });

  it(`give a closed ring or an error that says why, ${RINGS} of them by seed ${SEED}`, async () => {
    const chosen = fc.sample(fc.shuffledSubarray(names, { minLength: RINGS, maxLength: RINGS }), {
      seed: SEED,
      numRuns: 1,
    })[0];
    const closed: string[] = [];
    const refused = new Map<string, string[]>();
    const warned = new Map<string, number>();
    for (const name of chosen) {
      try {
        const { report } = await build(ringOf(name), { files: textOf });
        expect(report, name).toMatchObject({ closed: true });
        closed.push(name);
        for (const { code } of report.warnings) warned.set(code, (warned.get(code) ?? 0) + 1);
      } catch (error) {
        if (!(error instanceof AnnuletError)) throw new Error(`${name}: ${error}`, { cause: error });
        refused.set(error.code, [...(refused.get(error.code) ?? []), `${name}: ${error.message}`]);
      }
    }
    console.log(
      `${closed.length} of ${chosen.length} closed; refused:`,
      Object.fromEntries(refused),
      "warned:",
      warned,
    );
    for (const messages of refused.values()) expect(messages.join("\n")).toMatch(/pattern\.regions\[0\]/);
    expect([...refused.keys()]).not.toContain("not-closed");
    expect(closed.length).toBeGreaterThan(0.9 * chosen.length);
  });
});

/** A plain band with an icon in each of a dozen tiles; coarse. */
function ringOf(svg: string) {
  return {
    annulet: 1,
    size: { diameter: 18 },
    tolerance: 0.05,
    profile: {
      width: 6,
      thickness: 1.6,
      bore: { form: "flat", edge: 0.1 },
      outside: { form: "flat", edge: 0.2 },
    },
    pattern: {
      fit: { repeats: 12, hold: "band" },
      regions: [{ svg, place: { scale: 0.8 }, height: 0.4 }],
    },
  };
}
