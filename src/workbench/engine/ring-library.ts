/**
 * What the page asks of the library beside its ring: the fields of a design, catalogues, sizes. It runs in the worker, so that
 * the page itself carries neither the library nor its schema.
 */
import {
  alloys,
  cautions,
  drawTile,
  explainField,
  flatTile,
  listMotifs,
  resolveSize,
  ruleSets,
  type SizeSpec,
  sizeSystems,
} from "../../index.js";
import { sampleDesign } from "../../toolbox/index.js";

/** Everything is plain data, so that it can be posted. */
export const ringLibrary = {
  /** What is known of a field; the whole document's fields for an empty path. @throws AnnuletError `field-unknown` */
  explain: (path: string) => explainField(path),
  motifs: () => listMotifs(),
  /** A drawing of one tile of a motif, SVG. */
  async motifDrawing(name: string): Promise<string> {
    const motif = listMotifs().find((one) => one.name === name);
    return motif === undefined ? "" : drawTile(await flatTile(sampleDesign(motif)));
  },
  alloys: () => alloys.map(({ symbol, name, density }) => ({ symbol, name, density })),
  ruleSets: () => ruleSets.map(({ name, summary }) => ({ name, summary })),
  cautions: () => cautions,
  sizeSystems: () => sizeSystems.map(({ name, title }) => ({ name, title })),
  /** One bore in every system. @throws AnnuletError as `resolveSize` */
  size: (spec: SizeSpec) => resolveSize(spec),
};

export type RingLibrary = typeof ringLibrary;
