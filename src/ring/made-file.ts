/**
 * A made ring as a file: the mesh with what some formats carry beside it, the alloy's look and a small picture.
 */
import { materialsOf } from "../design/materials.js";
import type { PrintStance } from "../design/print-settings.js";
import { findAlloy } from "../measure/alloys/catalogue.js";
import { type Look, lookOf } from "../measure/alloys/look.js";
import type { Mesh } from "../mesh/mesh.js";
import type { EncodeOptions, Format } from "../output/files/format.js";
import { PICTURE_DEFAULTS } from "../output/picture/options.js";
import { takePicture } from "../output/picture/picture.js";
import { encodePng } from "../output/picture/png.js";
import type { Made } from "./open-ring.js";

/** Pixels of the picture that a file carries; viewers of files show about as many. */
const THUMBNAIL = 256;

/** What the file of a made ring says beside its mesh, in a format. */
export function fileOptionsOf({ mesh, report, design, stones }: Made, format: Format): EncodeOptions {
  const material = lookOf(findAlloy(design.material, { alloys: materialsOf(design) }));
  const thumbnail = format.carriesPicture === true ? thumbnailOf(mesh, material, report.print.stance) : undefined;
  return { name: report.name, material, thumbnail, ...(format.carriesStones === true ? { stones } : {}) };
}

/** A ring that was turned is shown as it lies on the plate. */
function thumbnailOf(mesh: Mesh, material: Look, stance: PrintStance): Uint8Array {
  const view = stance === "built" ? PICTURE_DEFAULTS.view : "lying";
  return encodePng(takePicture(mesh, { width: THUMBNAIL, height: THUMBNAIL, view, material, ground: "clear" }));
}
