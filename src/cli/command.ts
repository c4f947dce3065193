/**
 * What a command of the program is: a plain value, so that adding one is adding a file and a line in the catalogue.
 */
import type { Io } from "./io.js";

/** An option as `--help` shows it. */
export interface OptionSpec {
  /** E.g. `-o, --output <file>`; `<file>` is a value that must follow, without one the option is a switch. */
  readonly flags: string;
  readonly description: string;
  /** Allowed values. */
  readonly choices?: readonly string[];
  /** The value is a number; its limits are the command's concern. */
  readonly number?: true;
  /** May be given several times; the values come as a list. */
  readonly repeated?: true;
}

export interface ArgumentSpec {
  /** E.g. `<design>`, or `[label...]` for any number of words. */
  readonly name: string;
  readonly description: string;
}

/** What the user wrote. `Options` holds a value for each option, by its long name in camel case. */
export interface Given<Options> {
  readonly args: readonly string[];
  readonly options: Options;
}

export interface Command<Options = object> {
  readonly name: string;
  /** Its argument may be given several times; the command then runs for each. */
  readonly each?: true;
  /** Lines that follow the options in `--help`: what the command does in particular. */
  readonly details?: readonly string[];
  /** Command lines with what they do. */
  readonly examples: readonly { readonly line: string; readonly does: string }[];
  readonly args: readonly ArgumentSpec[];
  readonly options: readonly OptionSpec[];
  /** Returns the exit code; failures are thrown. */
  run(given: Given<Options>, io: Io): Promise<number>;
}

/** What help says of a command before it is loaded. */
export interface ListedCommand {
  readonly name: string;
  /** Its arguments' names, with spaces between; empty without any. */
  readonly takes: string;
  /** One line for the list of commands. */
  readonly summary: string;
  load(): Promise<Command>;
}

/** The option that prints a table's numbers for other programs. */
export const JSON_OPTION: OptionSpec = { flags: "--json", description: "print JSON instead of a table" };
