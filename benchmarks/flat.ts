/**
 * Times what is done before any solid: the flat work of the richest design, and the import of many SVG files in one go.
 */
import { readdirSync, readFileSync } from "node:fs";
import { outlineDrawing } from "../src/art/svg/outline-drawing.js";
import { placeDrawing } from "../src/art/svg/place-drawing.js";
import { readSvg } from "../src/art/svg/read-svg.js";
import { ringArea } from "../src/flat/polygons.js";
import { planBeads } from "../src/ring/plan-beads.js";
import { large } from "./designs.js";
import type { Effort } from "./effort.js";
import { type Timing, timeTask } from "./time-task.js";

export interface Flat {
  /** The design whose flat work is timed, and the beads that it came to. */
  readonly design: string;
  readonly beads: number;
  /** The files that are imported, and the area that they cover together, mm². */
  readonly icons: number;
  readonly area: number;
  readonly timings: readonly Timing[];
}

/** As many icons are imported. */
const ICONS = 2000;

/** Side of the page on which each is placed, mm; the document's default tolerance. */
const [PAGE, TOLERANCE] = [16, 0.01];

/** Grid steps in a millimetre. */
const SCALE = 1e6;

export async function timeFlat(effort: Effort): Promise<Flat> {
  process.stderr.write("flat work\n");
  const flat = await timeTask({ name: `flat work of ${large.name}`, run: () => planBeads(large.document) }, effort);
  const texts = iconTexts();
  const icons = await timeTask({ name: `import of ${texts.length} icons`, run: () => importAll(texts) }, effort);
  return {
    design: large.name,
    beads: flat.result.reduce((sum, { count }) => sum + count, 0),
    icons: texts.length,
    area: icons.result,
    timings: [flat.timing, icons.timing],
  };
}

/** The first icons of bootstrap-icons by name, read before the timing. */
function iconTexts(): readonly string[] {
  const folder = new URL("icons/", import.meta.resolve("bootstrap-icons/package.json"));
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".svg"))
    .sort()
    .slice(0, ICONS);
  return names.map((name) => readFileSync(new URL(name, folder), "utf8"));
}

/** Imports the files one after the other; mm² that they cover. */
function importAll(texts: readonly string[]): number {
  return texts.reduce((sum, text, i) => sum + areaOf(text, `icon ${i}`), 0);
}

function areaOf(text: string, name: string): number {
  const drawing = readSvg(text, name, "svg", () => undefined);
  if (drawing.page === undefined) throw new Error(`${name} has no page`);
  const place = placeDrawing(undefined, drawing.page, { unit: "mm", width: PAGE, height: PAGE, aspect: 1 });
  const { region } = outlineDrawing(drawing, { place, scale: SCALE, tolerance: TOLERANCE, where: "svg" });
  return region.reduce((sum, ring) => sum + ringArea(ring), 0) / SCALE ** 2;
}
