/**
 * The gate's dearest question, asked where it can be afforded: whether the surface crosses itself.
 */
import { type Crossings, type CrossingsOptions, findCrossings } from "../mesh/crossings.js";
import type { Mesh } from "../mesh/mesh.js";
import { countOf, type Fault } from "./faults.js";
import { checkSolid, type SolidCheck, type SolidOptions } from "./gate.js";

/**
 * Triangles that cross deeper than this are a fault, mm; chosen: a tenth of the default tolerance. Shallower are what rounding
 * to single precision, 1 to 2 nm on a ring, leaves of faces that nearly lie in each other.
 */
const DEEPEST_CROSSING = 1e-3;

/** A check with what was found of crossings. */
export interface CrossingCheck extends SolidCheck {
  /** Undefined where the mesh is not closed: then it was not looked for them. */
  readonly crossings: Crossings | undefined;
}

/** Who stops it, and who hears of it. */
export interface CrossingCheckOptions {
  readonly signal?: AbortSignal | undefined;
  /** Is called once the gate is passed and the search begins, so that progress can be told. */
  readonly step?: (() => void) | undefined;
}

/**
 * Checks that a mesh is the surface of a solid, and that it nowhere crosses itself deeper than 1 µm.
 *
 * @throws AnnuletError as `checkSolid`; the signal's reason
 */
export async function checkCrossings(
  mesh: Mesh,
  { signal, step, ...options }: SolidOptions & CrossingCheckOptions = {},
): Promise<CrossingCheck> {
  return withCrossings(mesh, checkSolid(mesh, options), { units: options.units, signal, step });
}

/**
 * A check of a mesh, with what is found of crossings besides.
 *
 * @throws the signal's reason
 */
export async function withCrossings<Check extends SolidCheck>(
  mesh: Mesh,
  check: Check,
  { step, ...options }: CrossingsOptions & Pick<CrossingCheckOptions, "step">,
): Promise<Check & CrossingCheck> {
  if (!check.closed) return { ...check, crossings: undefined };
  step?.();
  const crossings = await findCrossings(mesh, options);
  if (!(crossings.deepest > DEEPEST_CROSSING)) return { ...check, crossings };
  return { ...check, closed: false, faults: [...check.faults, crossingFault(crossings)], crossings };
}

function crossingFault({ count, deepest, places }: Crossings): Fault {
  const pairs = countOf(count, "pair of triangles crosses", "pairs of triangles cross");
  return { code: "crossing", count, places, message: `${pairs}, by up to ${deepest.toPrecision(2)} mm` };
}
