/**
 * Which part of src may import which: the table itself and the checker that reads sources with TypeScript's parser.
 * DEVELOPERS.md prints the same table; tests/layering.test.ts compares the two.
 */
import { posix } from "node:path";
import ts from "typescript";

/** Names that rows of the table use for several rooms: in the order in which these build on each other. */
const GROUPS: Readonly<Record<string, readonly string[]>> = {
  "flat half": ["base", "size", "gems", "design", "band", "flat", "art", "relief", "beads", "pattern", "marks"],
  "solid half": ["mesh", "measure", "stones", "union", "solids", "judge", "casting"],
};

/**
 * Room of src → the other rooms it may import. A room is a folder directly in src; `folder/inner` allows that inner
 * folder alone; a group allows its rooms. A room may always import itself.
 */
export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  base: [],
  mesh: ["base"],
  size: ["base"],
  gems: ["base", "mesh"],
  measure: ["base", "mesh"],
  design: ["base", "size", "gems", "measure/alloys", "measure/weights"],
  band: ["base", "mesh", "size", "design"],
  flat: ["base", "design", "band"],
  art: ["base", "design", "band", "flat"],
  relief: ["base", "design", "band", "flat", "art"],
  beads: ["base", "mesh", "design", "band", "flat", "art", "relief"],
  pattern: ["base", "design", "band", "flat", "art", "relief", "beads"],
  marks: ["base", "design", "band", "flat", "art", "relief"],
  stones: ["mesh", "flat half"],
  solids: ["mesh", "stones", "flat half"],
  union: ["base", "mesh"],
  judge: ["mesh", "measure", "stones", "flat half"],
  casting: ["mesh", "measure", "stones", "judge", "solids", "union", "flat half"],
  output: ["flat half", "solid half"],
  ring: ["flat half", "solid half", "output"],
  disk: ["base", "design"],
  index: ["flat half", "solid half", "output", "ring"],
  range: ["flat half", "solid half", "output", "ring", "disk"],
  worker: ["flat half", "solid half", "output", "ring"],
  view: ["base", "mesh", "measure/alloys", "output", "judge"],
  entries: ["flat half", "solid half", "output", "ring", "disk", "range", "worker", "view"],
  workbench: ["index", "entries", "toolbox"],
  toolbox: ["flat half", "solid half", "output", "ring"],
  cli: ["index", "toolbox", "disk", "range"],
};

/** Library → the only places of src that may import it. Libraries without a row may be used anywhere. */
const ONLY_IN: Readonly<Record<string, readonly string[]>> = {
  "node:*": ["disk", "range/disk", "cli"],
  three: ["output/files", "union/kernels", "judge/wall-rays", "view", "workbench/ring"],
  "three-mesh-bvh": ["judge/wall-rays"],
  "manifold-3d": ["union/kernels"],
  "three-bvh-csg": ["union/kernels"],
  "clipper2-ts": ["flat/polygons", "flat/crossing-limit"],
  "robust-predicates": ["base/math/turn-of", "base/math/side-of"],
  harfbuzzjs: ["art/text/typeface", "art/text/engine"],
  "@xmldom/xmldom": ["art/svg"],
  "fast-png": ["art/image", "output/picture/png"],
  fflate: ["art/svg", "output/files"],
  saxes: ["output/files"],
  "@gltf-transform/core": ["output/files"],
  commander: ["cli"],
  "csv-parse": ["range/axes"],
  "csv-stringify": ["range/summary"],
  tinypool: ["range/disk"],
  bullmq: ["range/disk/queue"],
  ioredis: ["range/disk/queue"],
  "cli-progress": ["cli"],
  "cli-table3": ["cli"],
  comlink: ["worker", "workbench/engine"],
  preact: ["workbench"],
  "@preact/signals": ["workbench"],
  codemirror: ["workbench/text"],
  "idb-keyval": ["workbench/keep"],
  "jsonc-parser": ["workbench/state", "workbench/text"],
};

/** Imports what only shows at run time: a module of the user's own, named on the command line. */
const AT_RUN_TIME: readonly string[] = ["range/disk/store/open-store"];

/** All three tables as the rows of markdown that DEVELOPERS.md holds: names of several rooms, rooms, libraries. */
export function tableRows(): Readonly<Record<"groups" | "parts" | "libraries", readonly string[]>> {
  const rows = (table: Readonly<Record<string, readonly string[]>>) =>
    Object.entries(table).map(([name, list]) => `| ${name} | ${list.join(", ")} |`);
  return { groups: rows(GROUPS), parts: rows(MAY_IMPORT), libraries: rows(ONLY_IN) };
}

/** Everything in one source file that the rules forbid, as `src/place.ts:line: what`. `path` is relative to src. */
export function findViolations(path: string, text: string): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const complain = (node: ts.Node, what: string) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
    found.push(`src/${path}:${line + 1}: ${what}`);
  };
  const visit = (node: ts.Node): void => {
    for (const { specifier, typesOnly } of importsOf(node)) {
      const complaint = specifier === undefined ? judgeAtRunTime(path) : judgeImport(path, specifier, typesOnly);
      if (complaint !== undefined) complain(node, complaint);
    }
    if (exportsDefault(node)) complain(node, "has a default export");
    if (node.kind === ts.SyntaxKind.AnyKeyword) complain(node, "uses any");
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Whether an import is of code; styles and what a bundler makes of other files are not. */
function isCode(specifier: string): boolean {
  return withoutQuery(specifier).endsWith(".js");
}

/** `./worker.js?worker&inline` → `./worker.js`: what stands behind it tells a bundler how to take the file. */
function withoutQuery(specifier: string): string {
  return specifier.replace(/\?.*$/, "");
}

/** The files of src that one of them imports, types among them, relative to src: `mesh/weld.ts`. */
export function filesImported(path: string, text: string): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    for (const { specifier } of importsOf(node)) {
      if (specifier?.startsWith(".") && isCode(specifier))
        found.push(`${stem(posix.join(posix.dirname(path), specifier))}.ts`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

interface Import {
  /** Undefined where it is no literal. */
  readonly specifier: string | undefined;
  readonly typesOnly: boolean;
}

/** The import that a syntax node makes, if it makes one. */
function importsOf(node: ts.Node): readonly Import[] {
  if (ts.isImportDeclaration(node)) {
    const clause = node.importClause;
    const named = clause?.namedBindings;
    const eachIsType =
      clause?.name === undefined &&
      named !== undefined &&
      ts.isNamedImports(named) &&
      named.elements.length > 0 &&
      named.elements.every((element) => element.isTypeOnly);
    const typesOnly = clause?.phaseModifier === ts.SyntaxKind.TypeKeyword || eachIsType;
    return [{ specifier: literal(node.moduleSpecifier), typesOnly }];
  }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined) {
    const named = node.exportClause;
    const eachIsType =
      named !== undefined &&
      ts.isNamedExports(named) &&
      named.elements.length > 0 &&
      named.elements.every((element) => element.isTypeOnly);
    return [{ specifier: literal(node.moduleSpecifier), typesOnly: node.isTypeOnly || eachIsType }];
  }
  if (ts.isImportTypeNode(node)) {
    const argument = node.argument;
    return [{ specifier: ts.isLiteralTypeNode(argument) ? literal(argument.literal) : undefined, typesOnly: true }];
  }
  const imports =
    ts.isCallExpression(node) &&
    (node.expression.kind === ts.SyntaxKind.ImportKeyword ||
      (ts.isIdentifier(node.expression) && node.expression.text === "require"));
  return imports ? [{ specifier: literal(node.arguments[0]), typesOnly: false }] : [];
}

function literal(node: ts.Node | undefined): string | undefined {
  return node !== undefined && ts.isStringLiteralLike(node) ? node.text : undefined;
}

function judgeAtRunTime(path: string): string | undefined {
  return AT_RUN_TIME.includes(stem(path)) ? undefined : "imports what only shows at run time";
}

/** Says what is wrong with an import, or undefined if it is allowed. */
function judgeImport(path: string, specifier: string, typesOnly: boolean): string | undefined {
  if (!specifier.startsWith(".")) return judgeLibrary(path, specifier);
  const target = posix.join(posix.dirname(path), specifier);
  if (target.startsWith("..")) return `imports ${specifier}, which lies outside src`;
  const from = partOf(path);
  const to = partOf(target);
  if (from === to) return undefined;
  const allowed = MAY_IMPORT[from];
  if (allowed === undefined) return `belongs to ${from}, which has no row in the table`;
  const rooms = allowed.flatMap((entry) => GROUPS[entry] ?? [entry]);
  return rooms.some((entry) => isWithin(target, entry))
    ? undefined
    : `imports ${typesOnly ? "types of " : ""}${target}; ${from} may import ${allowed.join(", ")}`;
}

function judgeLibrary(path: string, specifier: string): string | undefined {
  const name = specifier.startsWith("node:") ? "node:*" : packageName(specifier);
  const parts = ONLY_IN[name];
  if (parts === undefined || parts.some((part) => isWithin(path, part))) return undefined;
  return `imports ${specifier}, which only ${parts.join(", ")} may`;
}

function packageName(specifier: string): string {
  return specifier
    .split("/")
    .slice(0, specifier.startsWith("@") ? 2 : 1)
    .join("/");
}

/** `mesh/weld.ts` → `mesh`, `build.ts` → `build`. */
function partOf(path: string): string {
  return stem(path.split("/")[0]);
}

/** Whether a file is the part, or lies in it. */
function isWithin(path: string, part: string): boolean {
  return stem(path) === part || path.startsWith(`${part}/`);
}

function stem(path: string): string {
  return withoutQuery(path).replace(/\.(js|tsx?)$/, "");
}

function exportsDefault(node: ts.Node): boolean {
  if (ts.isExportAssignment(node)) return true;
  if (ts.isExportSpecifier(node)) return node.name.text === "default";
  return (
    ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some((m) => m.kind === ts.SyntaxKind.DefaultKeyword)
  );
}
