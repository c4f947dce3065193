/**
 * annulet sizes: one size in every system, or all systems side by side.
 */
import { AnnuletError, type ResolvedSize, resolveSize, type SizeSpec, sizeSystems, sizeTable } from "../../index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson } from "../io.js";
import { fixed, NOTHING, signed } from "../show.js";
import { type Column, showTable } from "../table.js";

/** Gauge stick sizes of ISO 8653: the chart's rows, mm of circumference. */
const CHART = { first: 41, last: 76 } as const;

/** The system that a bare label is looked up in. */
const DEFAULT_SYSTEM = "iso";

interface SizesOptions {
  readonly system?: string;
  readonly diameter?: number;
  readonly circumference?: number;
  readonly json?: boolean;
}

export const sizesCommand: Command<SizesOptions> = {
  name: "sizes",
  details: [
    "A label is looked up in the system that --system names, by default iso. Without a label, --diameter or",
    `--circumference, the chart from ISO ${CHART.first} to ${CHART.last} is printed.`,
  ],
  examples: [
    { line: "annulet sizes", does: "the chart" },
    { line: "annulet sizes 54", does: "ISO 54 in every system" },
    { line: "annulet sizes N --system uk", does: "UK N in every system" },
    { line: "annulet sizes --diameter 17.5", does: "what a bore of 17.5 mm is called" },
  ],
  args: [{ name: "[label...]", description: "size label; one of several words, as 6 1/2, is put together" }],
  options: [
    {
      flags: "-s, --system <name>",
      description: "size system of the label",
      choices: sizeSystems.map((system) => system.name),
    },
    { flags: "--diameter <mm>", description: "inner diameter instead of a label", number: true },
    { flags: "--circumference <mm>", description: "inner circumference instead of a label", number: true },
    JSON_OPTION,
  ],
  async run({ args, options }, io) {
    const label = args.join(" ").trim();
    const spec = readSpec(label === "" ? undefined : label, options);
    if (spec === undefined) printChart(io, options.json === true);
    else printSize(resolve(spec, options), options, io);
    return EXIT.done;
  },
};

/** The size asked for; undefined when none is. */
function readSpec(label: string | undefined, options: SizesOptions): SizeSpec | undefined {
  const { system, diameter, circumference } = options;
  const given = [label, diameter, circumference].filter((way) => way !== undefined);
  if (given.length > 1 || (system !== undefined && label === undefined)) {
    throw new AnnuletError({
      code: "usage",
      message:
        given.length > 1
          ? "The size is given in more than one way."
          : "--system says how to read a label, but there is none.",
      allowed: "one of a label, --diameter and --circumference; --system with a label only",
    });
  }
  if (diameter !== undefined) return { diameter };
  if (circumference !== undefined) return { circumference };
  if (label === undefined) return undefined;
  return { system: system ?? DEFAULT_SYSTEM, value: label };
}

/** Resolves the size; a bare label that only other systems know is an error that names them. */
function resolve(spec: SizeSpec, options: SizesOptions): ResolvedSize {
  try {
    return resolveSize(spec);
  } catch (error) {
    if (!(error instanceof AnnuletError) || !("system" in spec) || options.system !== undefined) throw error;
    const others = systemsThatKnow(spec.value).map((name) => `--system ${name}`);
    if (others.length === 0) throw error;
    const [problem] = error.problems;
    throw new AnnuletError({ ...problem, hint: `in another system? ${others.join(", ")}` }, { cause: error });
  }
}

/** Names of the systems that the label is of. */
function systemsThatKnow(label: string | number): string[] {
  return sizeSystems
    .filter((system) => {
      try {
        return Number.isFinite(system.circumferenceOf(label));
      } catch (error) {
        if (error instanceof AnnuletError) return false;
        throw error;
      }
    })
    .map((system) => system.name);
}

function printSize(size: ResolvedSize, options: SizesOptions, io: Io): void {
  const rows = sizeTable(size.circumference);
  if (options.json) {
    printJson(io, { ...size, systems: rows.map((row) => ({ ...row, source: sourceOf(row.system) })) });
    return;
  }
  const name = size.system === undefined ? "" : `${titleOf(size.system)} ${size.label}: `;
  print(io, `${name}circumference ${fixed(size.circumference)} mm, diameter ${fixed(size.diameter)} mm\n`);
  const columns: readonly Column[] = [
    { head: "system" },
    { head: "" },
    { head: "nearest", align: "right" },
    { head: "circumference", align: "right" },
    { head: "diameter", align: "right" },
    { head: "difference", align: "right" },
    { head: "in charts", align: "right" },
  ];
  const cells = rows.map(({ system, title, label, circumference, diameter, difference, span }) => [
    system,
    title,
    label ?? NOTHING,
    circumference === undefined ? NOTHING : fixed(circumference),
    diameter === undefined ? NOTHING : fixed(diameter),
    difference === undefined ? NOTHING : signed(difference),
    span === undefined ? "" : showSpan(span),
  ]);
  print(io, showTable(columns, cells));
  print(io, "\nLengths in mm; the difference is the label's circumference less the one asked for.");
  print(io, "In charts: circumferences that published charts have for the label, where they disagree.");
  const others = options.system === undefined && size.label !== undefined ? systemsThatKnow(size.label) : [];
  const elsewhere = others.filter((other) => other !== size.system);
  if (elsewhere.length > 0) print(io, `${size.label} is also a label of: ${elsewhere.join(", ")} (see --system).`);
  printSources(io);
}

function printChart(io: Io, json: boolean): void {
  const rows = Array.from({ length: CHART.last - CHART.first + 1 }, (_, i) => {
    const circumference = CHART.first + i;
    return { circumference, diameter: circumference / Math.PI, systems: sizeTable(circumference) };
  });
  if (json) {
    printJson(io, rows);
    return;
  }
  const columns: readonly Column[] = [
    { head: "diameter", align: "right" },
    ...sizeSystems.map((system): Column => ({ head: system.name, align: "right" })),
  ];
  const cells = rows.map(({ diameter, systems }) => [fixed(diameter), ...systems.map(({ label }) => label ?? NOTHING)]);
  print(io, showTable(columns, cells));
  print(io, "\nThe nearest label of each system to each ISO size; diameter of the ISO size in mm.");
  printSources(io);
}

function printSources(io: Io): void {
  print(io, "\nSources:");
  for (const { name, source } of sizeSystems) print(io, `  ${name}: ${source}`);
}

function showSpan([least, most]: readonly [number, number]): string {
  return `${fixed(least, 2)} to ${fixed(most, 2)}`;
}

function titleOf(name: string): string {
  return sizeSystems.find((system) => system.name === name)?.title ?? name;
}

function sourceOf(name: string): string | undefined {
  return sizeSystems.find((system) => system.name === name)?.source;
}
