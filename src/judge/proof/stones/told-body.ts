/**
 * A body of a setting as a question: whether a point lies in it, grown by so many mm or shrunk.
 */
import type { Point3 } from "../../../base/math/point.js";

export interface ToldBody {
  /** In the order of work: what is cut away before, walls, hollows, grains. */
  readonly kind: "clears" | "walls" | "hollows" | "grains";
  /** A sphere round it; undefined of what goes round the finger. */
  readonly sphere: { readonly centre: Point3; readonly radius: number } | undefined;
  /** An axis and how far from it the body reaches; undefined where it has none. */
  readonly axis?: { readonly at: Point3; readonly out: Point3; readonly radius: number };
  /** The middle of a grain or prong; undefined of other bodies. */
  readonly post?: Point3;
  readonly holds: (point: Point3, grown: number) => boolean;
}
