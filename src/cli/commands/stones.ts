/**
 * annulet stones: sizes and weights of stones, gems, and one stone in all terms or as a mesh.
 */
import { AnnuletError, formatForFile, formats } from "../../index.js";
import { CUT_NAMES, PROPORTION_NAMES, polyhedronMesh, stoneFacets, stoneOf } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit.js";
import { print, printJson, say } from "../io.js";
import { writeOutputs } from "../output-files.js";
import { orderFor } from "../stones/order-for.js";
import { readProportions } from "../stones/read-proportions.js";
import { readSize } from "../stones/read-size.js";
import { describeStone, printStone } from "../stones/show-stone.js";
import { printTables, stoneTables } from "../stones/show-tables.js";
import { checkTargets } from "../targets.js";
import { tellWritten } from "../tell-written.js";
import { usage } from "../usage.js";

interface StonesOptions {
  readonly cut?: (typeof CUT_NAMES)[number];
  readonly size?: string;
  readonly carat?: number;
  readonly gem?: string;
  readonly proportions?: string;
  readonly tolerance?: number;
  readonly spares?: number;
  readonly output?: readonly string[];
  readonly json?: boolean;
}

const ENDINGS = [...new Set(formats.flatMap((format) => format.extensions))].join(", ");

export const stonesCommand: Command<StonesOptions> = {
  name: "stones",
  details: [
    "Without --size or --carat, the sizes of the cut with their weights and depths are printed, and every gem.",
    "Weights are estimates by the trade's published formulas; sources stand beside each value in --json.",
    `Proportions are ${PROPORTION_NAMES.join(" or ")}, or shares of the width and angles in degrees: table, crownAngle or`,
    "crownHeight, girdle, pavilionAngle or pavilionDepth, culet, star, lowerHalf. What is left out is as usual.",
  ],
  examples: [
    { line: "annulet stones", does: "round diamonds from 0.8 to 8 mm, and all gems" },
    { line: "annulet stones --cut oval --size 6x4 --gem sapphire", does: "one stone: weight, depths, what it bears" },
    { line: "annulet stones ring.json -o stones.csv", does: "how rows come out, and what to order for a ring" },
    { line: "annulet stones --carat 0.5 -o stone.stl", does: "how large half a carat is, and its facets as a mesh" },
    { line: "annulet stones --size 3 --proportions table=0.6,crownAngle=33", does: "one that is cut otherwise" },
  ],
  args: [
    { name: "[design]", description: "design document, JSON: its stones, to order; without one, stones in general" },
  ],
  options: [
    { flags: "--cut <name>", description: "shape of the stone (default: round)", choices: CUT_NAMES },
    {
      flags: "--size <mm>",
      description: "across a round stone; length x width of a long one, x narrow end of a tapered one",
    },
    { flags: "--carat <ct>", description: "weight instead of a size", number: true },
    { flags: "--gem <symbol>", description: "what it is (default: diamond); annulet stones lists them" },
    { flags: "--proportions <p>", description: "how it is cut (default: usual)" },
    { flags: "--tolerance <mm>", description: "of the mesh's round outlines (default: 0.005)", number: true },
    { flags: "--spares <%>", description: "spares over what is set (default: 5)", number: true },
    {
      flags: "-o, --output <file>",
      description: `mesh of the stone, ${ENDINGS}; of a design its order, .csv`,
      repeated: true,
    },
    JSON_OPTION,
  ],
  async run({ args: [design], options }, io) {
    if (design !== undefined) return orderFor(design, options, io);
    if (options.spares !== undefined)
      throw new AnnuletError(usage("Spares are of a design's stones: name the design."));
    const { cut, gem, size, carat, output = [], tolerance, json } = options;
    const proportions = readProportions(options.proportions);
    if (size === undefined && carat === undefined) {
      if (output.length > 0 || tolerance !== undefined)
        throw new AnnuletError(usage("There is no stone to write: name --size or --carat."));
      const tables = stoneTables({ cut, gem, proportions });
      if (json) printJson(io, tables);
      else printTables(tables, io);
      return EXIT.done;
    }
    const chosen = output.map((path) => formatForFile(path));
    const targets = await checkTargets(output, undefined, io.data);
    const stone = stoneOf({ cut, gem, proportions, carats: carat, ...readSize(size) });
    const facets = stoneFacets(stone, tolerance);
    const mesh = polyhedronMesh(facets);
    const name = `${stone.cut} ${stone.gem}`;
    const written = await writeOutputs(
      targets.map((target, i) => ({ target, chunks: () => chosen[i].write(mesh, { name }) })),
    );
    const described = describeStone(stone, facets);
    if (json) printJson(io, described);
    else printStone(described, io);
    tellWritten(io, written, json ? say : print);
    return EXIT.done;
  },
};
