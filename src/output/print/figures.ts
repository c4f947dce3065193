/**
 * What a printer asks of a mesh: how large it is, how many layers, how much of it hangs over.
 */
import type { Point3 } from "../../base/math/point.js";
import type { PrintSettings, PrintStance } from "../../design/print-settings.js";
import { type Bounds, meshBounds } from "../../mesh/bounds.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Turned } from "../../mesh/turned.js";
import { tiltOf } from "./lay-down.js";
import { findTurnedUndersides } from "./turned-undersides.js";
import { findUndersides, type UndersidePlace } from "./undersides.js";

/** How a mesh lies in the printer. */
export interface PrintFigures {
  readonly stance: PrintStance;
  /** Degrees from lying; null where the mesh was left as it was built. */
  readonly tilt: number | null;
  /** The box round the mesh as it is written, mm, and its lengths along x, y and z. */
  readonly bounds: Bounds;
  readonly box: Point3;
  /** Along z, mm. */
  readonly height: number;
  /** Thickness of a layer, mm, and how many there are: height over thickness, rounded up. */
  readonly layer: number;
  readonly layers: number;
  readonly undersides: UndersideFigures;
}

/** Steep undersides in figures. */
export interface UndersideFigures {
  /** Degrees from the upright beyond which an underside counts as steep. */
  readonly support: number;
  /** mm² of steep undersides, and their share of the whole surface, 0 to 1. */
  readonly area: number;
  readonly share: number;
  /** mm² of what lies level on the plate; not counted above. */
  readonly resting: number;
  /** Number of places that hang over, and the largest few of them. */
  readonly count: number;
  readonly largest: readonly UndersidePlace[];
}

/** Places that the figures list. */
const LISTED = 5;

/** Share of a layer that is rounding of a float32 mesh, not one layer more. */
const LAYER_SLACK = 1e-3;

/**
 * @param mesh as it is printed, turned already
 * @param turned its units, where it was seen to be made of such. Default: it is read whole
 */
export function printFigures(mesh: Mesh, settings: PrintSettings, turned?: Turned): PrintFigures {
  const { stance, layer, support } = settings;
  const bounds = meshBounds(mesh);
  const [x, y, z] = bounds.max.map((most, k) => most - bounds.min[k]);
  const { area, share, resting, places } =
    turned === undefined ? findUndersides(mesh, { support }) : findTurnedUndersides(turned, support);
  return {
    stance,
    tilt: tiltOf(settings) ?? null,
    bounds,
    box: [x, y, z],
    height: z,
    layer,
    layers: Math.ceil(z / layer - LAYER_SLACK),
    undersides: { support, area, share, resting, count: places.length, largest: places.slice(0, LISTED) },
  };
}
