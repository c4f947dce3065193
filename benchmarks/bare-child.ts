/**
 * Builds designs one after the other in this process, and writes STL and report of each: what a range is measured against.
 * `node bare-child.js DESIGNS.json FOLDER`.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build, encodeMesh, formatForFile } from "annulet";

const [, , list, folder] = process.argv;
const designs: { name: string }[] = JSON.parse(readFileSync(list, "utf8"));
for (const design of designs) {
  const { mesh, report } = await build(design, { piece: "master" });
  const path = join(folder, `${design.name}.stl`);
  writeFileSync(path, await encodeMesh(formatForFile(path), mesh, { name: design.name }));
  writeFileSync(join(folder, `${design.name}.json`), JSON.stringify(report, null, 2));
}
