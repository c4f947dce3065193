/**
 * What the page asks of the library beside its ring: the fields of a design, catalogues, sizes. It runs in the worker, so that
 * the page itself carries neither the library nor its schema.
 */
import {
  alloys,
  cautions,
  drawTile,
  flatTile,
  listMotifs,
  resolveSize,
  ruleSets,
  type SizeSpec,
  sizeSystems,
  sizeTable,
} from "../../index.js";
import { sampleDesign } from "../../toolbox/index.js";
import { drawForms } from "./draw-forms.js";
import { explain, explainInside } from "./explain-inside.js";
import { motifOutline } from "./motif-outline.js";

/** Everything is plain data, so that it can be posted. */
export const ringLibrary = {
  /** What is known of a field; the whole document's fields for an empty path. @throws AnnuletError `field-unknown` */
  explain,
  /** The same, with all fields inside it. @throws AnnuletError `field-unknown` */
  explainInside,
  /** A cross-section in other forms, SVG each. */
  drawForms,
  motifs: () => listMotifs(),
  /** A drawing of one tile of a motif, SVG. */
  async motifDrawing(name: string): Promise<string> {
    const motif = listMotifs().find((one) => one.name === name);
    return motif === undefined ? "" : drawTile(await flatTile(sampleDesign(motif)));
  },
  /** The same in outlines alone. */
  motifOutline,
  alloys: () => alloys.map(({ symbol, name, density }) => ({ symbol, name, density })),
  ruleSets: () => ruleSets.map(({ name, summary }) => ({ name, summary })),
  cautions: () => cautions,
  sizeSystems: () => sizeSystems.map(({ name, title }) => ({ name, title })),
  /** One bore in every system. @throws AnnuletError as `resolveSize` */
  size: (spec: SizeSpec) => resolveSize(spec),
  /** The nearest label of each system. @throws AnnuletError as `resolveSize` */
  sizeLabels: (spec: SizeSpec) =>
    sizeTable(resolveSize(spec).circumference).map(({ system, title, label }) => ({ system, title, label })),
};

export type RingLibrary = typeof ringLibrary;
