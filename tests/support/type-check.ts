/**
 * Type-checks a text as an app's strict compiler does.
 */
import { join } from "node:path";
import ts from "typescript";

/** What the compiler says of a text, and in which of its lines, from 1. */
export interface TypeProblem {
  readonly line: number;
  readonly message: string;
}

export interface TypeCheck {
  /** Where the text stands, so that packages are found from there. Default here. */
  readonly folder?: string;
  /** How packages are found. Default bundler. */
  readonly resolution?: "bundler" | "nodenext";
  /** Whether types of packages are checked too. Default not. */
  readonly libraries?: boolean;
}

/** All problems, those in other files with line 0. */
export function problemsIn(text: string, { folder, resolution, libraries }: TypeCheck = {}): TypeProblem[] {
  const path = join(folder ?? import.meta.dirname, "checked-text.ts");
  const options: ts.CompilerOptions = {
    strict: true,
    noEmit: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: libraries !== true,
    // Those of the language itself are not ours.
    skipDefaultLibCheck: true,
    target: ts.ScriptTarget.ES2022,
    lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
    types: [],
    ...(resolution === "nodenext"
      ? { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext }
      : { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler }),
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (name, how) =>
    name === path ? ts.createSourceFile(name, text, how, true) : getSourceFile.call(host, name, how);
  host.fileExists = (name) => name === path || fileExists.call(host, name);
  host.readFile = (name) => (name === path ? text : readFile.call(host, name));
  const program = ts.createProgram([path], options, host);
  return ts.getPreEmitDiagnostics(program).map(({ file, start, messageText }) => ({
    line: file?.fileName === path ? file.getLineAndCharacterOfPosition(start ?? 0).line + 1 : 0,
    message: `${file?.fileName === path ? "" : `${file?.fileName}: `}${ts.flattenDiagnosticMessageText(messageText, "\n")}`,
  }));
}
