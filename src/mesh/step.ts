/**
 * What a solid is made of: a list of steps, worked in order. Each adds bodies to the solid as it is by then, or cuts them
 * out of it.
 */
import type { Sector } from "../base/math/round.js";
import type { Pausing } from "../base/pausing.js";
import type { Mesh } from "./mesh.js";

/** Bodies that are added, or cut out, at one time. */
export interface Step {
  /** What they are, in a word or two, for those who look at the list. */
  readonly name: string;
  readonly op: "add" | "cut";
  /**
   * All of them, or those that reach into a sector of the round, ended by flat faces somewhere beyond its ends. They may
   * touch and cross.
   */
  readonly bodies: (sector?: Sector) => readonly Mesh[];
  /** The same, made in pieces; they are then there when they are asked for. Default: they are made at once. */
  readonly making?: ((sector?: Sector) => Pausing<readonly Mesh[]>) | undefined;
  /** `unit`: they come again round the ring as the ring does. `place`: they stand where they stand, whatever comes again. */
  readonly scope: "unit" | "place";
  /** What these bodies keep clear of: it is taken from them before. Undefined where nothing is. */
  readonly keepClear: Mesh | undefined;
  /** Whether they are many and small: then those that do not touch are taken together, and a kernel unites a handful. */
  readonly small: boolean;
  /**
   * Whether they are united with each other before they meet the rest: less work, but other last digits than one after
   * another. Default not.
   */
  readonly gathered?: boolean;
}

/** A step of bodies that are there already and stand at one place. */
export function placeStep(name: string, op: Step["op"], bodies: readonly Mesh[]): Step {
  return { name, op, bodies: () => bodies, scope: "place", keepClear: undefined, small: false };
}
