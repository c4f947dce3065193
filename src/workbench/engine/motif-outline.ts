/**
 * A motif as it lies in a tile, for small pictures.
 */
import { flatTile, listMotifs } from "../../index.js";
import { sampleDesign } from "../../toolbox/index.js";
import { outlinePath } from "./outline-path.js";

/** Outlines for an SVG path, filled where they lie inside of an odd number of them; y grows downwards. */
export interface MotifOutline {
  readonly path: string;
  readonly viewBox: string;
}

/** Tiles side by side, so that it is seen how they meet. Chosen. */
const TILES = 2;

/** Undefined for a name that the catalogue has not. */
export async function motifOutline(name: string): Promise<MotifOutline | undefined> {
  const motif = listMotifs().find((one) => one.name === name);
  if (motif === undefined) return undefined;
  const { regions, fit } = await flatTile(sampleDesign(motif), { tiles: TILES });
  const outlines = regions.flatMap((region) => region.rings);
  const [width, height] = [TILES * fit.tileWidth, fit.tileHeight];
  return { path: outlinePath(outlines, 3), viewBox: `0 ${-height / 2} ${width} ${height}` };
}
