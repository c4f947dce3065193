/** What of a region is narrower than some width, worked out by manifold-3d, a polygon library that is not the one used. */
import type { CrossSection, ManifoldToplevel } from "manifold-3d";
import { fromGrid } from "../../../src/flat/grid.js";
import type { Completed } from "./motifs.js";

/** Sides of the circles that offsets round corners with: their chords are within 2 % of the radius. */
const SEGMENTS = 32;

/** The region over all tiles that are worked. */
function sectionOf(wasm: ManifoldToplevel, { strip, region }: Completed): CrossSection {
  const rings = region.map((ring) => fromGrid(strip.grid, ring).map(([x, y]): [number, number] => [x, y]));
  return new wasm.CrossSection(rings, "NonZero");
}

export interface Narrow {
  /** Areas of the pieces of tile 0 that are lost where the region is opened, mm². */
  readonly lines: readonly number[];
  /** Areas of the pieces that are filled where it is closed, mm². */
  readonly gaps: readonly number[];
  /** Outlines, holes among them, of all that is worked; of that shrunk by half the width; and of that grown by it. */
  readonly outlines: { readonly whole: number; readonly shrunk: number; readonly grown: number };
}

/** @param width mm */
export function narrowerThan(wasm: ManifoldToplevel, completed: Completed, width: number): Narrow {
  const section = sectionOf(wasm, completed);
  const moved = (first: number) => section.offset(first, "Round", 2, SEGMENTS).offset(-first, "Round", 2, SEGMENTS);
  return {
    lines: piecesOf(section.subtract(moved(-width / 2)), completed.strip.tileWidth),
    gaps: piecesOf(moved(width / 2).subtract(section), completed.strip.tileWidth),
    outlines: {
      whole: section.numContour(),
      shrunk: section.offset(-width / 2, "Round", 2, SEGMENTS).numContour(),
      grown: section.offset(width / 2, "Round", 2, SEGMENTS).numContour(),
    },
  };
}

function piecesOf(lost: CrossSection, tileWidth: number): number[] {
  return lost
    .decompose()
    .filter((piece) => {
      const { min, max } = piece.bounds();
      const middle = (min[0] + max[0]) / 2;
      return middle >= 0 && middle < tileWidth;
    })
    .map((piece) => piece.area())
    .sort((a, b) => b - a);
}
