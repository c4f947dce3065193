/**
 * Reads the command line by the commands' own descriptions. The only file that knows the command-line library.
 */
import { Argument, CommanderError, InvalidArgumentError, Option, Command as Parser } from "commander";
import type { Command, ListedCommand, OptionSpec } from "./command.js";
import { commandOf, commands } from "./commands/catalogue.js";
import { runForEach } from "./each-design.js";
import { EXIT } from "./exit.js";
import type { Io } from "./io.js";
import { plainText } from "./plain-text.js";
import { readVersion } from "./version.js";

/**
 * Runs the command that the words name, the only one that is loaded; help, version and wrong usage are answered here.
 *
 * @param words the command line without program and script
 * @returns the exit code
 */
export async function runCommand(words: readonly string[], io: Io): Promise<number> {
  if (words[0] === "complete" && words[1] === "--") {
    // A shell asks: what follows is not a command line yet.
    const { complete } = await import("./completion.js");
    await complete(words.slice(2), commands, io);
    return EXIT.done;
  }
  let code: number = EXIT.done;
  const parser = createParser(io);
  const asked = commandOf(words);
  for (const listed of commands) {
    const sub = parser.command(listed.name).description(listed.summary);
    if (listed !== asked) {
      for (const name of namesOf(listed)) sub.addArgument(new Argument(name));
      continue;
    }
    const command = await listed.load();
    describeCommand(sub, command, async (given) => {
      code = await runForEach(command, given, io);
    });
  }
  try {
    await parser.parseAsync([...words], { from: "user" });
    return code;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? EXIT.done : EXIT.usage;
  }
}

function createParser(io: Io): Parser {
  return new Parser("annulet")
    .description(
      "Turns a finger size, a band cross-section and a flat motif into one watertight ring solid for lost-wax casting.",
    )
    .version(readVersion(), "-V, --version", "print the version")
    .helpOption("-h, --help", "print help")
    .helpCommand("help [command]", "print help for a command")
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.stdout.write(plainText(text)),
      writeErr: (text) => io.stderr.write(plainText(text)),
      getOutHasColors: () => io.stdout.isTTY === true && !io.env.NO_COLOR,
      getErrHasColors: () => io.stderr.isTTY === true && !io.env.NO_COLOR,
    })
    .showHelpAfterError("Run annulet help for what it can do.")
    .addHelpText(
      "after",
      [
        "",
        "Example:",
        "  $ annulet make ring.json -o ring.stl    design to file",
        "",
        "Exit codes:",
        "  0  done",
        "  1  the design, or the mesh inspected, fails a check",
        "  2  wrong usage, document or file",
        "  3  a fault of annulet itself (ANNULET_DEBUG=1 shows where)",
      ].join("\n"),
    );
}

type Action = (given: { args: readonly string[]; options: object }) => Promise<void>;

function namesOf({ takes }: ListedCommand): string[] {
  return takes === "" ? [] : takes.split(" ");
}

function describeCommand(sub: Parser, command: Command, action: Action): void {
  sub.showHelpAfterError(`Run annulet ${command.name} --help for what it takes.`);
  for (const { name, description } of command.args) sub.addArgument(new Argument(name, description));
  for (const option of command.options) sub.addOption(createOption(option));
  const lines = ["", ...(command.details ?? [])];
  if (command.details !== undefined) lines.push("");
  lines.push(command.examples.length === 1 ? "Example:" : "Examples:");
  const widest = Math.max(...command.examples.map(({ line }) => line.length));
  for (const { line, does } of command.examples) lines.push(`  $ ${line.padEnd(widest)}    ${does}`);
  sub.addHelpText("after", lines.join("\n"));
  sub.action(() => action({ args: sub.args, options: sub.opts() }));
}

function createOption({ flags, description, choices, number, repeated }: OptionSpec): Option {
  const option = new Option(flags, description);
  if (choices !== undefined) option.choices(choices);
  if (number === true) option.argParser(readNumber);
  if (repeated === true) option.argParser((value: string, before: string[] = []) => [...before, value]);
  return option;
}

function readNumber(text: string): number {
  const value = Number(text);
  if (text.trim() === "" || !Number.isFinite(value)) throw new InvalidArgumentError("It is not a number.");
  return value;
}
