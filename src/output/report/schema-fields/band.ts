/**
 * What the report says of the band: its size, the fit of its pattern, its bead runs.
 */
import { z } from "zod";
import { mm } from "./numbers.js";

export const bandFields = {
  size: z
    .strictObject({
      circumference: mm("inner circumference"),
      diameter: mm("inner diameter"),
      system: z.string().optional().describe("name of the size system, where the size was a label"),
      label: z.string().optional().describe("the label as the system writes it, or as it was given between its steps"),
      span: z
        .tuple([z.number(), z.number()])
        .optional()
        .describe(
          "least and largest circumference that published charts have for the label, mm; only where they disagree",
        ),
    })
    .describe("the finger size"),
  band: z
    .strictObject({
      width: mm("width of the band as built, at the top of the ring"),
      thickness: mm("from the bore's narrowest circle to the outside's highest point, at the top; relief not counted"),
      overall: mm("from that circle to the highest point of all, relief and beads counted: measured on the solid"),
      taper: z
        .array(
          z.strictObject({
            angle: z.number().describe("degrees on the ring: the top is 90, the back 270"),
            width: mm("width there"),
            thickness: mm("thickness there"),
          }),
        )
        .optional()
        .describe("sizes at the back and at every other angle that the design names; only where the band tapers"),
    })
    .describe("the band as built: its width differs from the document's where the tile is held"),
};

const candidate = z.strictObject({
  repeats: z.int().describe("tiles round the band"),
  tileWidth: mm("width of a tile held at its aspect"),
  tileHeight: mm("height of that tile"),
  bandWidth: mm("width of the band that holds it at its aspect; missing where no such band can be built").optional(),
  stretch: z.number().describe("stretch of the tile across the band if its width is kept; 1 is none"),
});

const fitFields = {
  repeats: z.int().describe("tiles round the band"),
  rows: z.int().describe("rows of tiles across it"),
  cycle: z.int().describe("tiles after which the art comes again"),
  medallion: z.int().describe("tiles at the top whose place a medallion takes"),
  cover: z.number().describe("degrees of the band under the pattern"),
  aspect: z.number().describe("height of a tile over its width"),
  hold: z.enum(["tile", "band"]).describe("what is kept: the tile's aspect or the band's width"),
  tileWidth: mm("width of a tile"),
  tileHeight: mm("height of a tile"),
  bandWidth: mm("width of the band"),
  referenceRadius: mm("radius at which the tile is true"),
  stretch: z.number().describe("height of a tile over what its aspect asks for"),
  aspectError: z.number().describe("stretch − 1"),
  candidates: z.array(candidate).describe("neighbouring numbers of repeats, best first"),
};

const laneFit = z.strictObject({
  ...fitFields,
  name: z.string().describe("name of the lane"),
  v: mm("the lane's middle line, from the middle of the seat"),
  height: mm("height of the lane"),
});

const stretchRange = z.strictObject({ min: z.number().describe("least"), max: z.number().describe("largest") });

export const fit = z.strictObject({
  ...fitFields,
  lanes: z.array(laneFit).describe("each lane's own fit, the lowest first; empty where the pattern has none"),
  lambda: z
    .strictObject({
      seat: stretchRange.describe("on the seat"),
      top: stretchRange.describe("at the relief's top"),
      edge: stretchRange.describe("at the seat's two edges"),
      crown: z.number().describe("on the seat's middle line"),
      topCrown: z.number().describe("at the relief's top over it"),
      across: stretchRange.optional().describe("across the band on the seat; only where the band tapers, else it is 1"),
    })
    .describe("stretch of the wrapped art along the band; 1 is true"),
});

const ratios = {
  ratio: z.number().describe("spacing over the local diameter, mean"),
  ratioMin: z.number().describe("least ratio"),
  ratioMax: z.number().describe("largest ratio"),
};

export const beadRun = z.strictObject({
  run: z.string().describe("the region's name, or what the run follows"),
  path: z.string().describe("where it stands in the document"),
  count: z.int().describe("beads on the ring, those met from another run not counted again"),
  diameter: mm("diameter; of a graduated or alternating run the first"),
  diameterMin: mm("smallest diameter that the run may have"),
  diameterMax: mm("largest diameter"),
  spacing: mm("mean arc length between neighbours"),
  spacingMin: mm("least of it over the run's legs"),
  spacingMax: mm("largest of it"),
  ...ratios,
  choices: z
    .array(
      z.strictObject({
        count: z.int().describe("beads on the ring"),
        spacing: mm("mean arc length between neighbours"),
        ...ratios,
        made: z.boolean().describe("whether it is the one that is made"),
      }),
    )
    .describe("with a step fewer beads in each leg, as made, and with a step more"),
  onRail: z.boolean().describe("whether the beads stand on the rails or in a step rather than on the relief"),
  span: z
    .tuple([z.number(), z.number()])
    .optional()
    .describe("degrees from +x of its first and last bead; only of a run that stops with the pattern"),
});
