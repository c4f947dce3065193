/**
 * Notes which packages lie in what is bundled: build/bundled/, a file a bundle with their names, for their licences.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { basename } from "node:path";

/** Where the notes are. */
export const NOTES = "build/bundled";

/** Package of a module, with its scope; of the innermost folder of packages. */
const PACKAGE = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//;

/** For rolldown. */
export function bundledPackages() {
  return {
    name: "bundled-packages",
    generateBundle({ dir }, bundle) {
      const modules = Object.values(bundle).flatMap(({ modules = {} }) =>
        Object.entries(modules).flatMap(([id, { renderedLength }]) => (renderedLength > 0 ? [id] : [])),
      );
      const names = modules.flatMap((id) => PACKAGE.exec(id.replaceAll("\\", "/"))?.[1] ?? []);
      mkdirSync(NOTES, { recursive: true });
      writeFileSync(`${NOTES}/${basename(dir)}.json`, `${JSON.stringify([...new Set(names)].sort(), null, 2)}\n`);
    },
  };
}
