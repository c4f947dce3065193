/**
 * annulet beads: how the bead runs come out, with one bead fewer and one more beside them.
 */
import { type BeadChoice, type BeadRunReport, planBeads } from "../../index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, loadDesign } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson } from "../io.js";
import { FLAT_LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { fixed } from "../show.js";
import { type Column, showTable } from "../table.js";

const COLUMNS: readonly Column[] = [
  { head: "run" },
  { head: "" },
  { head: "beads", align: "right" },
  { head: "diameter", align: "right" },
  { head: "spacing", align: "right" },
  { head: "ratio", align: "right" },
  { head: "neighbours" },
];

const LEGEND = [
  "* is what annulet make places; above and below it are a step fewer and a step more in every stretch of the run. Beads",
  "is the whole ring's number. Spacing is along the line, in mm; ratio is spacing over the local diameter.",
].join("\n");

/** Neighbours that overlap or gap by less than this share of their diameter touch: half of what the table's ratio shows. */
const TOUCHING = 0.0005;

interface BeadsOptions extends LimitOptions, DesignOptions {
  readonly json?: boolean;
}

export const beadsCommand: Command<BeadsOptions> = {
  name: "beads",
  each: true,
  details: ["Nothing is built, so that pitches and sizes can be tried at once."],
  examples: [{ line: "annulet beads ring.json", does: "see tight and loose side by side, then set the pitch" }],
  args: [DESIGN_ARGUMENT],
  options: [...DESIGN_OPTIONS, ...FLAT_LIMIT_OPTIONS, JSON_OPTION],
  async run({ args: [path], options }, io) {
    const how = { files: filesBeside(path), limits: limitsOf(options) };
    const runs = await planBeads(await loadDesign(path, io, options), how);
    if (options.json) printJson(io, runs);
    else printRuns(runs, io);
    return EXIT.done;
  },
};

function printRuns(runs: readonly BeadRunReport[], io: Io): void {
  if (runs.length === 0) {
    print(io, "The design has no bead runs.");
    return;
  }
  print(io, showTable(COLUMNS, runs.flatMap(toRows)));
  print(io, `\n${LEGEND}`);
}

function toRows({ run, count, diameterMin, diameterMax, choices }: BeadRunReport): string[][] {
  const size = diameterMin === diameterMax ? fixed(diameterMin) : `${fixed(diameterMin)}–${fixed(diameterMax)}`;
  if (choices.length === 0) return [[run, "*", String(count), size, "", "", "single beads"]];
  return choices.map((choice, i) => [
    i === 0 ? run : "",
    choice.made ? "*" : "",
    String(choice.count),
    size,
    fixed(choice.spacing),
    fixed(choice.ratio),
    describeRatio(choice),
  ]);
}

/** How neighbours stand to each other, in words: over all legs of the run. */
function describeRatio({ ratioMin, ratioMax }: BeadChoice): string {
  const [low, high] = [describe(ratioMin), describe(ratioMax)];
  return low === high ? low : `${low} to ${high}`;
}

function describe(ratio: number): string {
  if (Math.abs(ratio - 1) < TOUCHING) return "touch";
  return `${ratio < 1 ? "overlap" : "gap"} ${fixed(100 * Math.abs(ratio - 1), 1)} %`;
}
