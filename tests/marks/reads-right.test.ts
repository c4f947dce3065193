// Across: lettering as a reader sees it
/**
 * What a reader sees: the letters' tops on the bent mesh, unrolled as seen from the reader's side, against the same text
 * set by resvg (not ours: rustybuzz and its own rasteriser) from the same font file.
 */
import { describe, expect, it } from "vitest";
import { openInside } from "../../src/ring/open-ring.js";
import { type FontName, fontFiles, nameOf, typefaceOf } from "../support/fonts.js";
import { centreOf, type Frame, overlap, raster, textElement } from "../support/raster.js";
import { bodiesOfSteps } from "../support/steps.js";

const HEIGHT = 1.6;
const BAND = {
  annulet: 1,
  size: { system: "iso", value: 60 },
  tolerance: 0.004,
  profile: {
    width: 12,
    thickness: 2.2,
    bore: { form: "flat", edge: 0.2 },
    outside: { form: "channel", rail: 3.6, depth: 0.4, edge: 0.1 },
  },
};

/** θ of the middle, degrees. */
const ANGLE = 200;

/** The letters' level faces, unrolled about their middle as a reader sees them: x to the right, y down, mm. */
async function seen(lettering: Record<string, unknown>, mirrored = false): Promise<string> {
  const document = { ...BAND, lettering: [{ height: HEIGHT, angle: ANGLE, ...lettering }] };
  const { answers: laid } = await openInside(document, { files: fontFiles }).ask(["marks", "parts"]);
  const { marks } = bodiesOfSteps(laid.parts.steps);
  const [mesh] = [...marks.add, ...marks.cut];
  const mark = laid.marks.marks[0];
  const { wrap } = mark.surface;
  const h = mark.body.mode === "raised" ? mark.body.height : -mark.body.height;
  const [middle, level] = wrap.lineAt(0).point(0, h);
  // A reader stands where the surface's normal points, head towards +z, and looks against it.
  const [ax, ay] = [Math.cos((ANGLE * Math.PI) / 180), Math.sin((ANGLE * Math.PI) / 180)];
  const outward = mark.surface.name === "bore" ? 1 : -1;
  const look = [outward * ax, outward * ay] as const;
  // Right is look × up.
  const right = [look[1], -look[0]] as const;
  const sense = Math.sign(right[0] * -ay + right[1] * ax) * (mirrored ? -1 : 1);
  const flat = (vertex: number) => {
    const [x, y, z] = mesh.positions.slice(3 * vertex, 3 * vertex + 3);
    const turn = Math.atan2(y * ax - x * ay, x * ax + y * ay);
    return `${sense * turn * wrap.referenceRadius} ${middle - z}`;
  };
  let d = "";
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corners = [...mesh.triangles.slice(t, t + 3)];
    const isLevel = corners.every((v) => {
      return Math.abs(Math.hypot(mesh.positions[3 * v], mesh.positions[3 * v + 1]) - level) < 1e-3;
    });
    if (isLevel) d += `M ${corners.map(flat).join(" L ")} Z `;
  }
  return `<path d="${d}"/>`;
}

const FRAME: Frame = { x: -16, y: -4, width: 32, height: 8 };

/**
 * Finer, for letters of many edges: resvg places edges to a quarter of a pixel, which at 60 in a mm takes 1.9 % of the
 * overlap of Alegreya's, at 150 0.7 %, wherever the pixels' corners do not stand on the base line.
 */
const FINE: Frame = { x: -8, y: -2.5, width: 24, height: 4.5, fineness: 150 };

/** Overlap of what is seen with resvg's own text, one centre of gravity on the other. */
async function agreement(text: string, font: FontName, picture: string, frame = FRAME): Promise<number> {
  const face = await typefaceOf(font);
  const element = textElement(text, font, (HEIGHT * face.unitsPerEm) / face.capHeight);
  const ours = raster(picture, frame);
  const [[ox, oy], [tx, ty]] = [centreOf(ours, frame), centreOf(raster(element, frame, [font]), frame)];
  return overlap(ours, raster(`<g transform="translate(${ox - tx} ${oy - ty})">${element}</g>`, frame, [font]));
}

const SURFACES = [
  ["seat", { at: "seat" }],
  ["rail towards +z", { at: "rail" }],
  ["rail towards -z", { at: "rail", side: "-z" }],
  ["bore", { at: "bore" }],
] as const;

const TEXTS: readonly (readonly [string, FontName])[] = [
  ["AVES To fly", "nunito"],
  ["Tidal Wave éñ", "alegreya"],
  ["שלום לים", "hebrew"],
  ["سلام", "amiri"],
];

describe.each(SURFACES)("on the %s", (_, place) => {
  it.each(["raised", "sunk"] as const)("%s letters read as resvg sets them", async (mode) => {
    const [text, font] = TEXTS[0];
    const picture = await seen({ ...place, text, font: nameOf(font), mode });
    expect(await agreement(text, font, picture)).toBeGreaterThan(0.99);
  });

  it("in a mirror they do not", async () => {
    const [text, font] = TEXTS[0];
    const picture = await seen({ ...place, text, font: nameOf(font) }, true);
    expect(await agreement(text, font, picture)).toBeLessThan(0.6);
  });
});

it.each(TEXTS)("%s in %s reads as resvg sets it", async (text, font) => {
  const picture = await seen({ at: "bore", text, font: nameOf(font) });
  expect(await agreement(text, font, picture, font === "alegreya" ? FINE : FRAME)).toBeGreaterThan(0.99);
});

it.each(SURFACES)("with their tops towards -z they are turned, not mirrored, on the %s", async (_, place) => {
  const [text, font] = TEXTS[0];
  const picture = await seen({ ...place, text, font: nameOf(font), up: "-z" });
  expect(await agreement(text, font, `<g transform="rotate(180)">${picture}</g>`)).toBeGreaterThan(0.99);
  expect(await agreement(text, font, picture)).toBeLessThan(0.6);
});
