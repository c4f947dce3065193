/**
 * What a form of bore or outside gives: its span of the cross-section with sharp corners, and the radii for them.
 */
import type { Link } from "../../base/math/round-corners.js";

/** The sizes that a form is drawn into. */
export interface Frame {
  /** mm, half the band's width. */
  readonly halfWidth: number;
  /** mm, radius of the bore's narrowest circle. */
  readonly boreRadius: number;
  /** mm, radius of the outside's highest nominal point. */
  readonly top: number;
  /** mm, how far arcs may lie from a curve that is neither line nor circle. */
  readonly tolerance: number;
}

/** One segment of the outside and the corner at its end. */
export interface OutsideLink extends Link {
  /** Field of the form that holds the corner's radius, e.g. `edge`. */
  readonly field?: string;
  /** Whether it carries the pattern. Seat links stand in one run. */
  readonly seat?: boolean;
  /** Whether it is the flat top of a rail. */
  readonly rail?: boolean;
  /** Whether it is the ledge of a step. */
  readonly ledge?: boolean;
  /** What has the corner's radius, where it is not the form: a step, in its `edge`. */
  readonly cornerOf?: "step";
}

/** The outside from its right end (+w) to its left end (−w). The last link's radius is not used: `edge` holds it. */
export interface OutsideSketch {
  readonly links: readonly OutsideLink[];
  /** mm, radius of the corners between the outside and the side walls. */
  readonly edge: number;
  /** The field that holds it. Default `outside.edge`. */
  readonly edgeField?: string;
  /** The field that takes metal away where it grows, if any; blamed when the wall gets too thin. */
  readonly thins?: string;
  /** For an outside that is drawn point by point: the field with the drawing. It may run down to the bore at its ends. */
  readonly drawnAs?: string;
}

/** By how much the faces of a casting stand out beyond those of the finished band, mm, 0 or more. */
export interface Growth {
  /** The bore, towards the axis. */
  readonly bore: number;
  /** The faces of the outside that are finished, away from it. */
  readonly outside: number;
}

/** A form of the outside. */
export interface OutsideForm<Spec> {
  /** @throws Misfit where the sizes leave no such form */
  sketch(spec: Spec, frame: Frame): OutsideSketch;
  /** What of it is finished: all of it, seat included, or its rails alone. */
  readonly finished: "seat" | "rails";
  /** The same outside before finishing, on a band that is thicker by both: what is not finished keeps its radius. */
  grown(spec: Spec, by: Growth): Spec;
}

/** The bore from its left end (−w) to its right end (+w). */
export interface BoreSketch {
  readonly link: Link;
  /** Radius of the nominal bore at w, mm. */
  radiusAt(w: number): number;
  /** The field that takes metal away where it grows, if any. */
  readonly thins?: string;
}

/** A form of the bore. */
export interface BoreForm<Spec> {
  /** @throws Misfit where the sizes leave no such form */
  sketch(spec: Spec, frame: Frame): BoreSketch;
  /** The same bore before finishing, about a circle that is narrower by it. */
  grown(spec: Spec, by: Growth): Spec;
}

/** Grows a form whose sizes are all measured from the band's own circles: it goes with them as it is. */
export function unchanged<Spec>(spec: Spec): Spec {
  return spec;
}
