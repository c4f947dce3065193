/**
 * Where a drawing stands in its tile: the schema of `place`, and the map from the file's page to millimetres.
 */
import { z } from "zod";
import { type Affine, compose, rotation, scaling, translation } from "../../base/math/affine.js";
import { MM_PER_INCH, radians } from "../../base/units.js";
import { PX_PER_INCH } from "./length.js";
import type { Box } from "./viewport.js";

/** Anchors → share of the box's width from its left and of its height from its top. */
const ANCHORS = {
  centre: [0.5, 0.5],
  left: [0, 0.5],
  right: [1, 0.5],
  top: [0.5, 0],
  bottom: [0.5, 1],
  "top-left": [0, 0],
  "top-right": [1, 0],
  "bottom-left": [0, 1],
  "bottom-right": [1, 1],
} as const;

export const PLACE_DEFAULTS = { by: "page", anchor: "centre", scale: 1, turn: 0, mirror: false } as const;

const anchorNames = Object.keys(ANCHORS) as [keyof typeof ANCHORS, ...(keyof typeof ANCHORS)[]];
const side = z.number().positive().max(1000);
const coordinate = z.number().min(-1000).max(1000);

export const placeSchema = z
  .strictObject({
    by: z
      .enum(["page", "art"])
      .default(PLACE_DEFAULTS.by)
      .describe(
        "what is placed: page (the file's width, height and viewBox, with the margins drawn) or art (the box round what is painted); a file without page goes by its art; default page",
      ),
    fit: z
      .union([z.tuple([side, side]), z.literal("drawn")])
      .optional()
      .describe(
        "width and height, in the region's unit, of the box that the drawing fills as far as its proportions allow, or drawn (the file's own size in mm, px being 1/96 inch); default the whole tile",
      ),
    anchor: z
      .enum(anchorNames)
      .default(PLACE_DEFAULTS.anchor)
      .describe("point of the drawing that stands at `at`: centre, left, top-right …; default centre"),
    scale: z
      .number()
      .min(0.001)
      .max(1000)
      .default(PLACE_DEFAULTS.scale)
      .describe("factor on the fitted size, 0.001 to 1000; default 1"),
    at: z
      .tuple([coordinate, coordinate])
      .optional()
      .describe("where the anchor stands, x and y in the region's unit; default the middle of the tile"),
    turn: z
      .number()
      .min(-360)
      .max(360)
      .default(PLACE_DEFAULTS.turn)
      .describe("degrees counter-clockwise about the anchor, after fitting, -360 to 360; default 0"),
    mirror: z
      .boolean()
      .default(PLACE_DEFAULTS.mirror)
      .describe("whether left and right are swapped, before turning; default false"),
  })
  .describe("where the drawing stands in the tile; default filling it, centred");

export type PlaceSpec = z.infer<typeof placeSchema>;

/** The tile that a drawing is placed in. */
export interface PlaceTile {
  /** Unit of `fit` and `at`. */
  readonly unit: "tile" | "mm";
  /** Width and height of the tile, mm. */
  readonly width: number;
  readonly height: number;
  /** Height over width as the art sees it. */
  readonly aspect: number;
}

/** The map from the page, px and y down, to the tile, mm and y up. `box` is what is placed, px. */
export function placeDrawing(spec: Partial<PlaceSpec> | undefined, box: Box, tile: PlaceTile): Affine {
  const { fit, anchor, scale, at, turn, mirror } = { ...PLACE_DEFAULTS, ...spec };
  // Where tiles are stretched across the band, what is drawn in tile units is stretched with them.
  const inTiles = tile.unit === "tile";
  const [unitX, unitY] = inTiles ? [tile.width, tile.height / tile.aspect] : [1, 1];
  const whole: readonly [number, number] = inTiles ? [1, tile.aspect] : [tile.width, tile.height];
  const [x, y] = at ?? [whole[0] / 2, 0];
  const [ax, ay] = ANCHORS[anchor];
  const back = translation(-box.x - ax * box.width, -box.y - ay * box.height);
  const mirrored = mirror ? -1 : 1;
  const stand = (size: number) => compose(rotation(radians(turn)), scaling(mirrored * size, -size), back);
  if (fit === "drawn") {
    return compose(translation(x * unitX, y * unitY), stand((scale * MM_PER_INCH) / PX_PER_INCH));
  }
  const [width, height] = fit ?? whole;
  return compose(
    scaling(unitX, unitY),
    translation(x, y),
    stand(scale * Math.min(width / box.width, height / box.height)),
  );
}
