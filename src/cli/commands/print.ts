/**
 * annulet print: how a ring lies for the printer, how high it is, what hangs over.
 */

import {
  AnnuletError,
  build,
  encodePng,
  findUndersides,
  layDown,
  type PrintFigures,
  type PrintStance,
  readDesign,
  takePicture,
} from "../../index.js";
import {
  PRINT_DEFAULTS,
  PRINT_STANCES,
  type PrintSettings,
  printFigures,
  printSettings,
  readableEndings,
} from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, loadDesign } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson, say } from "../io.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { keepFilesOf, sourceOf } from "../open-design.js";
import { writeOutputs } from "../output-files.js";
import { isMeshFile, readMeshFile } from "../read-mesh-file.js";
import { fixed, NOTHING } from "../show.js";
import { startProgress } from "../show-progress.js";
import { type Column, showTable } from "../table.js";
import { checkTargets, STDOUT, type Target } from "../targets.js";
import { tellWritten } from "../tell-written.js";
import { usage } from "../usage.js";
import { sayWarnings } from "../warnings.js";

interface Options extends LimitOptions, DesignOptions {
  readonly stance?: PrintStance;
  readonly tilt?: number;
  readonly layer?: number;
  readonly support?: number;
  readonly output?: string;
  readonly azimuth?: number;
  readonly elevation?: number;
  readonly json?: boolean;
}

/** Where the picture is taken from, degrees: from below, where undersides are seen. */
const FROM = { azimuth: 60, elevation: -28 } as const;

/** Tilts that the table sets side by side, degrees from lying. */
const COMPARED = [15, 30, 45, 60, 75] as const;

export const printCommand: Command<Options> = {
  name: "print",
  each: true,
  details: [
    "Of a design the master is shown, with its casting allowances; the finger's axis of a mesh file is taken as z.",
    "The first row is the way that the design or the options name. Nothing is turned in a file: annulet make does that.",
  ],
  examples: [
    { line: "annulet print ring.json", does: "lying, standing and tilted, side by side" },
    {
      line: "annulet print ring.stl --stance tilted --tilt 40 -o steep.png",
      does: "steep undersides in red, seen from below",
    },
  ],
  args: [
    { name: "<file...>", description: `${DESIGN_ARGUMENT.description}; or a mesh file, ${readableEndings.join(", ")}` },
  ],
  options: [
    {
      flags: "--stance <stance>",
      description: `how it is turned (default: the design's, or ${PRINT_DEFAULTS.stance})`,
      choices: PRINT_STANCES,
    },
    {
      flags: "--tilt <degrees>",
      description: `of a tilted ring, from lying, 0, to standing, 90 (default: ${PRINT_DEFAULTS.tilt})`,
      number: true,
    },
    {
      flags: "--layer <mm>",
      description: `thickness of a layer (default: the design's, or ${PRINT_DEFAULTS.layer})`,
      number: true,
    },
    {
      flags: "--support <degrees>",
      description: `undersides that lean further from the upright are steep (default: the design's, or ${PRINT_DEFAULTS.support})`,
      number: true,
    },
    { flags: "-o, --output <file>", description: "picture of the first row with its steep undersides in red, .png" },
    {
      flags: "--azimuth <degrees>",
      description: `of the picture, about the upright axis (default: ${FROM.azimuth})`,
      number: true,
    },
    {
      flags: "--elevation <degrees>",
      description: `of the picture, over the ground (default: ${FROM.elevation}, from below)`,
      number: true,
    },
    ...DESIGN_OPTIONS,
    ...LIMIT_OPTIONS,
    JSON_OPTION,
  ],
  async run({ args: [path], options }, io) {
    const { output, azimuth = FROM.azimuth, elevation = FROM.elevation } = options;
    if (output !== undefined && output !== STDOUT && !output.toLowerCase().endsWith(".png")) {
      const allowed = "a file that ends in .png, or - for standard output";
      throw new AnnuletError({ ...usage("A picture is PNG."), value: output, allowed });
    }
    const targets = await checkTargets(output === undefined ? [] : [output], sourceOf(path, io), io.data);
    const { mesh, settings } = await loadMesh(path, options, targets, io);
    const ways: readonly PrintSettings[] = [
      settings,
      ...(["lying", "standing"] as const).map((stance) => ({ ...settings, stance })),
      ...COMPARED.map((tilt) => ({ ...settings, stance: "tilted" as const, tilt })),
    ];
    const figures = ways.map((way) => printFigures(layDown(mesh, way), way));
    const shoot = () => {
      const turned = layDown(mesh, settings);
      const { steep } = findUndersides(turned, { support: settings.support });
      const view = { stance: "lying", azimuth, elevation } as const;
      return [encodePng(takePicture(turned, { view, marked: steep, finish: "satin" }))];
    };
    const written = await writeOutputs(targets.map((target) => ({ target, chunks: shoot })));
    if (options.json) printJson(io, figures);
    else printTable(figures, io);
    tellWritten(io, written, options.json ? say : print);
    return EXIT.done;
  },
};

async function loadMesh(path: string, options: Options, targets: readonly Target[], io: Io) {
  const { stance, tilt, layer, support } = options;
  const given = { stance, tilt, layer, support };
  if (isMeshFile(path)) {
    const settings = printSettings(given);
    return { mesh: await readMeshFile(path), settings };
  }
  const document = await loadDesign(path, io, options);
  keepFilesOf(document, path, targets);
  const design = readDesign(document);
  const settings = printSettings(given, printSettings(design.print));
  const progress = startProgress(io, false);
  const { mesh, report } = await build(design, {
    print: { stance: "built" },
    limits: limitsOf(options),
    files: filesBeside(path),
    onProgress: ({ stage, share }) => progress.update(stage, share),
  }).finally(() => progress.stop());
  sayWarnings(io, report.warnings);
  return { mesh, settings };
}

const COLUMNS: readonly Column[] = [
  { head: "" },
  { head: "stance" },
  { head: "tilt", align: "right" },
  { head: "box", align: "right" },
  { head: "height", align: "right" },
  { head: "layers", align: "right" },
  { head: "steep mm²", align: "right" },
  { head: "share", align: "right" },
  { head: "places", align: "right" },
  { head: "on the plate mm²", align: "right" },
];

function printTable(figures: readonly PrintFigures[], io: Io): void {
  const [{ layer, undersides }] = figures;
  print(
    io,
    [
      showTable(COLUMNS, figures.map(row)),
      "",
      `Layers of ${fixed(layer)} mm. Steep: undersides that lean more than ${undersides.support}° from the upright, without what lies on the plate.`,
      "Uncured resin sensitises skin, burnout gives off fumes: annulet cautions",
    ].join("\n"),
  );
}

function row({ stance, tilt, box, height, layers, undersides }: PrintFigures, i: number): string[] {
  const { area, share, count, resting } = undersides;
  return [
    ...[i === 0 ? "*" : "", stance, tilt === null ? NOTHING : `${tilt}°`],
    ...[box.map((length) => fixed(length, 2)).join(" × "), fixed(height), String(layers)],
    ...[fixed(area, 1), `${fixed(100 * share, 1)} %`, String(count), fixed(resting, 1)],
  ];
}
