/**
 * What the report says of the piece: allowances, weights, how it is printed, its sprue.
 */
import { z } from "zod";
import { PRINT_STANCES } from "../../../design/print-settings.js";
import { mm, point, range } from "./numbers.js";

const grams = (what: string) => z.number().describe(`${what}, g`);

const column = z.strictObject({
  bore: mm("narrowest diameter of the bore"),
  width: mm("width of the band"),
  thickness: mm("from the bore's narrowest circle to the outside's highest point, relief not counted"),
  wall: mm("least metal between the bore and the seat, nothing cut into it"),
  relief: mm("how high the relief stands above the seat, beads not counted; null where there is none").nullable(),
  volume: z.number().describe("mm³"),
  weight: grams("weight in its material"),
  material: z.string().describe("symbol of what it is weighed in"),
});

export const allowances = z.strictObject({
  any: z.boolean().describe("whether the master differs from the finished piece at all"),
  finished: column.describe("the finished piece"),
  cast: column.describe("the casting, before it is finished"),
  master: column.describe("the master that is printed"),
  scale: z
    .strictObject({ axial: z.number().describe("along the finger axis"), radial: z.number().describe("across it") })
    .describe("the master over the casting"),
  finishing: z
    .strictObject({
      bore: mm("off the bore"),
      rails: mm("off the rails' tops; of a band without a pattern, off its whole outside"),
      relief: mm("off the tops of what is raised"),
    })
    .describe("what finishing takes off"),
  notes: z.array(z.string()).describe("what is compensated and what is not, in whole sentences"),
});

const row = z.strictObject({
  symbol: z.string().describe("the material's symbol"),
  name: z.string().describe("its name"),
  kind: z
    .enum(["gold", "silver", "platinum", "palladium", "copper alloy", "pattern", "other"])
    .describe("what it is, by its main metal"),
  density: z.number().describe("g/cm³"),
  source: z.string().describe("where the density comes from"),
  certainty: z
    .enum(["standard", "one credible source", "weak", "computed", "memory", "own", "common practice"])
    .describe("how sure it is"),
  finished: grams("the finished piece"),
  finishedRange: z
    .tuple([z.number(), z.number()])
    .nullable()
    .describe("the same by the smallest and largest published density, g; null where no range is published"),
  cast: grams("the casting without its sprue"),
  finishingLoss: grams("what finishing takes off"),
  sprue: grams("the sprue"),
  melt: grams("into the crucible: casting, sprue and button"),
  byPattern: grams("the casting by the weight of the pattern and both densities"),
  price: z.number().nullable().describe("price of a gram; null where it is not given"),
  cost: z
    .strictObject({
      finished: z.number().describe("of the finished piece"),
      finishingLoss: z.number().describe("of what finishing takes"),
      melt: z.number().describe("of the whole melt"),
    })
    .nullable()
    .describe("cost in the currency; null where no price is given"),
});

const volume = z.number().describe("mm³");

export const weights = z.strictObject({
  rows: z.array(row).describe("one for each material"),
  sprue: z.number().describe("the sprue, % of the casting's weight"),
  button: grams("what is left in the crucible"),
  currency: z.string().nullable().describe("the prices' currency; null where none is given"),
  volumes: z
    .strictObject({ finished: volume, cast: volume, master: volume, pattern: volume })
    .describe("of the finished piece, the casting, the printed file and the cured pattern"),
  pattern: z
    .strictObject({
      symbol: z.string().describe("what the master is made of"),
      density: z.number().describe("g/cm³"),
      millilitres: z.number().describe("of the printed master, ml, without supports and base"),
      weight: grams("of the cured pattern: weigh it to check"),
      weightRange: z.tuple([z.number(), z.number()]).nullable().describe("the same by the published range, g"),
    })
    .describe("the pattern that the metal replaces"),
});

export const print = z.strictObject({
  stance: z.enum(PRINT_STANCES).describe("how the mesh is turned"),
  tilt: z.number().nullable().describe("degrees from lying; null where the mesh was left as it was built"),
  bounds: range.describe("the box round the mesh as it is written, mm"),
  box: point.describe("its lengths along x, y and z, mm"),
  height: mm("its length along z"),
  layer: mm("thickness of a layer"),
  layers: z.int().describe("number of layers"),
  undersides: z
    .strictObject({
      support: z.number().describe("degrees from the upright beyond which an underside counts as steep"),
      area: z.number().describe("steep undersides, mm²"),
      share: z.number().describe("their share of the whole surface, 0 to 1"),
      resting: z.number().describe("what lies level on the plate and is not counted above, mm²"),
      count: z.int().describe("places that hang over"),
      largest: z
        .array(
          z.strictObject({
            at: point.describe("middle of its area, mm"),
            area: z.number().describe("mm²"),
            height: mm("its lowest point over the lowest of the mesh"),
          }),
        )
        .describe("the largest few of them"),
    })
    .describe("what hangs over"),
});

export const sprue = z.strictObject({
  volume: z.number().describe("what it adds to the casting, outside the ring, mm³"),
  root: mm("from the finger's axis to where it stands on the band"),
  reach: mm("from the finger's axis to its end"),
  covers: mm("diameter of what it covers of the band, fillet included"),
  kernel: z.string().describe("name of the kernel that united it"),
  weight: grams("what it adds to the casting, outside the ring"),
  material: z.string().describe("symbol of the alloy that it is weighed in"),
});
