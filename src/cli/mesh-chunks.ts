/**
 * The bytes of a mesh file, with what some formats carry beside the mesh: the alloy's look and a small picture.
 */
import {
  type Chunks,
  encodePng,
  type Format,
  type Look,
  type Made,
  type Mesh,
  type PrintStance,
  takePicture,
} from "../index.js";
import { findAlloy, lookOf, materialsOf, PICTURE_DEFAULTS } from "../toolbox/index.js";

/** Pixels of the picture that a file carries; viewers of files show about as many. */
const THUMBNAIL = 256;

/** A made ring in a format. */
export function meshChunks({ mesh, report, design }: Made, format: Format): Chunks {
  const material = lookOf(findAlloy(design.material, { alloys: materialsOf(design) }));
  const thumbnail = format.carriesPicture === true ? thumbnailOf(mesh, material, report.print.stance) : undefined;
  return format.write(mesh, { name: report.name, material, thumbnail });
}

/** A ring that was turned is shown as it lies on the plate. */
function thumbnailOf(mesh: Mesh, material: Look, stance: PrintStance): Uint8Array {
  const view = stance === "built" ? PICTURE_DEFAULTS.view : "lying";
  return encodePng(takePicture(mesh, { width: THUMBNAIL, height: THUMBNAIL, view, material, ground: "clear" }));
}
