// Covers: src/art/text/load-fonts.ts, src/art/text/text-drawing.ts, src/design/art/text-art.ts
// Covers: src/design/art/text-fields.ts
import { build, type DesignInput, flatTile } from "annulet";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { FONTS, fontFiles, nameOf, typefaceOf } from "../../support/fonts.js";
import { overlap, raster, textElement } from "../../support/raster.js";

const design = (text: Record<string, unknown>, more: Record<string, unknown> = {}): DesignInput =>
  ({
    annulet: 1,
    size: { system: "iso", value: 56 },
    tolerance: 0.004,
    profile: { width: 6, thickness: 1.8, outside: { form: "flat", edge: 0.2 } },
    pattern: {
      fit: { repeats: 8, hold: "band", aspect: 0.7 },
      regions: [{ text: { text: "Ag", ...text }, height: 0.3, ...more }],
    },
  }) as DesignInput;

async function failure(document: DesignInput): Promise<unknown> {
  return flatTile(document, { files: fontFiles }).catch((cause: unknown) => cause);
}

describe("a region's text", () => {
  it("stands in its tile as resvg sets it, at the height that is said", async () => {
    const height = 1.8;
    const place = { at: [0.5, 0], anchor: "bottom-left" };
    const tile = await flatTile(design({ height, font: nameOf("alegreya") }, { place }), { files: fontFiles });
    const rings = tile.regions.flatMap((region) => [...region.rings]);
    const d = rings.map((ring) => `M ${ring.map(([u, v]) => `${u} ${-v}`).join(" L ")} Z`).join(" ");
    const face = await typefaceOf("alegreya");
    const text = textElement("Ag", "alegreya", (height * face.unitsPerEm) / face.capHeight);
    const frame = { x: -1, y: -5, width: 12, height: 10 };
    const theirs = raster(`<g transform="translate(${tile.fit.tileWidth / 2} 0)">${text}</g>`, frame, ["alegreya"]);
    expect(overlap(raster(`<path fill-rule="evenodd" d="${d}"/>`, frame), theirs)).toBeGreaterThan(0.99);
    expect(FONTS.alegreya.family).toBe("Alegreya");
  });

  it("fills the tile where no height is said, and makes a closed ring", async () => {
    const { report } = await build(design({ text: "AVE" }, { mode: "sunk", height: undefined, depth: 0.2 }), {
      files: fontFiles,
    });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
  });

  it.each([
    [{ height: 2 }, { place: { fit: [0.5, 0.5] } }, "value-invalid", "pattern.regions[0].place"],
    [{}, { path: "M 0 0 L 1 1" }, "value-invalid", "pattern.regions[0].text"],
    [{ text: "日" }, {}, "glyph-missing", "pattern.regions[0].text.text"],
    [{ font: "none.ttf" }, {}, "font-file-missing", "pattern.regions[0].text.font"],
  ])("%j with %j is refused", async (text, more, code, path) => {
    const error = await failure(design(text, more));
    expect(error).toBeInstanceOf(AnnuletError);
    expect(error).toMatchObject({ code, path });
  });
});
