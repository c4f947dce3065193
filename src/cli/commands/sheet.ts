/**
 * annulet sheet: the bench sheet of a design, to be printed.
 */

import { AnnuletError, type BenchSheet, benchSheet, type Problem } from "../../index.js";
import { BENCH_SHEET_DEFAULTS, LONGEST_SIDE } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, type DesignDocument } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import type { Io } from "../io.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { openDesign } from "../open-design.js";
import { writeOutputs } from "../output-files.js";
import { type Paper, printPdf, requireChromium } from "../print-pdf.js";
import { startProgress } from "../show-progress.js";
import { STDOUT } from "../targets.js";
import { printWritten, tellWritten } from "../tell-written.js";
import { usage } from "../usage.js";
import { readVersion } from "../version.js";
import { sayWarnings } from "../warnings.js";

interface SheetOptions extends LimitOptions, DesignOptions {
  readonly json?: boolean;
  readonly output?: readonly string[];
  readonly paper?: Paper;
  readonly pictures?: number;
}

const ENDINGS = [".html", ".pdf", ".svg"] as const;
type Ending = (typeof ENDINGS)[number];

export const sheetCommand: Command<SheetOptions> = {
  name: "sheet",
  each: true,
  details: [
    ".html holds all of it in one file and prints on A4 and Letter; .pdf needs Chromium; .svg holds the drawings alone.",
    "Print at 100 %, not fitted to the page, and measure the bar of 20 mm.",
  ],
  examples: [
    { line: "annulet sheet ring.json -o sheet.html", does: "for a browser and its printer" },
    { line: "annulet sheet ring.json -o sheet.pdf --paper letter", does: "printed by Chromium" },
    { line: "annulet sheet ring.json -o sheet.html -o drawings.svg", does: "the drawings for themselves too" },
  ],
  args: [DESIGN_ARGUMENT],
  options: [
    {
      flags: "-o, --output <file>",
      description: "file to write: .html, .pdf or .svg; - is HTML on standard output; may be given several times",
      repeated: true,
    },
    { flags: "--paper <size>", description: "paper of a PDF (default: a4)", choices: ["a4", "letter"] },
    {
      flags: "--pictures <pixels>",
      description: `width of each picture; 0 leaves them out (default: ${BENCH_SHEET_DEFAULTS.pictureWidth})`,
      number: true,
    },
    ...DESIGN_OPTIONS,
    ...LIMIT_OPTIONS,
    { ...JSON_OPTION, description: "print the report and what was written as JSON" },
  ],
  async run({ args: [path], options }, io) {
    const outputs = checkUsage(options);
    const names = outputs.map(({ name }) => name);
    const { document, targets } = await openDesign(path, names, io, options);
    const sheet = await makeSheet(document, path, options, io);
    sayWarnings(io, sheet.report.warnings);
    const contents: Uint8Array[] = [];
    for (const { ending } of outputs) contents.push(await contentOf(sheet, ending, options.paper ?? "a4"));
    const written = await writeOutputs(targets.map((target, i) => ({ target, chunks: () => [contents[i]] })));
    if (options.json) printWritten(io, written, { report: sheet.report });
    else tellWritten(io, written);
    return EXIT.done;
  },
};

/** The outputs with their endings; everything that is wrong is said at once, a missing printer too. */
function checkUsage({ output = [], paper, pictures }: SheetOptions) {
  const problems: Problem[] = [];
  const outputs = output.flatMap((name) => {
    const ending = name === STDOUT ? ".html" : ENDINGS.find((one) => name.toLowerCase().endsWith(one));
    if (ending !== undefined) return [{ name, ending }];
    problems.push({ ...usage("The sheet is HTML, PDF or SVG."), value: name, allowed: ENDINGS.join(", ") });
    return [];
  });
  if (output.length === 0) {
    problems.push({ ...usage("Nothing is asked for."), hint: "name an output: -o sheet.html" });
  }
  const isPdf = outputs.some(({ ending }) => ending === ".pdf");
  if (paper !== undefined && !isPdf) problems.push(usage("--paper is for PDF; HTML takes the printer's paper."));
  if (pictures !== undefined && !(Number.isInteger(pictures) && pictures >= 0 && pictures <= LONGEST_SIDE)) {
    problems.push({ ...usage("--pictures is a width."), value: pictures, allowed: `0 to ${LONGEST_SIDE} pixels` });
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  if (isPdf) requireChromium();
  return outputs;
}

async function makeSheet(document: DesignDocument, path: string, options: SheetOptions, io: Io): Promise<BenchSheet> {
  const progress = startProgress(io, false);
  try {
    return await benchSheet(document, {
      tool: `annulet ${readVersion()}`,
      pictureWidth: options.pictures,
      limits: limitsOf(options),
      files: filesBeside(path),
      onProgress: ({ stage, share }) => progress.update(stage, share),
    });
  } finally {
    progress.stop();
  }
}

async function contentOf({ html, drawings }: BenchSheet, ending: Ending, paper: Paper): Promise<Uint8Array> {
  if (ending === ".pdf") return printPdf(html, paper);
  return new TextEncoder().encode(ending === ".svg" ? drawings : html);
}
