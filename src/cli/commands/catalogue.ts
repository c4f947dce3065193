/**
 * The program's commands, each loaded when it is asked for: most need a small part of annulet only. A new one is one file and
 * one line here.
 */
import type { Command } from "../command.js";

/** Name → how it is loaded, in the order that help shows them. */
const LOADERS: Readonly<Record<string, () => Promise<Command>>> = {
  make: async () => (await import("./make.js")).makeCommand,
  fit: async () => (await import("./fit.js")).fitCommand,
  beads: async () => (await import("./beads.js")).beadsCommand,
  tile: async () => (await import("./tile.js")).tileCommand,
  picture: async () => (await import("./picture.js")).pictureCommand,
  print: async () => (await import("./print.js")).printCommand,
  sheet: async () => (await import("./sheet.js")).sheetCommand,
  motifs: async () => (await import("./motifs.js")).motifsCommand,
  sizes: async () => (await import("./sizes.js")).sizesCommand,
  check: async () => (await import("./check.js")).checkCommand,
  weigh: async () => (await import("./weigh.js")).weighCommand,
  inspect: async () => (await import("./inspect.js")).inspectCommand,
  explain: async () => (await import("./explain.js")).explainCommand,
  schema: async () => (await import("./schema.js")).schemaCommand,
  cautions: async () => (await import("./cautions.js")).cautionsCommand,
};

/** The names of all commands, in the order that help shows them. */
const commandNames: readonly string[] = Object.keys(LOADERS);

/** Every command, in the order that help shows them. */
export function loadCommands(names: readonly string[] = commandNames): Promise<Command[]> {
  return Promise.all(names.map((name) => LOADERS[name]()));
}

/** The command that a line begins with; all of them where it begins with none, for help and for what was misspelt. */
export function commandsFor(words: readonly string[]): Promise<Command[]> {
  const [first] = words;
  return loadCommands(commandNames.includes(first) ? [first] : commandNames);
}
