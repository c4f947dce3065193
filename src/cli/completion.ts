/**
 * What a shell may put in place of the word at its cursor. The library makes the shells' scripts and finds the words; it is
 * told here of the commands, and files are left to the shell.
 */
import { RootCommand } from "@bomb.sh/tab";
import type { Command as Described, ListedCommand, OptionSpec } from "./command.js";
import { type Io, print } from "./io.js";

/** Shells that there are scripts for. */
export const SHELLS = ["bash", "zsh", "fish"] as const;

export type Shell = (typeof SHELLS)[number];

/** How the shells are told to complete files by themselves, and to leave them (the library's protocol). */
const FILES_TOO = ":0";
const NO_FILES = ":4";

/** The script that a shell loads once. */
export function completionScript(shell: Shell): string {
  return heard(() => new RootCommand().setup("annulet", "annulet", shell)).join("\n");
}

/**
 * Prints what the last word may become, a line each with what it means, then how the shell goes on.
 *
 * @param words the command line without the program, as far as it is written; the last one may be empty
 * @param commands that there are
 */
export async function complete(words: readonly string[], commands: readonly ListedCommand[], io: Io): Promise<void> {
  const root = new RootCommand();
  for (const listed of commands) {
    const { options } =
      listed.name === words[0] ? await listed.load() : ({ options: [] } as Pick<Described, "options">);
    const sub = root.command(listed.name, listed.summary);
    for (const option of options) addOption(sub, option);
  }
  const lines = heard(() => root.parse([...words]));
  const found = lines.filter((line) => line !== NO_FILES);
  const takesFiles = words.length > 1 && found.length === 0;
  for (const line of [...found, takesFiles ? FILES_TOO : NO_FILES]) print(io, line);
}

function addOption(sub: ReturnType<RootCommand["command"]>, { flags, description, choices = [] }: OptionSpec): void {
  const [, short, long, value] = /^(?:-(\w), )?--([\w-]+)(?: (.+))?$/.exec(flags) ?? [];
  if (long === undefined) throw new Error(`an option's flags are not read: ${flags}`);
  if (value === undefined && short === undefined) sub.option(long, description);
  else if (value === undefined) sub.option(long, description, short);
  else {
    const offer = (take: (word: string, description: string) => void) => {
      for (const choice of choices) take(choice, "");
    };
    sub.option(long, description, offer, short);
  }
}

/** What the library says meanwhile: it speaks to the console. */
function heard(work: () => void): string[] {
  const lines: string[] = [];
  const { log } = console;
  console.log = (line: string) => lines.push(line);
  try {
    work();
  } finally {
    console.log = log;
  }
  return lines;
}
