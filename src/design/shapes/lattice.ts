/**
 * Copies in rows and columns of cells that divide the tile: straight, half-drop or brick, as textile repeats name them.
 *
 * The lattice is endless; the tile shows its part. What leaves the tile at its right goes on in the next tile, and what
 * leaves it at the top comes in again from below.
 */
import { z } from "zod";
import type { Point2 } from "../../base/math/point.js";
import { ofField, pointField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

/** The cells and what is set in them. */
export interface LatticeSpec {
  /** Cells along the tile, 1 to 60. */
  readonly columns: number;
  /** Cells across the tile, 1 to 60. */
  readonly rows: number;
  /** Default straight. */
  readonly set?: "straight" | "half-drop" | "brick" | undefined;
  /** The point that comes to each cell's middle. Default: the tile's middle. */
  readonly middle?: Point2 | undefined;
  /** Factor on the drawing, about that point. Default 1. */
  readonly scale?: number | undefined;
}

export const LATTICE_DEFAULTS = { set: "straight", scale: 1 } as const;

/** Most rows and columns. Chosen: cells of a tenth of a millimetre. */
const MOST = 60;

export interface LatticeShape<Inner> {
  /** The cells in which copies stand. */
  readonly lattice: LatticeSpec;
  /** The shape that is copied. */
  readonly of: Inner;
}

export const latticeKind = {
  key: "lattice",
  fields: (shape: z.ZodType) => ({
    lattice: z
      .strictObject({
        columns: z.int().min(1).max(MOST).describe(`cells along the tile, 1 to ${MOST}; even for half-drop`),
        rows: z
          .int()
          .min(1)
          .max(MOST)
          .describe(`cells across the tile, 1 to ${MOST}; even for brick in several rows of tiles`),
        set: z
          .enum(["straight", "half-drop", "brick"])
          .optional()
          .describe("half-drop: second columns half a cell lower; brick: second rows half along; default straight"),
        middle: pointField
          .optional()
          .describe("point set in each cell's middle, region's unit; default the tile's middle"),
        scale: z.number().min(0.01).max(10).optional().describe("factor on it, 0.01 to 10; default 1"),
      })
      .describe("copies in the tile's cells, going on into its neighbours"),
    of: ofField(shape),
  }),
} as const satisfies ShapeKind;
