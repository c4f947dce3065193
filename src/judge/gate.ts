/**
 * The gate: whether a mesh bounds a solid, in double precision and again as a single-precision file holds it.
 */
import { AnnuletError } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import { type OptionRules, requireOptions, wholeFrom } from "../base/options.js";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import { roundToFloat32 } from "../mesh/float32.js";
import type { Mesh } from "../mesh/mesh.js";
import { requireTriples } from "../mesh/sound.js";
import { type Turned, turnedImages } from "../mesh/turned.js";
import { checkForm, type FormCheck } from "./check-form.js";
import type { Fault } from "./faults.js";
import { readTopology } from "./topology.js";
import { checkTurnedForms } from "./turned-form.js";

/** What the gate expects. */
export interface SolidOptions {
  /** How many shells the mesh should have, sealed voids among them. 1 or more, whole. Default 1. */
  readonly components?: number | undefined;
  /**
   * Of how many turned images of one unit the mesh is made, its numbers of vertices unit after unit: what holds of one unit
   * then holds of all. It is looked at, not trusted: a mesh that is not so is checked as any other. 1 or more, whole.
   * Default 1.
   */
  readonly units?: number | undefined;
}

/** The exact mesh's check, and the rounded one's beside it. */
export interface SolidCheck extends FormCheck {
  /** Whether neither form has a fault. */
  readonly closed: boolean;
  /** The same mesh with its points rounded to float32 and equal ones merged. */
  readonly float32: FormCheck;
}

const COUNT = wholeFrom(1, Number.POSITIVE_INFINITY);

const RULES: OptionRules<SolidOptions> = { components: COUNT, units: COUNT };

/**
 * Checks that a mesh is the surface of a solid: every directed edge occurs once and its reverse once; no triangle has
 * zero area or a repeated vertex; no vertex is pinched; the shells are as many as expected and face outward. All of it
 * is checked by index on the mesh as given, and again after rounding to float32 and merging equal points.
 *
 * A shell of negative volume inside the rest is a sealed void: it counts as a component (so it is a fault unless
 * `components` allows for it), in `voids`, and against the volume. A shell of negative volume that is not inside the
 * rest is inside-out. Shells or faces that cross each other are not looked for: `checkCrossings` does.
 *
 * @throws AnnuletError `mesh-malformed` when the arrays do not hold whole triples; as `requireOptions`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const { closed, faults } = checkSolid(mesh); // true, []
 */
export function checkSolid(mesh: Mesh, options: SolidOptions = {}): SolidCheck {
  return finish(checkingSolid(mesh, options));
}

/** The same in pieces. */
function* checkingSolid(mesh: Mesh, options: SolidOptions = {}): Pausing<SolidCheck> {
  requireOptions(options, RULES);
  const { components = 1, units = 1 } = options;
  requireTriples(mesh);
  return yield* checkingAlike(mesh, turnedImages(mesh, units), components);
}

/**
 * The same check of a mesh that has been looked at.
 *
 * @param turned its units; undefined where it has none: then, or where a unit alone does not tell, the whole is read
 */
export function* checkingAlike(mesh: Mesh, turned: Turned | undefined, components = 1): Pausing<SolidCheck> {
  const forms = components === 1 && turned !== undefined ? checkTurnedForms(turned) : undefined;
  if (forms !== undefined) return { ...forms.exact, closed: true, float32: forms.float32 };
  const topology = readTopology(mesh);
  yield BREATH;
  const exact = checkForm(mesh, components, topology);
  yield BREATH;
  const rounded = roundToFloat32(mesh);
  yield BREATH;
  // Where rounding makes no two points one, the indices stay what they were; what depends on lengths is looked at again.
  const float32 = checkForm(rounded, components, rounded.triangles === mesh.triangles ? topology : undefined);
  return { ...exact, closed: exact.closed && float32.closed, float32 };
}

/**
 * Hands the check back when the mesh is closed.
 *
 * @throws AnnuletError `not-closed` with every fault, its count and its places; those of `checkSolid`
 */
export function assertSolid(mesh: Mesh, options: SolidOptions = {}): SolidCheck {
  return requireClosed(checkSolid(mesh, options));
}

/**
 * Hands a check back when it found nothing wrong.
 *
 * @param regionsAt names of the regions at places. Default: none are known
 * @throws AnnuletError `not-closed` with every fault, its count, its places and the regions there
 */
export function requireClosed<Check extends SolidCheck>(
  check: Check,
  regionsAt: (places: readonly Point3[]) => readonly string[] = () => [],
): Check {
  if (check.closed) return check;
  const lines = [
    ...check.faults.map((fault) => describeFault(fault)),
    ...check.float32.faults.map((fault) => `rounded to float32: ${describeFault(fault)}`),
  ];
  const regions = regionsAt([...check.faults, ...check.float32.faults].flatMap(({ places }) => places));
  throw new AnnuletError({
    code: "not-closed",
    message: `the mesh is not the surface of a solid${atRegions(regions)}:\n${lines.map((line) => `  ${line}`).join("\n")}`,
    allowed: "every edge between two triangles, no triangle without area, every piece facing outward",
  });
}

/** Names of regions as the end of a sentence; nothing where there are none. */
export function atRegions(regions: readonly string[]): string {
  return regions.length === 0 ? "" : `, at ${regions.join(", ")}`;
}

/** One fault as a line: its code, what was found, and its places in mm. */
export function describeFault({ code, count, places, message }: Fault): string {
  if (places.length === 0) return `${code}: ${message}`;
  const more = count > places.length ? " …" : "";
  return `${code}: ${message}, at ${places.map(showPlace).join(" ")}${more}`;
}

function showPlace(place: Point3): string {
  return `(${place.map((value) => Number(value.toPrecision(6))).join(", ")})`;
}
