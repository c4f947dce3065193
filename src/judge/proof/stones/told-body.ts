/**
 * A body of a setting as pieces that a column is held against: convex ones, each between two heights and inside of planes, cones
 * or balls, all grown by so many mm or shrunk.
 */
import type { Point3 } from "../../../base/math/point.js";
import type { Line, Piece } from "./span.js";
import type { Through } from "./through.js";

export interface ToldBody {
  /** In the order of work: what is cut away before, walls, hollows, grains. */
  readonly kind: "clears" | "walls" | "hollows" | "grains";
  /** A sphere round it; undefined of what goes round the finger. */
  readonly sphere: { readonly centre: Point3; readonly radius: number } | undefined;
  /** An axis and how far from it the body reaches; undefined where it has none. */
  readonly axis?: { readonly at: Point3; readonly out: Point3; readonly radius: number };
  /** The middle of a grain or prong; undefined of other bodies. */
  readonly post?: Point3;
  /** A column in the coordinates of its pieces; undefined where it does not come near. */
  readonly line: (through: Through) => Line | undefined;
  readonly pieces: (grown: number) => readonly Piece[];
}

/** Pieces are made once for each amount by which they are grown: a proof asks for three. */
export function keptPieces(make: ToldBody["pieces"]): ToldBody["pieces"] {
  const made = new Map<number, readonly Piece[]>();
  return (grown) => {
    const known = made.get(grown) ?? make(grown);
    made.set(grown, known);
    return known;
  };
}
