/**
 * annulet weigh: what a ring weighs and costs in every material.
 */
import { build, type Report, type WeightRow, type WeightTable } from "../../index.js";
import { densitySpan, showGrams } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, loadDesign } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson } from "../io.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { fixed, NOTHING } from "../show.js";
import { startProgress } from "../show-progress.js";
import { type Column, showTable } from "../table.js";
import { sayWarnings } from "../warnings.js";

interface WeighOptions extends LimitOptions, DesignOptions {
  readonly json?: boolean;
}

export const weighCommand: Command<WeighOptions> = {
  name: "weigh",
  each: true,
  details: [
    "Prices, sprue and button stand in the design's costing, materials of your own in its alloys.",
    "All weights are estimates from the model and published densities: weigh the pattern, and prove it with a test casting.",
  ],
  examples: [{ line: "annulet weigh ring.json", does: "before you order metal" }],
  args: [DESIGN_ARGUMENT],
  options: [...DESIGN_OPTIONS, ...LIMIT_OPTIONS, JSON_OPTION],
  async run({ args: [path], options }, io) {
    const document = await loadDesign(path, io, options);
    const progress = startProgress(io, false);
    const { report } = await build(document, {
      limits: limitsOf(options),
      files: filesBeside(path),
      onProgress: ({ stage, share }) => progress.update(stage, share),
    }).finally(() => progress.stop());
    sayWarnings(io, report.warnings);
    if (options.json) printJson(io, weightsWithStones(report));
    else {
      printWeights(report.weights, io);
      printStones(report.stones, io);
    }
    return EXIT.done;
  },
};

const WEIGHTS: readonly Column[] = [
  { head: "material" },
  { head: "" },
  { head: "g/cm³", align: "right" },
  { head: "finished", align: "right" },
  { head: "least to most", align: "right" },
  { head: "cast", align: "right" },
  { head: "by pattern", align: "right" },
  { head: "to melt", align: "right" },
];

const COSTS: readonly Column[] = [
  { head: "material" },
  { head: "a gram", align: "right" },
  { head: "finished", align: "right" },
  { head: "finishing loss", align: "right" },
  { head: "to melt", align: "right" },
];

function printWeights(table: WeightTable, io: Io): void {
  const { rows, sprue, button, pattern, currency } = table;
  const inRow = (row: WeightRow) => weightRow(row, densitySpan(table, row.symbol));
  print(io, showTable(WEIGHTS, rows.map(inRow)));
  const range =
    pattern.weightRange === null ? "" : `, ${pattern.weightRange.map((g) => fixed(g, 2)).join(" to ")} g by makes`;
  const lines = [
    "",
    `Weights in g, with the digits that published densities allow. Cast: before finishing, without sprue. To melt: the casting, ${sprue} % of it as sprue${button > 0 ? `, ${fixed(button)} g as button` : ""}.`,
    "By pattern: the pattern's weight times the metal's density over the pattern's; more than cast by what the metal shrinks.",
    `Master: ${fixed(pattern.millilitres)} ml of ${pattern.symbol}, without supports; the cured pattern weighs ${showGrams(pattern.weight, densitySpan(table, pattern.symbol))} g${range}.`,
  ];
  print(io, lines.join("\n"));
  const priced = rows.flatMap(costRow);
  if (priced.length === 0) return;
  print(
    io,
    `\n${showTable(COSTS, priced)}\n\nCost of the metal${currency === null ? "" : ` in ${currency}`}, at the design's prices.`,
  );
}

/** The table, and what the stones weigh beside it. */
function weightsWithStones({ weights, stones }: Report) {
  if (stones === undefined) return weights;
  const { count, carats, grams } = stones;
  return { ...weights, stones: { count, carats, grams } };
}

/** Stones are no metal: they stand beneath the table. */
function printStones(stones: Report["stones"], io: Io): void {
  if (stones === undefined) return;
  const [carats, grams] = [stones.carats, stones.grams].map((value) => fixed(value, 3));
  print(io, `\nStones: ${stones.count}, together ${carats} ct, ${grams} g, not counted above.`);
}

function weightRow(row: WeightRow, span: number): string[] {
  const { symbol, name, density, finished, finishedRange, cast, byPattern, melt } = row;
  const range = finishedRange === null ? NOTHING : finishedRange.map((g) => fixed(g, 2)).join(" to ");
  const show = (grams: number) => showGrams(grams, span);
  return [symbol, name, fixed(density, 2), show(finished), range, ...[cast, byPattern, melt].map(show)];
}

/** No row where there is no price. */
function costRow({ symbol, price, cost }: WeightRow): string[][] {
  if (price === null || cost === null) return [];
  return [[symbol, ...[price, cost.finished, cost.finishingLoss, cost.melt].map((value) => fixed(value, 2))]];
}
