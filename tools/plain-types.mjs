/**
 * Types as they ship: what the public ones name, and of that nothing that was inferred from a package. Where a type is
 * what a package makes of a value, it is written out.
 */
import { dirname, join, relative, sep } from "node:path";
import ts from "typescript";

const { NodeBuilderFlags } = ts;

/** Written out whole, as declarations are. */
const WRITTEN =
  NodeBuilderFlags.NoTruncation |
  NodeBuilderFlags.InTypeAlias |
  NodeBuilderFlags.MultilineObjectLiterals |
  NodeBuilderFlags.UseStructuralFallback;

/** What types may import: each other, and three in `annulet/three`, which is for those who have it. */
const ALLOWED = /^(\.|three$)/;

/** Every name of a file. */
const ALL = "*";

/**
 * The text of each file of types that is needed, by its path.
 *
 * @param entries files whose every name is published
 */
export function plainTypes(entries) {
  const program = ts.createProgram(entries, {
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    lib: ["lib.es2023.d.ts", "lib.dom.d.ts"],
    types: [],
    skipLibCheck: true,
  });
  // Nodes know what they stand in only once it has looked at them.
  const checker = program.getTypeChecker();
  const files = new Map();
  const open = entries.map((path) => ({ path, name: ALL }));
  for (const { path, name } of open) {
    if (!files.has(path)) files.set(path, new PlainFile(checker, program.getSourceFile(path)));
    open.push(...files.get(path).need(name));
  }
  return new Map([...files].map(([path, file]) => [path, file.text]));
}

class PlainFile {
  #checker;
  #source;
  /** Local name → file and name there, of relative imports. */
  #imported = new Map();
  /** Names that come from packages. */
  #foreign = new Set();
  /** Statement → its text, of those that are needed. */
  #written = new Map();
  #asked = new Set();

  constructor(checker, source) {
    this.#checker = checker;
    this.#source = source;
    for (const statement of source.statements.filter(ts.isImportDeclaration)) {
      const from = statement.moduleSpecifier.text;
      for (const { local, name } of namesOf(statement)) {
        if (!ALLOWED.test(from)) this.#foreign.add(local);
        else this.#imported.set(local, { from, name, statement });
      }
    }
    for (const statement of source.statements.filter(ts.isVariableStatement)) {
      if (!this.#namesForeign(statement)) continue;
      for (const { name } of statement.declarationList.declarations) this.#foreign.add(name.getText(source));
    }
  }

  /** Takes up what declares a name; gives what that needs of other files. */
  need(name) {
    const found = [];
    const open = [name];
    for (const asked of open) {
      if (this.#asked.has(asked)) continue;
      this.#asked.add(asked);
      for (const statement of this.#source.statements) {
        if (ts.isExportDeclaration(statement)) found.push(...this.#passedOn(statement, asked));
        else if (declares(statement, asked) && !this.#written.has(statement)) {
          const text = this.#plain(statement);
          this.#written.set(statement, text);
          const used = wordsIn(text);
          open.push(...used);
          found.push(...this.#ofOthers(used), ...this.#namedInline(text));
        }
      }
    }
    return found;
  }

  get text() {
    const body = [...this.#source.statements].flatMap((statement) => {
      if (ts.isExportDeclaration(statement)) return this.#passedOnText(statement);
      return this.#written.get(statement) ?? [];
    });
    const used = wordsIn(body.join("\n"));
    const imports = this.#source.statements.filter(ts.isImportDeclaration).flatMap((statement) => {
      const names = namesOf(statement).filter(({ local }) => used.has(local) && this.#imported.has(local));
      return names.length === 0 ? [] : [importOf(names, statement)];
    });
    return `${[...imports, ...body, "export {};"].join("\n")}\n`;
  }

  /** What a name that is exported from elsewhere needs there. */
  #passedOn({ exportClause, moduleSpecifier }, asked) {
    if (moduleSpecifier === undefined || exportClause?.elements === undefined) return [];
    const path = this.#pathOf(moduleSpecifier.text);
    return exportClause.elements
      .filter(({ name }) => asked === ALL || name.text === asked)
      .map(({ name, propertyName }) => ({ path, name: (propertyName ?? name).text }));
  }

  #passedOnText({ exportClause, moduleSpecifier, isTypeOnly }) {
    const elements = exportClause?.elements ?? [];
    const asked = elements.filter(({ name }) => this.#asked.has(ALL) || this.#asked.has(name.text));
    if (moduleSpecifier === undefined || asked.length === 0) return [];
    const names = asked.map((element) => element.getText(this.#source)).join(", ");
    return [`export ${isTypeOnly ? "type " : ""}{ ${names} } from "${moduleSpecifier.text}";`];
  }

  #ofOthers(words) {
    return [...words].flatMap((word) => {
      const { from, name } = this.#imported.get(word) ?? {};
      return from?.startsWith(".") ? [{ path: this.#pathOf(from), name }] : [];
    });
  }

  #namedInline(text) {
    const named = text.matchAll(/import\("(\.[^"]+)"\)\.(\w+)/g);
    return [...named].map(([, from, name]) => ({ path: this.#pathOf(from), name }));
  }

  #pathOf(specifier) {
    return join(dirname(this.#source.fileName), specifier.replace(/\.js$/, ".d.ts"));
  }

  /** A statement's text with its comment, the types in it that name a package written out. */
  #plain(statement) {
    const start = statement.getFullStart();
    let text = statement.getFullText(this.#source);
    for (const node of this.#foreignTypes(statement).reverse()) {
      const written = this.#writtenOut(node);
      text = text.slice(0, node.getStart(this.#source) - start) + written + text.slice(node.getEnd() - start);
    }
    return text.trim();
  }

  /** The outermost types that name a package, in the order of the text. */
  #foreignTypes(node) {
    if (
      ts.isTypeReferenceNode(node) ||
      ts.isTypeQueryNode(node) ||
      ts.isImportTypeNode(node) ||
      ts.isIndexedAccessTypeNode(node)
    ) {
      if (this.#namesForeign(node)) return [node];
      return [];
    }
    const found = [];
    ts.forEachChild(node, (child) => void found.push(...this.#foreignTypes(child)));
    return found;
  }

  #namesForeign(node) {
    if (ts.isIdentifier(node) && this.#foreign.has(node.text) && !isOwnName(node)) return true;
    if (ts.isImportTypeNode(node) && !ALLOWED.test(node.argument.literal.text)) return true;
    return ts.forEachChild(node, (child) => this.#namesForeign(child) || undefined) === true;
  }

  #writtenOut(node) {
    const type = this.#checker.getTypeFromTypeNode(node);
    const made = this.#checker.typeToTypeNode(type, this.#source, WRITTEN);
    const text = ts.createPrinter().printNode(ts.EmitHint.Unspecified, made, this.#source);
    const here = dirname(this.#source.fileName);
    return text.replace(/import\("(\/[^"]+)"\)/g, (_, path) => `import("${wayTo(here, path)}")`);
  }
}

/** Whether an identifier names a part of a type and not a thing: `{ z: number }`. */
function isOwnName({ parent }) {
  return ts.isPropertySignature(parent) || ts.isParameter(parent) || ts.isNamedTupleMember(parent);
}

function declares(statement, asked) {
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.some(({ name }) => asked === ALL || name.text === asked);
  }
  const name = statement.name?.text;
  return name !== undefined && (asked === ALL || name === asked);
}

/** Local names of an import, with the names that they have where they come from. */
function namesOf({ importClause }) {
  const { name, namedBindings } = importClause ?? {};
  const bound = namedBindings === undefined ? [] : (namedBindings.elements ?? [namedBindings]);
  return [name, ...bound].flatMap((one) => {
    if (one === undefined) return [];
    const local = one.text ?? one.name.text;
    return [{ local, name: one.propertyName?.text ?? local }];
  });
}

function importOf(names, { moduleSpecifier }) {
  const listed = names.map(({ local, name }) => (local === name ? name : `${name} as ${local}`));
  return `import type { ${listed.join(", ")} } from "${moduleSpecifier.text}";`;
}

/** Every word that may be a name; comments left out. */
function wordsIn(text) {
  return new Set(text.replace(/\/\*[\s\S]*?\*\//g, "").match(/[A-Za-z_$][\w$]*/g) ?? []);
}

function wayTo(folder, path) {
  const way = relative(folder, path).split(sep).join("/");
  return `${way.startsWith(".") ? way : `./${way}`}.js`;
}
