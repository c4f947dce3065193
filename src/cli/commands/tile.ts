/**
 * annulet tile: the flat tile of a design as a drawing, or the chart of frieze groups.
 */

import { AnnuletError, drawTile, flatTile, type Problem, type TilePart } from "../../index.js";
import { drawFriezeGroups } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { DESIGN_ARGUMENT, type DesignDocument } from "../design-file.js";
import { filesBeside } from "../design-folder.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { EXIT } from "../exit.js";
import type { Io } from "../io.js";
import { FLAT_LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { openDesign } from "../open-design.js";
import { checkTargets } from "../targets.js";
import { printWritten, tellWritten } from "../tell-written.js";
import { notSvg, usage } from "../usage.js";
import { sayWarnings } from "../warnings.js";
import { writeSvg } from "../write-svg.js";

interface TileOptions extends LimitOptions, DesignOptions {
  readonly json?: boolean;
  readonly output?: string;
  readonly repeats?: number;
  readonly part?: string;
  readonly lane?: string;
  readonly asWorn?: boolean;
  readonly scale?: number;
  readonly groups?: boolean;
}

export const tileCommand: Command<TileOptions> = {
  name: "tile",
  each: true,
  details: [
    "The drawing is SVG whose unit is a millimetre; print it at 100 % and check it by its scale bar.",
    "With --as-worn the tile is drawn as it measures at the relief's top: rows of a crowned band differ in length.",
  ],
  examples: [
    { line: "annulet tile ring.json -o tile.svg", does: "one tile" },
    { line: "annulet tile ring.json -o tiles.svg --repeats 3", does: "three tiles side by side" },
    { line: "annulet tile ring.json -o worn.svg --as-worn", does: "as it measures on the finished ring" },
    { line: "annulet tile ring.json -o top.svg --part medallion", does: "the medallion, or the ornament at the ends" },
    { line: "annulet tile --groups -o groups.svg", does: "the seven frieze groups" },
  ],
  args: [{ ...DESIGN_ARGUMENT, name: "[design...]" }],
  options: [
    { flags: "-o, --output <file>", description: "drawing to write, .svg" },
    { flags: "-n, --repeats <count>", description: "tiles side by side (default: one cycle of tiles)", number: true },
    { flags: "-p, --part <part>", description: "tile, medallion or ornament (default: tile)" },
    { flags: "-l, --lane <name>", description: "the lane to draw, by its name (default: the lowest)" },
    { flags: "--as-worn", description: "draw the tile as it measures on the finished surface" },
    { flags: "--scale <factor>", description: "enlargement, 0.1 to 100 (default: 1, true size)", number: true },
    { flags: "--groups", description: "draw the chart of frieze groups; needs no design" },
    ...DESIGN_OPTIONS,
    ...FLAT_LIMIT_OPTIONS,
    { ...JSON_OPTION, description: "print what was written as JSON" },
  ],
  async run({ args: [path], options }, io) {
    const output = checkUsage(path, options);
    const tell = options.json ? printWritten : tellWritten;
    if (path === undefined) {
      const [target] = await checkTargets([output], undefined, io.data);
      tell(io, await writeSvg(target, drawFriezeGroups()));
      return EXIT.done;
    }
    const { document, targets } = await openDesign(path, [output], io, options);
    tell(io, await writeSvg(targets[0], await drawDesign(document, path, options, io)));
    return EXIT.done;
  },
};

/** The output's name, where all goes together; everything that does not is said at once. */
function checkUsage(path: string | undefined, options: TileOptions): string {
  const { output, repeats, part, lane, asWorn, scale, groups } = options;
  const problems: Problem[] = [];
  if (groups === true && path !== undefined) problems.push(usage("--groups draws the chart alone, without a design."));
  if (
    groups === true &&
    (repeats !== undefined || part !== undefined || lane !== undefined || asWorn || scale !== undefined)
  ) {
    problems.push(
      usage("--repeats, --part, --lane, --as-worn and --scale are for a design's tile, not for the chart."),
    );
  }
  if (groups !== true && path === undefined) {
    problems.push({ ...usage("There is no design to draw."), hint: "name one, or ask for the chart with --groups" });
  }
  if (repeats !== undefined && !(Number.isInteger(repeats) && repeats >= 1)) {
    problems.push({ ...usage("--repeats is a number of tiles."), value: repeats, allowed: "a whole number from 1" });
  }
  if (part !== undefined && !isPart(part)) {
    problems.push({ ...usage("There is no such part."), value: part, allowed: PARTS.join(", ") });
  }
  if (output === undefined) {
    problems.push({ ...usage("Nothing is asked for."), hint: "name an output: -o tile.svg" });
  } else problems.push(...notSvg(output, "The drawing"));
  if (problems.length > 0) throw new AnnuletError(problems);
  return output as string;
}

const PARTS: readonly TilePart[] = ["tile", "medallion", "ornament"];

function isPart(part: string): part is TilePart {
  return PARTS.some((name) => name === part);
}

async function drawDesign(document: DesignDocument, path: string, options: TileOptions, io: Io): Promise<string> {
  const { repeats, part, lane, asWorn, scale } = options;
  const tile = await flatTile(document, {
    tiles: repeats,
    lane,
    part: part !== undefined && isPart(part) ? part : undefined,
    files: filesBeside(path),
    limits: limitsOf(options),
  });
  sayWarnings(io, tile.warnings);
  return drawTile(tile, { asWorn, scale });
}
