/**
 * The flat tile of a design: what a drawing of the pattern shows, without building the ring.
 */
import type { FileSource } from "../base/files.js";
import type { Limits } from "../base/limits.js";
import type { WasmPlaces } from "../base/wasm-places.js";
import type { FlatTile, TileQuestion } from "../output/drawing/drawn-tile.js";
import { openRing } from "./open-ring.js";
import { readQuestion } from "./options/questions.js";

export interface FlatTileOptions extends TileQuestion {
  /** Where the WebAssembly file of lettering is, as an address or bytes, where it does not lie beside the library. */
  readonly wasm?: WasmPlaces | undefined;
  /** Most beads that are placed round the band. Default 20 000. */
  readonly maxBeads?: number | undefined;
  /** The files that the design names, SVG drawings: name → text, or a function that gives one. Default: none. */
  readonly files?: FileSource | undefined;
  /**
   * What it may cost: seconds and corners, beyond which AnnuletError `too-long` or `too-many-corners` names the part of the
   * document. Default 1 800 s, 4 million corners.
   */
  readonly limits?: Partial<Limits> | undefined;
}

/**
 * Works a design out up to its flat pattern and bead places.
 *
 * @param document the design document: an object, or JSON text
 * @throws AnnuletError as `build` up to the pattern and the beads; `no-pattern`; `no-such-lane`; `no-such-part`; `tiles-out-of-range`
 *
 * @example
 * const { fit } = await flatTile(document, { tiles: 2 });
 * console.log(fit.tileWidth, fit.tileHeight); // mm
 */
export async function flatTile(document: unknown, options: FlatTileOptions = {}): Promise<FlatTile> {
  const { files, wasm, maxBeads, limits, ...question } = readQuestion("tile", options);
  return openRing(document, { files, wasm, maxBeads, limits }).tile(question);
}
