/**
 * annulet make: design → files.
 */
import { basename } from "node:path";
import {
  AnnuletError,
  type BuildResult,
  build,
  type Format,
  formatForFile,
  formats,
  type KernelName,
  type Mesh,
  openRing,
  type PieceTime,
  type PrintAsking,
  type PrintStance,
  type Problem,
  type Report,
  type RingStones,
} from "../../index.js";
import {
  BUILD_DEFAULTS,
  fileOptionsOf,
  KERNEL_NAMES,
  PRINT_DEFAULTS,
  PRINT_STANCES,
  packMesh,
  ringFacts,
  ringPage,
  withStones,
} from "../../toolbox/index.js";
import { describeAllowances } from "../allowances.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, type DesignDocument } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson, say } from "../io.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { openDesign } from "../open-design.js";
import { type Output, type WrittenFile, writeOutputs } from "../output-files.js";
import { plainJson } from "../plain-text.js";
import { startProgress } from "../show-progress.js";
import { describeRing } from "../summary.js";
import { STDOUT } from "../targets.js";
import { tellWritten } from "../tell-written.js";
import { usage } from "../usage.js";
import { sayWarnings } from "../warnings.js";
import { readOneRingPage } from "../workbench-page.js";

const PIECES: readonly PieceTime[] = ["master", "cast", "finished"];

/** A page of one ring, to send to who will wear it. */
const PAGE_ENDING = ".html";

const ENDINGS = [...new Set(formats.flatMap(({ extensions }) => extensions)), PAGE_ENDING];

/** What a mesh on standard output can be, by the endings of files. */
const STREAMED = ENDINGS.map((ending) => ending.slice(1));

/** Forms of STL, and the names of their formats. */
const STL_FORMATS = { binary: "stl-binary", ascii: "stl-ascii" } as const;

/** Which files have the design's stones in them. */
const STONES_IN = ["all", "none"] as const;
type StonesIn = (typeof STONES_IN)[number];

interface MakeOptions extends LimitOptions, DesignOptions {
  readonly output?: readonly string[];
  readonly report?: string;
  readonly stl?: keyof typeof STL_FORMATS;
  readonly stones?: StonesIn;
  readonly as?: string;
  readonly kernel?: KernelName;
  readonly maxBeads?: number;
  readonly piece?: string;
  readonly stance?: PrintStance;
  readonly tilt?: number;
  readonly decimate?: number;
  readonly draft?: boolean;
  readonly timings?: boolean;
  readonly json?: boolean;
  readonly quiet?: boolean;
}

/** A file asked for and the format of its bytes. */
interface MeshFile {
  readonly path: string;
  readonly format: Format | "page";
}

/** What was built, with the finished piece as it is built where a page shows it. */
interface Built extends BuildResult {
  readonly finished?: { readonly mesh: Mesh; readonly stones: RingStones };
}

export const makeCommand: Command<MakeOptions> = {
  name: "make",
  each: true,
  details: [
    "Files appear whole or not at all: a run that fails or is interrupted leaves what stood there.",
    "Warnings and progress go to standard error.",
  ],
  examples: [
    { line: "annulet make ring.json -o ring.stl", does: "for the printer" },
    { line: "annulet make ring.json -o ring.3mf -o ring.glb --report report.json", does: "several files at once" },
    { line: "annulet make - --json < ring.json", does: "only the report, from standard input" },
    { line: "annulet make ring.json --size uk:N -o - > n.stl", does: "another size, to standard output" },
    { line: "annulet make *.json -o meshes/{name}.stl", does: "several designs" },
    { line: "annulet make ring.json -o ring.html", does: "a page to send: the finished ring, to be turned" },
  ],
  args: [DESIGN_ARGUMENT],
  options: [
    {
      flags: "-o, --output <file>",
      description: `file to write: ${ENDINGS.join(", ")}; - is standard output; may be given several times`,
      repeated: true,
    },
    { flags: "-r, --report <file>", description: "write the report, .json" },
    {
      flags: "--as <ending>",
      description: `what goes to standard output (default: ${STREAMED[0]})`,
      choices: STREAMED,
    },
    { flags: "--stl <form>", description: "form of STL files (default: binary)", choices: Object.keys(STL_FORMATS) },
    {
      flags: "--stones <files>",
      description:
        "which files have the stones in them, as objects beside the metal: all, so STL, OBJ and a master's 3MF too, or none (default: GLB and other 3MF)",
      choices: STONES_IN,
    },
    {
      flags: "--kernel <name>",
      description: `what unites the solids (default: ${BUILD_DEFAULTS.kernel.name})`,
      choices: KERNEL_NAMES,
    },
    {
      flags: "--max-beads <count>",
      description: `most beads that are built (default: ${BUILD_DEFAULTS.maxBeads})`,
      number: true,
    },
    ...DESIGN_OPTIONS,
    ...LIMIT_OPTIONS,
    {
      flags: "--piece <which>",
      description: `which piece the mesh is: the master to print, with all casting allowances; the casting before it is finished; or the finished piece (default: ${BUILD_DEFAULTS.piece})`,
      choices: PIECES,
    },
    {
      flags: "--stance <stance>",
      description: `how the mesh is turned for the printer: lying, standing and tilted are set down on z = 0 (default: the design's, or ${PRINT_DEFAULTS.stance})`,
      choices: PRINT_STANCES,
    },
    {
      flags: "--tilt <degrees>",
      description: `of a tilted ring, from lying, 0, to standing, 90 (default: ${PRINT_DEFAULTS.tilt})`,
      number: true,
    },
    {
      flags: "--decimate <mm>",
      description: "fewer triangles: how far the surface may lie from what was built (default: 0, not at all)",
      number: true,
    },
    {
      flags: "--draft",
      description: "a coarser mesh of the same ring, closed too, in a fraction of the time: for looking at it",
    },
    {
      flags: "--timings",
      description: "milliseconds of each phase at the report's end; without them equal designs give equal reports",
    },
    { ...JSON_OPTION, description: "print the report as JSON instead of a summary" },
    { flags: "-q, --quiet", description: "no progress and no summary; warnings and errors stay" },
  ],
  async run({ args: [path], options }, io) {
    const meshFiles = chooseFormats(options);
    const paths = [...meshFiles.map((file) => file.path), ...(options.report === undefined ? [] : [options.report])];
    const page = meshFiles.some(({ format }) => format === "page") ? readOneRingPage() : undefined;
    const { document, targets } = await openDesign(path, paths, io, options);
    const result = await buildRing(document, path, { ...options, page: page !== undefined }, io);
    sayWarnings(io, result.report.warnings, "advice");
    const contents = makeContents(result, meshFiles, { ...options, page });
    const outputs: Output[] = targets.map((target, i) => ({ target, chunks: contents[i] }));
    const written = await writeOutputs(outputs);
    tell(result, written, options, io);
    return EXIT.done;
  },
};

/** The format of each output, by its ending; everything that is wrong with the names is said at once. */
function chooseFormats({ output = [], report, stl, as, json }: MakeOptions): readonly MeshFile[] {
  const problems: Problem[] = [];
  const files: MeshFile[] = [];
  for (const path of output) {
    try {
      const name = path === STDOUT ? `.${as ?? STREAMED[0]}` : path;
      if (name.toLowerCase().endsWith(PAGE_ENDING)) {
        files.push({ path, format: "page" });
        continue;
      }
      const choice = stl !== undefined && name.toLowerCase().endsWith(".stl") ? STL_FORMATS[stl] : undefined;
      files.push({ path, format: formatForFile(name, choice) });
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
      problems.push(...error.problems.map((problem) => ({ ...problem, allowed: ENDINGS.join(", ") })));
    }
  }
  if (report !== undefined && !report.toLowerCase().endsWith(".json")) {
    problems.push({ ...usage("The report is JSON."), value: report, allowed: "a file that ends in .json" });
  }
  if (stl !== undefined && !files.some(({ format }) => format !== "page" && format.extensions.includes(".stl"))) {
    problems.push(usage("--stl says how to write STL, but no output ends in .stl."));
  }
  if (as !== undefined && !output.includes(STDOUT)) {
    problems.push(usage("--as says what goes to standard output, but no output is -."));
  }
  if (output.length === 0 && report === undefined && json !== true) {
    problems.push({ ...usage("Nothing is asked for."), hint: "name an output: -o ring.stl" });
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  return files;
}

interface Building extends MakeOptions {
  /** Whether a page is made too. */
  readonly page: boolean;
}

async function buildRing(document: DesignDocument, path: string, options: Building, io: Io): Promise<Built> {
  const progress = startProgress(io, options.quiet === true);
  const setup = {
    kernel: options.kernel,
    maxBeads: options.maxBeads,
    limits: limitsOf(options),
    decimate: options.decimate,
    files: filesBeside(path),
  };
  const detail = options.draft ? "draft" : BUILD_DEFAULTS.detail;
  const asking: PrintAsking = {
    detail,
    print: { stance: options.stance, tilt: options.tilt },
    piece: PIECES.find((piece) => piece === options.piece),
    onProgress: ({ stage, share }) => progress.update(stage, share),
  };
  try {
    if (!options.page) return await build(document, { ...setup, ...asking });
    const ring = openRing(document, setup);
    const made = await ring.make(asking);
    return {
      ...made,
      finished: { mesh: await ring.solid({ detail, piece: "finished" }), stones: await ring.stones() },
    };
  } finally {
    progress.stop();
  }
}

/** What makes the bytes of each file, in the order of the targets: the meshes, then the report. */
function makeContents(
  result: Built,
  files: readonly MeshFile[],
  options: MakeOptions & { readonly page: string | undefined },
) {
  const contents: Output["chunks"][] = files.map(
    ({ format }) =>
      () =>
        format === "page" ? [pageOf(result, options.page ?? "")] : writeStones(result, format, options.stones),
  );
  if (options.report !== undefined) {
    contents.push((written) => [new TextEncoder().encode(`${plainJson(reportOf(result, written, options))}\n`)]);
  }
  return contents;
}

/** A mesh file, with the stones that are asked for. */
function writeStones(result: Built, format: Format, files: StonesIn | undefined) {
  const { mesh, stones } = result;
  const options = fileOptionsOf(result, format);
  if (files === "none") return format.write(mesh, { ...options, stones: [] });
  if (files !== "all") return format.write(mesh, options);
  return format.carriesStones === true
    ? format.write(mesh, { ...options, stones })
    : format.write(withStones(mesh, stones), options);
}

/** The finished piece on a page, whichever piece the meshes are and however they lie. */
function pageOf({ report, design, finished }: Built, page: string): Uint8Array {
  if (finished === undefined) throw new RangeError("a page needs the finished piece");
  const { grid, bytes } = packMesh(finished.mesh, design.tolerance);
  const facts = ringFacts(report, { material: design.material, grid, stones: finished.stones });
  return new TextEncoder().encode(ringPage(page, facts, bytes));
}

/** The report with the mesh files that it stands beside, so that others can be told from them. */
function reportOf(
  { report, timings }: BuildResult,
  written: readonly WrittenFile[],
  options: Pick<MakeOptions, "timings">,
): Report {
  const files = written.map(({ path, sha256 }) => ({ name: basename(path), sha256 }));
  return {
    ...report,
    ...(files.length === 0 ? {} : { files }),
    ...(options.timings === true ? { timings } : {}),
  };
}

function tell(result: BuildResult, written: readonly WrittenFile[], options: MakeOptions, io: Io): void {
  const { report } = result;
  if (options.json) {
    printJson(io, reportOf(result, written.slice(0, options.output?.length ?? 0), options));
    if (!options.quiet) tellWritten(io, written, say);
  } else if (!options.quiet) {
    print(io, describeRing(report, written));
    print(io, `\n${describeAllowances(report.allowances, report.weights)}`);
    print(io, "\nBefore you cast, wear or sell it: annulet cautions");
  }
}
