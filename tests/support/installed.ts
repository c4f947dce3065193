/**
 * The built package as an app has it: in node_modules beside three, and not by a link, which bundlers treat as the app's own.
 */
import { cpSync, mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Puts annulet and three into a folder's node_modules, as installing the tarball does. */
export function installPackage(folder: string): void {
  const place = join(folder, "node_modules/annulet");
  mkdirSync(place, { recursive: true });
  for (const part of ["dist", "package.json"]) cpSync(join(ROOT, part), join(place, part), { recursive: true });
  symlinkSync(join(ROOT, "node_modules/three"), join(folder, "node_modules/three"));
  writeFileSync(join(folder, "package.json"), '{ "private": true, "type": "module" }\n');
}
