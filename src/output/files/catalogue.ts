/**
 * The formats that annulet writes, and how a file name chooses one.
 */
import { safeText } from "../../base/errors/safe-text.js";
import { AnnuletError } from "../../base/errors.js";
import { listOf, requireArgument } from "../../base/options.js";
import type { Format } from "./format.js";
import { glb } from "./formats/glb.js";
import { obj } from "./formats/obj.js";
import { stlAscii } from "./formats/stl-ascii.js";
import { stlBinary } from "./formats/stl-binary.js";
import { threemf } from "./formats/threemf.js";

/**
 * The built-in file formats. In order of preference: the first that has an ending is the one it stands for.
 *
 * @example
 * const endings = formats.flatMap((format) => format.extensions);
 */
export const formats: readonly Format[] = [stlBinary, stlAscii, obj, threemf, glb];

const FORMATS = listOf(isFormat, "formats, as `formats` has them");

function isFormat(value: unknown): boolean {
  const { name, extensions, write } = Object(value) as Partial<Format>;
  const endings = Array.isArray(extensions) && extensions.every((ending) => typeof ending === "string");
  return typeof name === "string" && endings && typeof write === "function";
}

/**
 * The format for a file name.
 *
 * @param fileName its ending decides, upper or lower case
 * @param choice name of one of the formats that share the ending, e.g. `stl-ascii`; default the first of them
 * @param from the formats to choose from; default the built-in ones
 * @throws AnnuletError `format-unknown` with the endings, or the names for this ending, that are allowed; `option-invalid` for formats that are none
 *
 * @example
 * formatForFile("ring.stl", "stl-ascii").name; // stl-ascii
 */
export function formatForFile(fileName: string, choice?: string, from: readonly Format[] = formats): Format {
  requireArgument("from", from, FORMATS);
  const lower = typeof fileName === "string" ? fileName.toLowerCase() : "";
  const fitting = from.filter((format) => format.extensions.some((extension) => lower.endsWith(extension)));
  if (fitting.length === 0) {
    throw new AnnuletError({
      code: "format-unknown",
      message: "no format goes by this file name's ending",
      value: fileName,
      allowed: [...new Set(from.flatMap((format) => format.extensions))].join(", "),
    });
  }
  const chosen = choice === undefined ? fitting[0] : fitting.find((format) => format.name === choice);
  if (chosen === undefined) {
    throw new AnnuletError({
      code: "format-unknown",
      message: `${fileName} cannot be written as ${safeText(choice)}`,
      value: choice,
      allowed: fitting.map((format) => format.name).join(", "),
    });
  }
  return chosen;
}
