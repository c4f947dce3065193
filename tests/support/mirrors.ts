/**
 * Which test stands for which file of src: the mirrored one (`src/flat/grid.ts` ↔ `tests/flat/grid.test.ts`), or one whose
 * head says so: `// Covers: src/art/motifs/*, src/art/shapes/**` (`*` within one folder, `**` below it as well).
 * Paths here are relative to the repository and have forward slashes.
 */
import { posix } from "node:path";
import ts from "typescript";

/** Path → text of every file of src and tests. */
export type Files = ReadonlyMap<string, string>;

/** What a test says in its head. */
export interface Head {
  /** Patterns of the `// Covers:` lines. */
  readonly covers: readonly string[];
  /** What a test of no single file is about, in the words of its `// Across:` line. */
  readonly across: string | undefined;
}

/** The file that one of the package's own names stands for; undefined for any other name. */
function packageFile(specifier: string): string | undefined {
  if (specifier === "annulet") return "src/index.ts";
  const [, entry] = /^annulet\/(\w+)$/.exec(specifier) ?? [];
  return entry === undefined ? undefined : `src/entries/${entry}.ts`;
}

/** Everything that is wrong between files of src and their tests, one sentence each; nothing where all is well. */
export function findUnmirrored(files: Files): string[] {
  const sources = [...files.keys()].filter((path) => path.startsWith("src/") && holdsCode(path, files.get(path) ?? ""));
  const tests = [...files.keys()].filter((path) => path.endsWith(".test.ts"));
  const bare = sources.filter((path) => !files.has(mirrorOf(path)));
  const covered = new Set<string>();
  const found: string[] = [];
  const importsOf = rememberImports(files);
  for (const test of tests) {
    const { covers, across } = readHead(files.get(test) ?? "");
    const mirrors = files.has(sourceOf(test));
    if (!mirrors && covers.length === 0 && across === undefined) {
      found.push(`${test} mirrors no file of src: move it, or say in its head what it covers, or what it goes across`);
    }
    const reached = covers.length === 0 ? new Set<string>() : reachedFrom(test, importsOf);
    for (const pattern of covers) {
      const matched = bare.filter((path) => matches(pattern, path));
      if (matched.length === 0) found.push(`${test} covers ${pattern}, where no file is without a mirrored test`);
      for (const path of matched) {
        if (reached.has(path)) covered.add(path);
        else found.push(`${test} says that it covers ${path}, which it does not import`);
      }
    }
  }
  const missing = bare.filter((path) => !covered.has(path));
  return [...found, ...missing.map((path) => `${path} has no test: neither ${mirrorOf(path)} nor one that covers it`)];
}

/** What the head of a test says. The head is made of the comments before its first statement. */
export function readHead(text: string): Head {
  const comments = (ts.getLeadingCommentRanges(text, 0) ?? [])
    .filter(({ kind }) => kind === ts.SyntaxKind.SingleLineCommentTrivia)
    .map(({ pos, end }) => text.slice(pos, end));
  const said = (word: string) =>
    comments.filter((line) => line.startsWith(`// ${word}: `)).map((line) => line.slice(`// ${word}: `.length).trim());
  return { covers: said("Covers").flatMap((line) => line.split(/\s*,\s*/)), across: said("Across")[0] };
}

/** Whether a pattern means a path. `*` stands for any text without a slash, `**` for any text. */
export function matches(pattern: string, path: string): boolean {
  const parts = pattern.split(/(\*\*|\*)/).map((part) => {
    if (part === "**") return ".*";
    return part === "*" ? "[^/]*" : part.replace(/[\\^$.|?+()[\]{}]/g, "\\$&");
  });
  return new RegExp(`^${parts.join("")}$`).test(path);
}

/** Whether a file of TypeScript does more than import, export what others have, and name types. */
export function holdsCode(path: string, text: string): boolean {
  return ts
    .createSourceFile(path, text, ts.ScriptTarget.Latest)
    .statements.some(
      (statement) =>
        !ts.isImportDeclaration(statement) &&
        !ts.isExportDeclaration(statement) &&
        !ts.isInterfaceDeclaration(statement) &&
        !ts.isTypeAliasDeclaration(statement),
    );
}

/** The files whose values one file imports, late imports among them, that are among those named. */
export function valuesImported(path: string, text: string, files: { has(path: string): boolean }): string[] {
  const found = new Set<string>();
  const visit = (node: ts.Node): void => {
    const specifier = valueSpecifier(node);
    if (specifier !== undefined) {
      const target = packageFile(specifier) ?? posix.join(posix.dirname(path), specifier).replace(/\.js$/, ".ts");
      if (files.has(target)) found.add(target);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest));
  return [...found];
}

/** What a syntax node imports or exports from, if that takes values over. */
function valueSpecifier(node: ts.Node): string | undefined {
  if (ts.isImportDeclaration(node)) {
    const { importClause } = node;
    const bindings = importClause?.namedBindings;
    const named = bindings !== undefined && ts.isNamedImports(bindings) ? bindings.elements : undefined;
    const types = importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword || (!importClause?.name && allTypes(named));
    return types ? undefined : literal(node.moduleSpecifier);
  }
  if (ts.isExportDeclaration(node)) {
    const named =
      node.exportClause !== undefined && ts.isNamedExports(node.exportClause) ? node.exportClause : undefined;
    return node.isTypeOnly || allTypes(named?.elements) ? undefined : literal(node.moduleSpecifier);
  }
  const late = ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword;
  return late ? literal(node.arguments[0]) : undefined;
}

function allTypes(named: readonly { readonly isTypeOnly: boolean }[] | undefined): boolean {
  return named !== undefined && named.length > 0 && named.every((each) => each.isTypeOnly);
}

function literal(node: ts.Node | undefined): string | undefined {
  return node !== undefined && ts.isStringLiteralLike(node) ? node.text : undefined;
}

/** Which files' values a file imports; each is read once. */
function rememberImports(files: Files): (path: string) => readonly string[] {
  const known = new Map<string, readonly string[]>();
  return (path) => {
    const found = known.get(path) ?? valuesImported(path, files.get(path) ?? "", files);
    known.set(path, found);
    return found;
  };
}

/** A file, all that it imports, and what that imports in turn. */
function reachedFrom(start: string, importsOf: (path: string) => readonly string[]): Set<string> {
  const reached = new Set([start]);
  for (const path of reached) for (const next of importsOf(path)) reached.add(next);
  return reached;
}

/** `src/flat/grid.ts` → `tests/flat/grid.test.ts`. */
function mirrorOf(source: string): string {
  return source.replace(/^src\//, "tests/").replace(/\.ts$/, ".test.ts");
}

/** `tests/flat/grid.test.ts` → `src/flat/grid.ts`. */
function sourceOf(test: string): string {
  return test.replace(/^tests\//, "src/").replace(/\.test\.ts$/, ".ts");
}
