/**
 * Loads the images that a design names.
 */
import { AnnuletError } from "../../base/errors.js";
import { type FileSource, loadFile } from "../../base/files.js";
import { brokenImage } from "./image-limits.js";
import type { Picture } from "./read-picture.js";

/** What regions say of their images, and where their owner stands in the document. */
export interface ImageRegions {
  readonly regions: readonly { readonly image?: string | undefined }[];
  readonly where: string;
}

const HINT = "hand it to build as files, name → bytes; the command line looks beside the design";

/**
 * The images of all regions, by file name; each file is read once.
 *
 * @throws AnnuletError `image-file-missing`, `image-file-unreadable`, what the source throws, and as `readPicture`
 */
export async function loadImages(
  lists: readonly ImageRegions[],
  files: FileSource,
): Promise<ReadonlyMap<string, Picture>> {
  const pictures = new Map<string, Picture>();
  const named = lists.flatMap(({ regions, where: owner }) =>
    regions.map(({ image: name }, i) => ({ name, where: `${owner}.regions[${i}].image` })),
  );
  for (const { name, where } of named) {
    if (name === undefined || pictures.has(name)) continue;
    const bytes = await loadFile({ name, where, kind: "image", hint: HINT }, files, (content) => {
      if (typeof content === "string") throw brokenImage("was handed over as text, not as bytes", where);
      return content;
    });
    // Few designs have images, and their decoder takes time to load.
    const { readPicture } = await import("./read-picture.js");
    pictures.set(name, await readPicture(bytes, name, where));
  }
  return pictures;
}

/** The image that a region names. `path` is the region's place in the document. */
export function imageOf(name: string, images: ReadonlyMap<string, Picture> | undefined, path: string): Picture {
  const picture = images?.get(name);
  if (picture !== undefined) return picture;
  throw new AnnuletError({
    code: "image-file-missing",
    message: `the file ${name} was not loaded`,
    path: `${path}.image`,
    value: name,
  });
}
