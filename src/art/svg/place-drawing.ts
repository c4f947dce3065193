/**
 * Where a drawing stands in its tile: the map from the file's page to millimetres.
 */
import { type Affine, compose, rotation, scaling, translation } from "../../base/math/affine.js";
import { MM_PER_INCH, radians } from "../../base/units.js";
import { type AnchorName, PLACE_DEFAULTS, type PlaceSpec } from "../../design/art/art-place.js";
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
} as const satisfies Readonly<Record<AnchorName, readonly [number, number]>>;

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
