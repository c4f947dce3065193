// Across: all of src
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it, test } from "vitest";
import { findCircles } from "./support/circles.js";
import { filesImported, findViolations, MAY_IMPORT, tableRows } from "./support/layers.js";

const ROOT = new URL("../", import.meta.url);
const DEVELOPERS = new URL("DEVELOPERS.md", ROOT);

const sources = readdirSync(new URL("src/", ROOT), { recursive: true, encoding: "utf8" })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => /\.tsx?$/.test(path) && !path.endsWith(".d.ts"))
  .sort();

function read(path: string): string {
  return readFileSync(fileURLToPath(new URL(`src/${path}`, ROOT)), "utf8");
}

const { groups, parts, libraries } = tableRows();
const printed = [
  "| name | rooms |",
  "|---|---|",
  ...groups,
  "",
  "| folder | may import |",
  "|---|---|",
  ...parts,
  "",
  "| library | only in |",
  "|---|---|",
  ...libraries,
];

describe("layers of src", () => {
  it("imports only what the table allows, exports no default and uses no any", () => {
    const violations = sources.flatMap((path) => findViolations(path, read(path)));
    expect(violations, `The table:\n${printed.join("\n")}\n`).toEqual([]);
  });

  it("has no circle of files, not even of types", () => {
    const imports = new Map(sources.map((path) => [path.replace(/x$/, ""), filesImported(path, read(path))]));
    for (const [path, others] of imports) {
      expect(
        others.filter((other) => !imports.has(other)),
        `${path} imports what is not there`,
      ).toEqual([]);
    }
    expect(findCircles(imports)).toEqual([]);
  });

  it("has a row for every part", () => {
    const found = new Set(sources.map((path) => path.split("/")[0].replace(/\.ts$/, "")));
    expect([...found].filter((part) => MAY_IMPORT[part] === undefined)).toEqual([]);
  });

  test.skipIf(!existsSync(DEVELOPERS))("is printed in DEVELOPERS.md as it is enforced", () => {
    const rows = readFileSync(DEVELOPERS, "utf8").split("\n").map(plainRow);
    const missing = [...groups, ...parts, ...libraries].filter((row) => !rows.includes(plainRow(row)));
    expect(missing, `DEVELOPERS.md must hold these tables:\n${printed.join("\n")}\n`).toEqual([]);
  });
});

describe("the checker of layers", () => {
  const cases: [string, string, string, RegExp | undefined][] = [
    [
      "a stage that skips ahead",
      "mesh/weld.ts",
      'import { read } from "../design/read.js";',
      /:1: imports design\/read/,
    ],
    [
      "a base part that looks up",
      "base/errors.ts",
      'import type { Mesh } from "../mesh/mesh.js";',
      /imports types of mesh/,
    ],
    ["a value of a room above", "output/a.ts", 'import { D } from "../ring/types.js";', /imports ring/],
    ["types of a room above", "output/a.ts", 'import type { D } from "../ring/types.js";', /types of ring/],
    ["named types of a room above", "output/a.ts", 'import { type D } from "../ring/types.js";', /types of ring/],
    ["a type and a value", "output/a.ts", 'import { type D, e } from "../ring/types.js";', /imports ring/],
    ["an inline type", "union/seam.ts", 'export type B = import("../band/surface.js").Band;', /types of band/],
    ["a re-export", "union/seam.ts", 'export { bend } from "../band/bend.js";', /imports band\/bend/],
    ["a late import", "judge/gate.ts", 'await import("../union/seam.js");', /imports union\/seam/],
    ["an import nobody can read", "judge/gate.ts", "await import(name);", /at run time/],
    ["the catalogue of alloys", "design/schema.ts", 'import { ALLOYS } from "../measure/alloys/index.js";', undefined],
    ["the rest of measure", "design/schema.ts", 'import { volume } from "../measure/volume.js";', /measure\/volume/],
    ["another inner folder", "design/a.ts", 'import { w } from "../measure/weights/w.js";', undefined],
    ["beside an inner folder", "design/a.ts", 'import { check } from "../judge/gate.js";', /imports judge\/gate/],
    ["a room of a group", "solids/a.ts", 'import { m } from "../marks/marks.js";', undefined],
    [
      "a room of the other group",
      "solids/a.ts",
      'import { g } from "../judge/gate.js";',
      /solids may import mesh, stones, flat half/,
    ],
    [
      "a group's room for one without the group",
      "union/a.ts",
      'import { g } from "../flat/grid.js";',
      /union may import/,
    ],
    ["the command line past index", "cli/main.ts", 'import { build } from "../ring/build.js";', /cli may import index/],
    ["a file outside src", "cli/main.ts", 'import p from "../../package.json";', /outside src/],
    [
      "the file system in a stage",
      "output/save.ts",
      'import { writeFile } from "node:fs";',
      /which only disk, range\/disk, cli may/,
    ],
    ["the file system in the command line", "cli/save.ts", 'import { writeFile } from "node:fs";', undefined],
    ["a boolean library beside the kernels", "union/unit.ts", 'import M from "manifold-3d";', /only union\/kernels/],
    ["a boolean library in a kernel", "union/kernels/wasm.ts", 'import M from "manifold-3d";', undefined],
    [
      "a library's inner file",
      "mesh/a.ts",
      'import { Vector3 } from "three/src/Three.js";',
      /only output\/files, union/,
    ],
    ["a scoped library", "design/text.ts", 'import { parse } from "@humanwhocodes/momoa";', undefined],
    ["a default export", "base/a.ts", "export default 1;", /default export/],
    ["a default function", "base/a.ts", "export default function f() {}", /default export/],
    ["a renamed default", "base/a.ts", "const a = 1; export { a as default };", /default export/],
    ["any", "base/a.ts", "\nexport const a: any = 1;", /:2: uses any/],
    ["the word in a text", "base/a.ts", 'export const a = "as any"; // export default, any', undefined],
    ["a part without a row", "misc/a.ts", 'import { m } from "../base/curve.js";', /no row/],
  ];
  it.each(cases)("judges %s", (_, path, text, complaint) => {
    const found = findViolations(path, text);
    if (complaint === undefined) expect(found).toEqual([]);
    else {
      expect(found).toHaveLength(1);
      expect(found[0]).toMatch(complaint);
    }
  });
});

describe("the finder of circles", () => {
  const graph = (lines: Readonly<Record<string, readonly string[]>>) => new Map(Object.entries(lines));

  it("finds none in a tree, in files that share what they import, and in nothing", () => {
    expect(findCircles(graph({}))).toEqual([]);
    expect(findCircles(graph({ a: ["b", "c"], b: ["d"], c: ["d"], d: [] }))).toEqual([]);
  });

  it("finds two files that import each other, a file that imports itself, and a long way round", () => {
    expect(findCircles(graph({ a: ["b"], b: ["a"] }))).toEqual([["a", "b"]]);
    expect(findCircles(graph({ a: ["a"], b: ["a"] }))).toEqual([["a"]]);
    expect(findCircles(graph({ a: ["b"], b: ["c"], c: ["d"], d: ["b"], e: ["a"] }))).toEqual([["b", "c", "d"]]);
  });

  it("tells circles apart that only one of them reaches, and joins those that share a file", () => {
    const apart = graph({ a: ["b"], b: ["a", "c"], c: ["d"], d: ["c"] });
    expect(findCircles(apart)).toEqual([
      ["c", "d"],
      ["a", "b"],
    ]);
    expect(findCircles(graph({ a: ["b", "c"], b: ["a"], c: ["a"] }))).toEqual([["a", "b", "c"]]);
  });

  it("counts imports of types, re-exports and late imports", () => {
    const text = [
      'import type { A } from "../mesh/mesh.js";',
      'export { b } from "./weld.js";',
      'type C = import("./c.js").C;',
      'const d = await import("./d.js");',
      'import { z } from "zod";',
    ].join("\n");
    expect(filesImported("union/seam.ts", text)).toEqual(["mesh/mesh.ts", "union/weld.ts", "union/c.ts", "union/d.ts"]);
  });
});

/** A row of markdown without the space and code marks that writing may add. */
function plainRow(line: string): string {
  return line.replaceAll("`", "").replace(/\s+/g, " ").trim();
}
