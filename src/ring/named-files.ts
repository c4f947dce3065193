/**
 * The files that a design names, whether or not anything asks for what is in them.
 */
import type { FileSource } from "../base/files.js";
import type { Design } from "../design/schema.js";
import { drawingUses, fontUses, imageUses } from "./steps/flat.js";

/** The parts of a document that name files: all that the stages below read of it. */
export const NAMING_PARTS = ["pattern", "beads", "lettering", "stones"] as const satisfies readonly (keyof Design)[];

/** Names of drawings, images and fonts, as the design has them; each once. */
export function namedFiles(design: Pick<Design, (typeof NAMING_PARTS)[number]>): readonly string[] {
  const images = imageUses({ design }).flatMap(({ regions }) => regions.flatMap(({ image }) => image ?? []));
  const others = [...drawingUses({ design }), ...fontUses({ design })].map(({ name }) => name);
  return [...new Set([...images, ...others])];
}

/**
 * Files as they are now, so that their record and the bytes in it may change afterwards. Bytes that the design does not name
 * are not copied. A function is asked when a file is first needed.
 */
export function filesNow(files: FileSource, design: Design): FileSource {
  if (typeof files === "function") return files;
  const taken = new Map<string, string | Uint8Array>(Object.entries(files));
  for (const name of namedFiles(design)) {
    const content = taken.get(name);
    if (content !== undefined && typeof content !== "string") taken.set(name, Uint8Array.from(content));
  }
  return Object.fromEntries(taken);
}
