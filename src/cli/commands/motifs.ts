/**
 * annulet motifs: the catalogue of motifs as a list, or as a sheet.
 */
import { AnnuletError, flatTile, listMotifs, type MotifEntry } from "../../index.js";
import { drawMotifs, sampleDesign } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit.js";
import { print, printJson } from "../io.js";
import { showTable } from "../table.js";
import { checkTargets } from "../targets.js";
import { tellWritten } from "../tell-written.js";
import { notSvg, usage } from "../usage.js";
import { writeSvg } from "../write-svg.js";

/** Tiles in which the sheet shows a motif: enough to see how it goes on. */
const SHOWN_TILES = 3;

interface MotifsOptions {
  readonly output?: string;
  readonly json?: boolean;
}

export const motifsCommand: Command<MotifsOptions> = {
  name: "motifs",
  details: ["With a name, that motif alone: what it shows, and its parameters with their ranges."],
  examples: [
    { line: "annulet motifs", does: "all motifs" },
    { line: "annulet motifs fan", does: "one, with its parameters" },
    { line: "annulet motifs -o motifs.svg", does: "the sheet" },
  ],
  args: [{ name: "[name]", description: "a motif" }],
  options: [{ flags: "-o, --output <file>", description: "sheet to write, .svg" }, JSON_OPTION],
  async run({ args: [name], options: { output, json } }, io) {
    const entries = chosen(name);
    if (output !== undefined) {
      requireSheet(output, json);
      const [target] = await checkTargets([output], undefined, io.data);
      tellWritten(io, await writeSvg(target, await drawSheet(entries)));
    } else if (json) printJson(io, entries);
    else print(io, name === undefined ? showList(entries) : showMotif(entries[0]));
    return EXIT.done;
  },
};

function chosen(name: string | undefined): MotifEntry[] {
  const all = listMotifs();
  if (name === undefined) return all;
  const found = all.filter((entry) => entry.name === name);
  if (found.length > 0) return found;
  throw new AnnuletError({
    code: "motif-unknown",
    message: `there is no motif of the name ${JSON.stringify(name)}`,
    value: name,
    allowed: all.map((entry) => entry.name).join(", "),
  });
}

function requireSheet(output: string, json: boolean | undefined): void {
  const problems = notSvg(output, "The sheet");
  if (json) problems.unshift(usage("The motifs are either drawn, by --output, or printed as JSON."));
  if (problems.length > 0) throw new AnnuletError(problems);
}

async function drawSheet(entries: readonly MotifEntry[]): Promise<string> {
  const samples = [];
  for (const motif of entries) {
    samples.push({ motif, tile: await flatTile(sampleDesign(motif), { tiles: SHOWN_TILES }) });
  }
  return drawMotifs(samples);
}

function showList(entries: readonly MotifEntry[]): string {
  const columns = [
    { head: "motif" },
    { head: "group" },
    { head: "aspect", align: "right" as const },
    { head: "use" },
    { head: "what one sees" },
  ];
  const rows = entries.map((entry) => [
    entry.name,
    entry.group,
    String(entry.aspect.natural),
    useOf(entry),
    entry.summary,
  ]);
  return `${showTable(columns, rows)}\n\n${NOTE}`;
}

const NOTE =
  "aspect: the tile's natural height over its width. group: the richest symmetry that the pattern may have.\nannulet motifs NAME shows the parameters; -o motifs.svg draws all.";

function useOf({ ribbon }: MotifEntry): string {
  return ribbon === undefined ? "filled" : `ribbon ${ribbon.share}`;
}

function showMotif({ name, summary, group, woven, aspect, ribbon, parameters }: MotifEntry): string {
  const use =
    ribbon === undefined
      ? "filled"
      : `lines for a ribbon, about ${ribbon.share} of the tile's width (join ${ribbon.join}, ends ${ribbon.ends})`;
  const lines = [
    `${name}: ${summary}`,
    `symmetry up to ${group}${woven === undefined ? "" : `, woven up to ${woven}`}; aspect ${aspect.natural}, from ${aspect.least} to ${aspect.most}; ${use}`,
    "",
    ...parameters.map((one) => `  ${one.name}: ${one.description}`),
    "",
    `  "motif": ${JSON.stringify({ name, ...Object.fromEntries(parameters.map((one) => [one.name, one.default])) })}`,
  ];
  return lines.join("\n");
}
