/**
 * The bench sheet of a design: built, laid flat, drawn and photographed.
 */

import { MAX_BEADS, placeRuns } from "../beads/place-runs.js";
import { materialsOf } from "../design/materials.js";
import { rulesOf } from "../design/own-rules.js";
import type { Design } from "../design/schema.js";
import { judge } from "../judge/castability/judge.js";
import { findAlloy } from "../measure/alloys/catalogue.js";
import { lookOf } from "../measure/alloys/look.js";
import type { Mesh } from "../mesh/mesh.js";
import { stackFigures } from "../output/drawing/figure.js";
import { openStudio } from "../output/picture/picture.js";
import { encodePng } from "../output/picture/png.js";
import type { ViewName } from "../output/picture/views.js";
import type { FitReport, Report } from "../output/report/report.js";
import { makeSheet, type SheetContent, type SheetPicture, sheetFigures } from "../output/sheet/sheet.js";
import { type BuildOptions, build } from "./build.js";
import { type FlatTile, flatTile } from "./flat-tile.js";
import { layOut } from "./lay-out.js";
import { Stages } from "./stages.js";

export interface BenchSheetOptions extends Omit<BuildOptions, "piece" | "geometry" | "print"> {
  /** Program and version for the sheet's foot. Default annulet. */
  readonly tool?: string;
  /** Width of each picture, pixels; 0 leaves them out. Default 640: 58 mm at 280 pixels an inch. */
  readonly pictureWidth?: number;
}

export const BENCH_SHEET_DEFAULTS = { tool: "annulet", pictureWidth: 640 } as const;

export interface BenchSheet {
  /** The whole sheet: one HTML file that needs nothing else. */
  readonly html: string;
  /** The drawings alone: SVG whose unit is a millimetre. */
  readonly drawings: string;
  readonly report: Report;
}

const PICTURES: readonly { readonly title: string; readonly view: ViewName }[] = [
  { title: "front", view: "front" },
  { title: "side", view: "side" },
  { title: "three-quarter", view: "three-quarter" },
];

/**
 * Makes the sheet of the finished ring.
 *
 * @param document the design document: an object, or JSON text; its digest is that of the text
 * @throws AnnuletError as `build`
 */
export async function benchSheet(document: unknown, options: BenchSheetOptions = {}): Promise<BenchSheet> {
  const { tool = BENCH_SHEET_DEFAULTS.tool, pictureWidth = BENCH_SHEET_DEFAULTS.pictureWidth, ...how } = options;
  const { mesh, report, design } = await build(document, { ...how, piece: "finished", print: { stance: "built" } });
  const layout = await layOut(document, new Stages({ signal: how.signal }), how.files);
  const rules = rulesOf(design.rules);
  const { beads } = placeRuns({
    ...layout,
    beadRuns: design.beads,
    maxBeads: how.maxBeads ?? MAX_BEADS,
    warn: () => {},
  });
  const judgement = judge({ ...layout, mesh, beads, runs: report.beads, tolerance: design.tolerance }, rules);
  const flat = report.fit === null ? [] : await layTilesFlat(document, report.fit, how);
  const content: SheetContent = {
    ...{ report, design, tool },
    profile: layout.profile,
    check: { ...judgement, rules },
    tiles: flat.map(({ tile }) => tile),
    unrolled: flat.map(({ unrolled }) => unrolled),
    pictures: pictureWidth === 0 ? [] : takePictures(mesh, design, pictureWidth),
    digest: await sha256(typeof document === "string" ? document : JSON.stringify(document)),
  };
  return { html: makeSheet(content), drawings: stackFigures(sheetFigures(content), report.name), report };
}

/** One tile and all of them, of each lane. */
async function layTilesFlat(
  document: unknown,
  { lanes }: FitReport,
  { files, maxBeads }: BuildOptions,
): Promise<{ tile: FlatTile; unrolled: FlatTile }[]> {
  const names = lanes.length === 0 ? [undefined] : lanes.map(({ name }) => name);
  const flat: { tile: FlatTile; unrolled: FlatTile }[] = [];
  for (const lane of names) {
    const tile = await flatTile(document, { lane, files, maxBeads });
    const tiles = tile.round.repeats - tile.round.medallion;
    flat.push({ tile, unrolled: await flatTile(document, { lane, files, maxBeads, tiles }) });
  }
  return flat;
}

function takePictures(mesh: Mesh, design: Design, width: number): SheetPicture[] {
  const material = lookOf(findAlloy(design.material, { alloys: materialsOf(design) }));
  const height = Math.round((width * 3) / 4);
  const shoot = openStudio(mesh);
  return PICTURES.map(({ title, view }) => ({
    title,
    png: encodePng(shoot({ width, height, view, material })),
  }));
}

async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
}
