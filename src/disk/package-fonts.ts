/**
 * Finds fonts that npm packages carry, by names such as `package:@scope/name/folder/font.ttf`: in the node_modules folders
 * above the design, then above annulet itself, as Node looks for packages; at last among the fonts that annulet ships.
 * Nothing is ever fetched.
 */
import { realpathSync } from "node:fs";
import { dirname, join, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { AnnuletError } from "../base/errors.js";
import { exists, leaves } from "./paths.js";

const PREFIX = "package:";

/** Package, with its scope where it has one, and the path in it. */
const NAME = /^((?:@[\w.~-]+\/)?[\w~-][\w.~-]*)\/(.+)$/;

/** Fonts that are built into dist, seen from the library and from the program there: each as its package has it. */
const SHIPPED = ["fonts", "../fonts"] as const;

/** The only files that are read from packages. */
const FONT_ENDING = /\.(ttf|otf|woff)$/i;

export function namesPackage(name: string): boolean {
  return name.startsWith(PREFIX);
}

/**
 * The path of a font in a package.
 *
 * @param folder the design's folder
 * @throws AnnuletError `package-font-invalid`, `package-missing`, `file-missing`
 */
export function findPackageFont(name: string, folder: string): string {
  const [, packageName, path] = NAME.exec(name.slice(PREFIX.length)) ?? [];
  if (packageName === undefined || packageName.split("/").includes("..")) throw invalid(name, "names no package");
  if (!FONT_ENDING.test(path)) throw invalid(name, "does not name a font");
  const own = dirname(fileURLToPath(import.meta.url));
  const place = [resolve(folder), own].flatMap(above).find((one) => exists(join(one, "node_modules", packageName)));
  if (place === undefined) {
    for (const folder of SHIPPED) {
      const shipped = join(own, folder, packageName, path);
      if (!leaves(join(own, folder), shipped) && exists(shipped)) return shipped;
    }
    throw new AnnuletError({
      code: "package-missing",
      message: `there is no package ${packageName} in the node_modules of the design's folders or of annulet's`,
      value: name,
      hint: `npm install ${packageName} beside the design, or put the font file there and name that`,
    });
  }
  const root = join(place, "node_modules", packageName);
  if (leadsAway(root, place)) throw invalid(name, "is a link that leads out of its folder");
  const font = join(root, path);
  if (leaves(root, font)) throw invalid(name, "leads out of its package");
  if (!exists(font)) {
    throw new AnnuletError({
      code: "file-missing",
      message: `The package ${packageName} has no file ${path}.`,
      value: name,
    });
  }
  // Links are followed only as far as they stay inside.
  if (leaves(realpathSync(root), realpathSync(font))) throw invalid(name, "leads out of its package");
  return font;
}

/**
 * Whether a package's folder is a link that leads out of the folder that has the node_modules: a design from someone else
 * may bring one. Where package managers put links, they lead to another folder of that name.
 */
function leadsAway(root: string, place: string): boolean {
  const real = realpathSync(root);
  return leaves(realpathSync(place), real) && !real.split(sep).includes("node_modules");
}

/** A folder and all above it. */
function above(folder: string): string[] {
  const parent = dirname(folder);
  return parent === folder ? [folder] : [folder, ...above(parent)];
}

function invalid(name: string, why: string): AnnuletError {
  return new AnnuletError({
    code: "package-font-invalid",
    message: `${name} ${why}`,
    value: name,
    allowed: "package:, the package's name, and the path in it of a .ttf, .otf or .woff file",
  });
}
