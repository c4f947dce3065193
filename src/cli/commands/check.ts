/**
 * annulet check: whether the finished ring has details that may not come out of the casting, and where.
 */
import { AnnuletError, checkDesign, type DesignCheck, type Finding, type RuleResult, ruleSets } from "../../index.js";
import { drawFindings } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson, say } from "../io.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { openDesign } from "../open-design.js";
import { fixed, NOTHING } from "../show.js";
import { startProgress } from "../show-progress.js";
import { type Column, showTable } from "../table.js";
import { tellWritten } from "../tell-written.js";
import { tint } from "../tint.js";
import { notSvg } from "../usage.js";
import { sayWarnings } from "../warnings.js";
import { writeSvg } from "../write-svg.js";

interface CheckOptions extends LimitOptions, DesignOptions {
  readonly rules?: string;
  readonly output?: string;
  readonly json?: boolean;
}

export const checkCommand: Command<CheckOptions> = {
  name: "check",
  each: true,
  details: [
    "Exit code 1 when a finding is an error. Limits of the design's own rules stand above those of a set.",
    ...ruleSets.map(({ name, summary }) => `${name}: ${summary}.`),
    "A check is no promise: prove the design with a test casting, and ask your caster.",
  ],
  examples: [
    { line: "annulet check ring.json", does: "before you print" },
    { line: "annulet check ring.json --rules conservative -o findings.svg", does: "stricter, with a drawing" },
  ],
  args: [DESIGN_ARGUMENT],
  options: [
    {
      flags: "--rules <set>",
      description: `limits to judge by (default: the design's, else ${ruleSets[0].name})`,
      choices: ruleSets.map(({ name }) => name),
    },
    { flags: "-o, --output <file>", description: "draw the findings on the unrolled band, .svg" },
    ...DESIGN_OPTIONS,
    ...LIMIT_OPTIONS,
    JSON_OPTION,
  ],
  async run({ args: [path], options }, io) {
    const { output, rules, json } = options;
    const problems = output === undefined ? [] : notSvg(output, "The drawing");
    if (problems.length > 0) throw new AnnuletError(problems);
    const { document, targets } = await openDesign(path, output === undefined ? [] : [output], io, options);
    const progress = startProgress(io, false);
    const check = await checkDesign(document, {
      rules,
      limits: limitsOf(options),
      files: filesBeside(path),
      onProgress: ({ stage, share }) => progress.update(stage, share),
    }).finally(() => progress.stop());
    sayWarnings(io, check.warnings);
    if (json) {
      const { band: _, ...rest } = check;
      printJson(io, rest);
    } else printCheck(check, io);
    if (output !== undefined) tellWritten(io, await writeSvg(targets[0], drawFindings(check)), json ? say : print);
    return check.findings.some(({ severity }) => severity === "error") ? EXIT.check : EXIT.done;
  },
};

const COLUMNS: readonly Column[] = [
  { head: "" },
  { head: "rule" },
  { head: "measured", align: "right" },
  { head: "limit", align: "right" },
  { head: "" },
  { head: "what" },
  { head: "limit from" },
];

function printCheck({ rules, results, findings }: DesignCheck, io: Io): void {
  print(io, `Rules: ${rules.name}, ${rules.summary}\n`);
  print(io, showTable(COLUMNS, results.map(toRow)));
  const colours = { error: "red", warning: "yellow", note: "dim" } as const;
  for (const [i, finding] of findings.entries()) {
    const head = tint(io, io.stdout, colours[finding.severity], finding.severity);
    print(io, `\n${i + 1} ${head}: ${finding.message}`);
    if (finding.places.length > 0) print(io, `  at ${describePlaces(finding)}`);
  }
  const grave = findings.filter(({ severity }) => severity === "error").length;
  print(
    io,
    `\n${findings.length === 0 ? "Every limit is kept." : `${findings.length} not kept, errors among them: ${grave}.`}`,
  );
  print(
    io,
    "Lengths in mm. A – means that nothing of the kind is there, or nothing as small as the limit. Not looked at:",
  );
  for (const { rule, without } of results) if (without !== "") print(io, `  ${rule}: ${without}`);
}

function toRow({ rule, figure, limit, unit, severity, source, kept, what }: RuleResult): string[] {
  const show = (value: number) => {
    if (unit === "mm") return fixed(value);
    return unit === "" ? String(value) : `${fixed(value, 1)} ${unit}`;
  };
  return [
    kept ? "" : severity,
    rule,
    figure === null ? NOTHING : show(figure),
    show(limit),
    kept ? "kept" : "",
    what,
    source,
  ];
}

/** Places shown in the table's text; all are in the JSON. */
const SHOWN = 4;

function describePlaces({ places }: Finding): string {
  const shown = places.slice(0, SHOWN).map(({ angle, v }) => `${fixed(angle, 1)}°, v ${fixed(v, 2)}`);
  const more = places.length > SHOWN ? ` and ${places.length - SHOWN} more` : "";
  return `${shown.join("; ")}${more}`;
}
