/**
 * The program's commands, each loaded when it is asked for: most need a small part of annulet only, help none. A new one is
 * one file and one entry here.
 */
import type { ListedCommand } from "../command.js";

/** Every command, in the order that help shows them. */
export const commands: readonly ListedCommand[] = [
  {
    name: "make",
    takes: "<design...>",
    summary: "build the ring of a design and write it to files",
    load: async () => (await import("./make.js")).makeCommand,
  },
  {
    name: "open",
    takes: "[design]",
    summary: "shape a design on the workbench, in the browser, and save it",
    load: async () => (await import("./open.js")).openCommand,
  },
  {
    name: "fit",
    takes: "<design...>",
    summary: "print the numbers of repeats that come near the drawn band, best first",
    load: async () => (await import("./fit.js")).fitCommand,
  },
  {
    name: "beads",
    takes: "<design...>",
    summary: "print how the bead runs come out, and with fewer or more beads",
    load: async () => (await import("./beads.js")).beadsCommand,
  },
  {
    name: "tile",
    takes: "[design...]",
    summary: "draw the flat tile at true size, with its symmetry, beads and dimensions",
    load: async () => (await import("./tile.js")).tileCommand,
  },
  {
    name: "picture",
    takes: "<file...>",
    summary: "take a picture of a design or of a mesh file, as a customer sees it",
    load: async () => (await import("./picture.js")).pictureCommand,
  },
  {
    name: "watch",
    takes: "<design>",
    summary: "make, picture and check a design again each time it is saved",
    load: async () => (await import("./watch.js")).watchCommand,
  },
  {
    name: "print",
    takes: "<file...>",
    summary: "set the ways to print a ring side by side: height, layers, steep undersides",
    load: async () => (await import("./print.js")).printCommand,
  },
  {
    name: "sheet",
    takes: "<design...>",
    summary: "write the bench sheet of a design: drawings, pictures, tables, cautions",
    load: async () => (await import("./sheet.js")).sheetCommand,
  },
  {
    name: "range",
    takes: "<plan>",
    summary: "make many rings of one design: sizes, alloys, options, a shop's whole offer",
    load: async () => (await import("./range.js")).rangeCommand,
  },
  {
    name: "worker",
    takes: "",
    summary: "make the rings of ranges that are on a queue in Redis, beside other workers on any machine",
    load: async () => (await import("./worker.js")).workerCommand,
  },
  {
    name: "motifs",
    takes: "[name]",
    summary: "list the motifs that designs can name, or draw them all on one sheet",
    load: async () => (await import("./motifs.js")).motifsCommand,
  },
  {
    name: "sizes",
    takes: "[label...]",
    summary: "print a ring size in every size system, or the chart of all",
    load: async () => (await import("./sizes.js")).sizesCommand,
  },
  {
    name: "stones",
    takes: "[design]",
    summary: "print what to order for a design, or sizes and weights of stones and what gems bear, or one stone",
    load: async () => (await import("./stones.js")).stonesCommand,
  },
  {
    name: "check",
    takes: "<design...>",
    summary: "find walls, lines, gaps and beads that may not cast, with their places",
    load: async () => (await import("./check.js")).checkCommand,
  },
  {
    name: "weigh",
    takes: "<design...>",
    summary: "print what the ring weighs in every material, what to melt, and what it costs at your prices",
    load: async () => (await import("./weigh.js")).weighCommand,
  },
  {
    name: "inspect",
    takes: "<file>",
    summary: "check, measure and weigh a mesh file: STL, OBJ, 3MF or GLB",
    load: async () => (await import("./inspect.js")).inspectCommand,
  },
  {
    name: "explain",
    takes: "[field]",
    summary: "say what a field of the design document is: unit, range, default, what is inside it, an example",
    load: async () => (await import("./explain.js")).explainCommand,
  },
  {
    name: "schema",
    takes: "[of]",
    summary: "print the JSON Schema of the design document, of the report, or of a plan",
    load: async () => (await import("./schema.js")).schemaCommand,
  },
  {
    name: "cautions",
    takes: "",
    summary: "print what to know before casting, wearing or selling a ring",
    load: async () => (await import("./cautions.js")).cautionsCommand,
  },
  {
    name: "complete",
    takes: "<shell>",
    summary: "print the script by which bash, zsh or fish completes command lines",
    load: async () => (await import("./complete.js")).completeCommand,
  },
];

/** The listed command that a command line is about: the first that it names, also after `help` or an option. */
export function commandOf(words: readonly string[]): ListedCommand | undefined {
  const named = words.find((word) => commands.some(({ name }) => name === word));
  return commands.find(({ name }) => name === named);
}
