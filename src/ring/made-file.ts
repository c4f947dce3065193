/**
 * A made ring as a file: the mesh with what some formats carry beside it, the alloy's look and a small picture.
 */
import { materialsOf } from "../design/materials.js";
import type { PrintStance } from "../design/print-settings.js";
import { findAlloy } from "../measure/alloys/catalogue.js";
import { type Look, lookOf } from "../measure/alloys/look.js";
import type { Mesh } from "../mesh/mesh.js";
import type { FileStone } from "../output/files/file-stone.js";
import type { EncodeOptions, Format } from "../output/files/format.js";
import { shownOfFile } from "../output/files/shown-of-file.js";
import { PICTURE_DEFAULTS } from "../output/picture/options.js";
import { openStudioOf } from "../output/picture/picture.js";
import { encodePng } from "../output/picture/png.js";
import type { Made } from "./open-ring.js";

/** Pixels of the picture that a file carries; viewers of files show about as many. */
const THUMBNAIL = 256;

/** What the file of a made ring says beside its mesh, in a format. */
export function fileOptionsOf({ mesh, report, design, stones }: Made, format: Format): EncodeOptions {
  const material = lookOf(findAlloy(design.material, { alloys: materialsOf(design) }));
  // What is printed as a master has no stones in it: they are set into the casting.
  const isPrinted = format.forPrinters === true && report.piece === "master";
  const shown = isPrinted ? [] : stones;
  const thumbnail =
    format.carriesPicture === true ? thumbnailOf(mesh, shown, material, report.print.stance) : undefined;
  return { name: report.name, material, thumbnail, ...(format.carriesStones === true ? { stones: shown } : {}) };
}

/** A ring that was turned is shown as it lies on the plate, with the stones that the file has. */
function thumbnailOf(mesh: Mesh, stones: readonly FileStone[], material: Look, stance: PrintStance): Uint8Array {
  const view = stance === "built" ? PICTURE_DEFAULTS.view : "lying";
  const take = openStudioOf(mesh, [], shownOfFile(stones));
  return encodePng(take({ width: THUMBNAIL, height: THUMBNAIL, view, material, ground: "clear" }));
}
