/**
 * Runs a command for each of several files: one that fails does not keep the others from their turn.
 */
import { basename, extname, resolve } from "node:path";
import { Writable } from "node:stream";
import { AnnuletError, type Problem } from "../index.js";
import type { Command, Given } from "./command.js";
import { EXIT } from "./exit.js";
import { exitCodeOfError } from "./exit-codes.js";
import { STDIN } from "./files.js";
import { type Io, print, say } from "./io.js";
import { plainJson } from "./plain-text.js";
import { sayProblems } from "./say-problems.js";
import { STDOUT } from "./targets.js";
import { usage } from "./usage.js";

/** Stands in the name of an output for the name of the file that it is made of, without its ending. */
const NAME = "{name}";

/** What a design from standard input is called. */
const STDIN_NAME = "design";

/** Options that name outputs. */
const OUTPUTS = ["output", "report"] as const;

interface Outputs {
  readonly output?: string | readonly string[];
  readonly report?: string;
  readonly json?: boolean;
}

/** One file with the options that are its own. */
interface Turn {
  readonly path: string;
  readonly options: object;
}

/**
 * Runs a command: once where it has one file or none, else for each of them, in their order. `{name}` in an output's name is
 * then the file's.
 *
 * @returns the exit code; of several the gravest
 * @throws AnnuletError of one file its own; of several only what is wrong with the command line
 */
export async function runForEach(command: Command, { args, options }: Given<object>, io: Io): Promise<number> {
  const own = ioOf(options, io);
  if (command.each === undefined || args.length < 2) {
    const [path] = args;
    return command.run({ args, options: path === undefined ? options : named(path, options) }, own);
  }
  const turns = turnsOf(args, options);
  const failed: string[] = [];
  let code: number = EXIT.done;
  for (const [i, turn] of turns.entries()) {
    const ended = await runTurn(command, turn, { io: own, first: i === 0 });
    code = Math.max(code, ended);
    if (ended > EXIT.check) failed.push(turn.path);
  }
  const done = turns.length - failed.length;
  say(io, `${done} of ${turns.length} done${failed.length === 0 ? "" : `; not ${failed.join(", ")}`}`);
  return code;
}

/** Where an output goes to standard output, all that is said goes to standard error. */
function ioOf(options: Outputs, io: Io): Io {
  if (![options.output ?? []].flat().includes(STDOUT)) return io;
  if (options.json === true) throw new AnnuletError(usage("--json and an output - would both go to standard output."));
  return { stdin: io.stdin, stdout: io.stderr, stderr: io.stderr, env: io.env, data: io.stdout };
}

function turnsOf(paths: readonly string[], options: Outputs): readonly Turn[] {
  const problems: Problem[] = [];
  const outputs = OUTPUTS.flatMap((key) => [options[key] ?? []].flat());
  for (const output of outputs.filter((name) => !name.includes(NAME))) {
    const message = `${output === STDOUT ? "Standard output" : output} cannot take what is made of several files.`;
    problems.push({ ...usage(message), value: output, hint: `name an output for each: -o out/${NAME}.stl` });
  }
  if (paths.filter((path) => path === STDIN).length > 1) problems.push(usage("Standard input can be read once."));
  const by = new Map<string, string>();
  for (const path of paths) {
    for (const output of outputs.filter((name) => name.includes(NAME))) {
      const file = resolve(inName(output, path));
      const other = by.get(file);
      if (other === undefined) by.set(file, path);
      else problems.push({ ...usage(`${other} and ${path} would both go to ${inName(output, path)}.`), value: output });
    }
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  return paths.map((path) => ({ path, options: named(path, options) }));
}

/** The options with the file's name in those of its outputs. */
function named(path: string, options: Outputs): object {
  const changed = OUTPUTS.flatMap((key): [string, unknown][] => {
    const output = options[key];
    if (output === undefined) return [];
    return [[key, typeof output === "string" ? inName(output, path) : output.map((one) => inName(one, path))]];
  });
  return { ...options, ...Object.fromEntries(changed) };
}

function inName(output: string, path: string): string {
  return output.replaceAll(NAME, () => (path === STDIN ? STDIN_NAME : basename(path, extname(path))));
}

async function runTurn(
  command: Command,
  { path, options }: Turn,
  { io, first }: { readonly io: Io; readonly first: boolean },
): Promise<number> {
  const isJson = (options as Outputs).json === true;
  const caught = isJson ? catchText() : undefined;
  if (!isJson) print(io, `${first ? "" : "\n"}${path}`);
  try {
    const code = await command.run(
      { args: [path], options },
      caught === undefined ? io : { ...io, stdout: caught.stream },
    );
    if (caught !== undefined) print(io, plainJson({ design: path, result: JSON.parse(caught.text()) }, 0));
    return code;
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    say(io, `${path}:`);
    sayProblems(io, error);
    if (isJson) print(io, plainJson({ design: path, errors: error.problems }, 0));
    return exitCodeOfError(error);
  }
}

function catchText(): { readonly stream: Writable; text(): string } {
  const chunks: string[] = [];
  const stream = new Writable({
    write(chunk, _, done) {
      chunks.push(String(chunk));
      done();
    },
  });
  return { stream, text: () => chunks.join("") };
}
