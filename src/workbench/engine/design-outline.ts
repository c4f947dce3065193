/**
 * A small drawing of a design: its pattern laid flat, or its cross-section where it has none.
 */
import { openRing, type Point2 } from "../../index.js";
import type { MotifOutline } from "./motif-outline.js";
import { outlinePath } from "./outline-path.js";

/** Accuracy of what is drawn some 30 mm wide, mm. */
const TOLERANCE = 0.05;

/**
 * Undefined where the design cannot be drawn.
 *
 * @param files the files that it names
 */
export async function designOutline(
  text: string,
  files: Readonly<Record<string, Uint8Array>>,
): Promise<MotifOutline | undefined> {
  try {
    const ring = openRing({ ...JSON.parse(text), tolerance: TOLERANCE }, { files });
    return (
      (await ring.tile({ tiles: TILES }).then(drawTile, () => undefined)) ??
      drawRings([(await ring.profile()).polyline])
    );
  } catch {
    return undefined;
  }
}

/** So that it is seen how tiles meet. Chosen. */
const TILES = 2;

interface Tile {
  readonly regions: readonly { readonly rings: readonly (readonly Point2[])[] }[];
}

function drawTile({ regions }: Tile): MotifOutline | undefined {
  const rings = regions.flatMap((region) => region.rings);
  return rings.length === 0 ? undefined : drawRings(rings);
}

function drawRings(rings: readonly (readonly Point2[])[]): MotifOutline {
  const points = rings.flat();
  const [left, low] = [0, 1].map((axis) => points.reduce((least, point) => Math.min(least, point[axis]), Infinity));
  const [right, high] = [0, 1].map((axis) => points.reduce((most, point) => Math.max(most, point[axis]), -Infinity));
  const viewBox = [left, -high, right - left, high - low].map((x) => x.toFixed(2)).join(" ");
  return { path: outlinePath(rings, 2), viewBox };
}
