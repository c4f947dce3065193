/**
 * The pictures of a bench sheet.
 */
import type { Look } from "../../measure/alloys/look.js";
import type { Studio } from "../../output/picture/picture.js";
import { encodePng } from "../../output/picture/png.js";
import type { ViewName } from "../../output/picture/views.js";
import type { SheetPicture } from "../../output/sheet/sheet.js";

const VIEWS: readonly { readonly title: string; readonly view: ViewName }[] = [
  { title: "front", view: "front" },
  { title: "side", view: "side" },
  { title: "three-quarter", view: "three-quarter" },
];

/** Takes them. `width` in pixels; 0 for none. */
export function takeSheetPictures(studio: Studio, look: Look, width: number): SheetPicture[] {
  if (width === 0) return [];
  const height = Math.round((width * 3) / 4);
  return VIEWS.map(({ title, view }) => ({ title, png: encodePng(studio({ width, height, view, material: look })) }));
}
