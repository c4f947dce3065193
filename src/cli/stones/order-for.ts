/**
 * The stones of a design: how its rows come out, and what to order.
 */
import { AnnuletError } from "../../index.js";
import { CARAT_DIGITS, orderCsv, planStones, SPARE_SHARE, STONE_CAUTION, type StonePlan } from "../../toolbox/index.js";
import { loadDesign } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson, say } from "../io.js";
import { writeOutputs } from "../output-files.js";
import { fixed, NOTHING } from "../show.js";
import { type Column, showTable } from "../table.js";
import { checkTargets } from "../targets.js";
import { tellWritten } from "../tell-written.js";
import { usage } from "../usage.js";
import { sayWarnings } from "../warnings.js";

/** Options that the order of a design's stones takes. */
export interface OrderOptions {
  readonly spares?: number;
  readonly output?: readonly string[];
  readonly json?: boolean;
}

/** Options of single stones, which a design says itself. */
const OF_SINGLE = ["cut", "size", "carat", "gem", "proportions", "tolerance"] as const;

/** Most spares, %. */
const MOST_SPARES = 1000;

const ORDER: readonly Column[] = [
  { head: "no", align: "right" },
  { head: "cut" },
  { head: "gem" },
  { head: "size, mm", align: "right" },
  { head: "count", align: "right" },
  { head: "ct", align: "right" },
  { head: "spares", align: "right" },
  { head: "order", align: "right" },
];

const ROWS: readonly Column[] = [
  { head: "row" },
  { head: "" },
  { head: "stones", align: "right" },
  { head: "gap, mm", align: "right" },
];

const LEGEND =
  "* is what annulet make sets; above and below it are a stone fewer and a stone more. Gaps are clear, in space.";

/** Prints the order, and writes it as CSV where that is asked for. */
export async function orderFor(path: string, options: OrderOptions, io: Io): Promise<number> {
  const { output = [], json } = options;
  const spares = readSpares(options);
  const wrong = output.find((file) => !file.toLowerCase().endsWith(".csv") && file !== "-");
  if (wrong !== undefined)
    throw new AnnuletError(usage(`${wrong} does not end in .csv, as the order of a design's stones does.`));
  const targets = await checkTargets(output, path, io.data);
  const warnings: Parameters<typeof sayWarnings>[1][number][] = [];
  const plan = await planStones(await loadDesign(path, io, {}), {
    spares,
    files: filesBeside(path),
    warn: (warning) => warnings.push(warning),
  });
  sayWarnings(io, warnings);
  const bytes = new TextEncoder().encode(orderCsv(plan.orders));
  const written = await writeOutputs(targets.map((target) => ({ target, chunks: () => [bytes] })));
  if (json) printJson(io, { ...plan, orders: plan.orders.map(({ stones: _, ...row }) => row) });
  else if (!output.includes("-")) printPlan(plan, spares, io);
  tellWritten(io, written, json ? say : print);
  return EXIT.done;
}

function readSpares(options: OrderOptions): number {
  const single = OF_SINGLE.find((name) => name in options && (options as Record<string, unknown>)[name] !== undefined);
  if (single !== undefined)
    throw new AnnuletError(usage(`--${single} is for a stone by itself: the design says it of its own.`));
  const { spares = 100 * SPARE_SHARE } = options;
  if (spares >= 0 && spares <= MOST_SPARES) return spares / 100;
  throw new AnnuletError(usage(`--spares is a share in %, 0 to ${MOST_SPARES}.`));
}

function printPlan({ report, orders, cautions }: StonePlan, spares: number, io: Io): void {
  if (report === undefined) {
    print(io, "The design has no stones.");
    return;
  }
  const rows = report.groups.flatMap(({ name, rows: lines }) =>
    lines.flatMap(({ rows: times, choices }) =>
      choices.map(({ count, gap, made }, i) => {
        const label = times > 1 ? `${name}, ${times} rows` : name;
        return [i === 0 ? label : "", made ? "*" : "", String(count), gap === null ? NOTHING : fixed(gap)];
      }),
    ),
  );
  if (rows.length > 0) print(io, `${showTable(ROWS, rows)}\n\n${LEGEND}\n`);
  const lines = orders.map(({ number, cutTitle, gemName, length, width, count, carats, spares: extra, order }) => [
    String(number),
    cutTitle,
    gemName,
    length === width ? fixed(length, 2) : `${fixed(length, 2)} × ${fixed(width, 2)}`,
    String(count),
    fixed(carats, CARAT_DIGITS),
    String(extra),
    String(order),
  ]);
  print(io, showTable(ORDER, lines));
  const share = Number((100 * spares).toFixed(1));
  print(
    io,
    `\n${report.count} stones, ${fixed(report.carats, CARAT_DIGITS)} ct, ${fixed(report.grams, CARAT_DIGITS)} g by the trade's published formulas; spares ${share} % of each size, rounded up.\n`,
  );
  for (const line of [...cautions, STONE_CAUTION]) print(io, line);
}
