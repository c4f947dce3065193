/**
 * The files that a design names, whether or not anything asks for what is in them.
 */
import type { Design } from "../design/schema.js";
import { drawingUses, fontUses, imageUses } from "./steps/flat.js";

/** Names of drawings, images and fonts, as the design has them; each once. */
export function namedFiles(design: Design): readonly string[] {
  const images = imageUses({ design }).flatMap(({ regions }) => regions.flatMap(({ image }) => image ?? []));
  const others = [...drawingUses({ design }), ...fontUses({ design })].map(({ name }) => name);
  return [...new Set([...images, ...others])];
}
