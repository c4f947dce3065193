/**
 * annulet picture: a ring as a customer sees it.
 */

import {
  AnnuletError,
  encodePng,
  type LookAt,
  openRing,
  openStudio,
  type PictureOptions,
  type Problem,
  readDesign,
  turntable,
  type View,
  type ViewName,
  views,
} from "../../index.js";
import { facing, findAlloy, lookOf, materialsOf, PICTURE_DEFAULTS, readableEndings } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, loadDesign } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import type { Io } from "../io.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { keepFilesOf, sourceOf } from "../open-design.js";
import { writeOutputs } from "../output-files.js";
import { isMeshFile, readMeshFile } from "../read-mesh-file.js";
import { startProgress } from "../show-progress.js";
import { checkTargets, STDOUT, type Target } from "../targets.js";
import { printWritten, tellWritten } from "../tell-written.js";
import { usage } from "../usage.js";
import { sayWarnings } from "../warnings.js";

interface Options extends LimitOptions, DesignOptions {
  readonly json?: boolean;
  readonly output?: string;
  readonly view?: ViewName;
  readonly stance?: View["stance"];
  readonly azimuth?: number;
  readonly elevation?: number;
  readonly lookAt?: number;
  readonly inside?: boolean;
  readonly zoom?: number;
  readonly pixels?: string;
  readonly material?: string;
  readonly finish?: PictureOptions["finish"];
  readonly ground?: PictureOptions["ground"];
  readonly exposure?: number;
  readonly samples?: number;
  readonly backs?: boolean;
  readonly frames?: number;
  readonly tolerance?: number;
}

/** Most frames of one turn. */
const MOST_FRAMES = 720;

export const pictureCommand: Command<Options> = {
  name: "picture",
  each: true,
  details: [
    "Azimuth turns the camera about the upright axis: standing, 0 looks along the finger's axis and 90 across the band.",
    "--look-at faces the place from the outside, a little from above; --azimuth and --elevation look at it from elsewhere.",
    "With --frames the table makes one turn; frames are numbered before the ending: ring-01.png, ring-02.png …",
    "A mesh file has no material: it is shown in ag925 unless --material says otherwise.",
  ],
  examples: [
    { line: "annulet picture ring.json -o ring.png", does: "three-quarter view in the design's alloy" },
    {
      line: "annulet picture ring.stl -o ring.png --view lying --material au750-yellow",
      does: "any mesh, lying, in gold",
    },
    {
      line: "annulet picture ring.json -o cut-out.png --ground clear",
      does: "without a ground, for a page of your own",
    },
    {
      line: "annulet picture ring.json -o letters.png --look-at 270 --inside --zoom 2",
      does: "what stands in the bore at the back",
    },
    { line: "annulet picture ring.json -o turn.png --frames 36 --pixels 800x600", does: "a turn of the table" },
  ],
  args: [
    { name: "<file...>", description: `${DESIGN_ARGUMENT.description}; or a mesh file, ${readableEndings.join(", ")}` },
  ],
  options: [
    { flags: "-o, --output <file>", description: "picture to write, .png" },
    {
      flags: "-v, --view <name>",
      description: `where to look from (default: ${PICTURE_DEFAULTS.view})`,
      choices: Object.keys(views),
    },
    {
      flags: "--stance <stance>",
      description: "how the ring stands, instead of the view's",
      choices: ["standing", "lying"],
    },
    { flags: "--azimuth <degrees>", description: "about the upright axis, instead of the view's", number: true },
    { flags: "--elevation <degrees>", description: "over the ground, instead of the view's", number: true },
    {
      flags: "--look-at <degrees>",
      description: "the place round the ring that is in the middle: 90 is its top, 270 its back",
      number: true,
    },
    { flags: "--inside", description: "look at the bore there, from within the ring (default place: its top)" },
    { flags: "--zoom <factor>", description: "enlargement of what is in the middle (default: 1)", number: true },
    {
      flags: "--pixels <size>",
      description: `width x height (default: ${PICTURE_DEFAULTS.width}x${PICTURE_DEFAULTS.height})`,
    },
    { flags: "-m, --material <symbol>", description: "the alloy to show it in (default: the design's)" },
    {
      flags: "--finish <finish>",
      description: `surface of metal (default: ${PICTURE_DEFAULTS.finish})`,
      choices: ["polished", "satin"],
    },
    {
      flags: "--ground <ground>",
      description: `what lies under it (default: ${PICTURE_DEFAULTS.ground})`,
      choices: ["shadow", "plain", "clear"],
    },
    { flags: "--exposure <factor>", description: "lighter above 1, darker below", number: true },
    {
      flags: "--samples <count>",
      description: `samples along each side of a pixel, 1 to 4 (default: ${PICTURE_DEFAULTS.supersample})`,
      number: true,
    },
    { flags: "--backs", description: "paint magenta what is seen from behind, as through a hole" },
    { flags: "--frames <count>", description: "pictures of one turn of the table", number: true },
    {
      flags: "--tolerance <mm>",
      description: "build the design this fine for the picture: polish shows facets (default: the design's)",
      number: true,
    },
    ...DESIGN_OPTIONS,
    ...LIMIT_OPTIONS,
    { ...JSON_OPTION, description: "print what was written as JSON" },
  ],
  async run({ args: [path], options }, io) {
    const { output, size } = checkUsage(path, options);
    const names = frameNames(output, options.frames ?? 1);
    const targets = await checkTargets(names, sourceOf(path, io), io.data);
    const { shoot, look } = await loadMesh(path, options, targets, io);
    const wanted: PictureOptions = {
      ...size,
      zoom: options.zoom,
      material: look,
      finish: options.finish,
      ground: options.ground,
      exposure: options.exposure,
      supersample: options.samples,
      backs: options.backs === true ? "magenta" : "hidden",
    };
    const frames = framesOf(options, names.length);
    const written = await writeOutputs(
      targets.map((target, i) => ({
        target,
        chunks: () => [encodePng(shoot({ ...wanted, ...frames[i] }))],
      })),
    );
    if (options.json) printWritten(io, written);
    else tellWritten(io, written);
    return EXIT.done;
  },
};

/** The output's name and the picture's size; everything that is wrong is said at once. */
function checkUsage(path: string, { output, pixels, frames, tolerance }: Options) {
  const problems: Problem[] = [];
  if (output === undefined) {
    problems.push({ ...usage("Nothing is asked for."), hint: "name an output: -o ring.png" });
  } else if (output !== STDOUT && !output.toLowerCase().endsWith(".png")) {
    const allowed = "a file that ends in .png, or - for standard output";
    problems.push({ ...usage("A picture is PNG."), value: output, allowed });
  }
  const sides = pixels === undefined ? undefined : /^(\d+)\s*[x×]\s*(\d+)$/i.exec(pixels);
  if (sides === null) {
    problems.push({ ...usage("--pixels is width x height."), value: pixels, allowed: "two whole numbers: 1600x1200" });
  }
  if (frames !== undefined && !(Number.isInteger(frames) && frames >= 1 && frames <= MOST_FRAMES)) {
    problems.push({ ...usage("--frames is a number of pictures."), value: frames, allowed: `1 to ${MOST_FRAMES}` });
  }
  if (tolerance !== undefined && isMeshFile(path)) {
    problems.push(usage("--tolerance says how fine a design is built; a mesh file is as fine as it is."));
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  const [width, height] = (sides ?? []).slice(1).map(Number);
  return { output: output as string, size: { width, height } };
}

/** The output's name, or one for each frame, numbered before the ending. */
function frameNames(output: string, frames: number): readonly string[] {
  if (frames === 1) return [output];
  const digits = String(frames).length;
  return Array.from({ length: frames }, (_, i) =>
    output.replace(/(?=\.png$)/i, `-${String(i + 1).padStart(digits, "0")}`),
  );
}

/** Where each frame is taken from: the table turns, or what is looked at goes round the ring. */
function framesOf(options: Options, count: number): readonly Pick<PictureOptions, "view" | "lookAt">[] {
  const { lookAt, inside, stance, azimuth, elevation } = options;
  if (lookAt === undefined && inside !== true) return turntable(viewOf(options), count).map((view) => ({ view }));
  return Array.from({ length: count }, (_, i) => {
    const place: LookAt = { angle: (lookAt ?? TOP) - (360 * i) / count, from: inside === true ? "inside" : "outside" };
    const from = options.view === undefined ? facing(place) : views[options.view];
    const view = {
      stance: stance ?? from.stance,
      azimuth: azimuth ?? from.azimuth,
      elevation: elevation ?? from.elevation,
    };
    return { view, lookAt: place };
  });
}

/** The top of the ring, degrees. */
const TOP = 90;

function viewOf({ view = PICTURE_DEFAULTS.view, stance, azimuth, elevation }: Options): View {
  const named = views[view];
  return {
    stance: stance ?? named.stance,
    azimuth: azimuth ?? named.azimuth,
    elevation: elevation ?? named.elevation,
  };
}

/** What takes pictures of a file's mesh or of the finished piece of a design, and how its material looks. */
async function loadMesh(path: string, options: Options, targets: readonly Target[], io: Io) {
  const { tolerance, material } = options;
  if (isMeshFile(path)) {
    const own = material === undefined ? undefined : lookOf(findAlloy(material));
    return { shoot: openStudio(await readMeshFile(path)), look: own };
  }
  const document = await loadDesign(path, io, options);
  keepFilesOf(document, path, targets);
  const design = readDesign(document);
  const look = lookOf(findAlloy(material ?? design.material, { alloys: materialsOf(design) }));
  const progress = startProgress(io, false);
  try {
    const setup = { files: filesBeside(path), limits: limitsOf(options) };
    const ring = openRing(tolerance === undefined ? design : { ...design, tolerance }, setup);
    const shoot = await ring.studio({ onProgress: ({ stage, share }) => progress.update(stage, share) });
    const warnings = await ring.warnings();
    progress.stop();
    sayWarnings(io, warnings);
    return { shoot, look };
  } finally {
    progress.stop();
  }
}
