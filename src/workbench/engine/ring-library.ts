/**
 * What the page asks of the library beside its ring: the fields of a design, catalogues, sizes. It runs in the worker, so that
 * the page itself carries neither the library nor its schema.
 */
import type { Plain } from "../../entries/worker.js";
import {
  alloys,
  cautions,
  drawTile,
  encodePng,
  type FlatTile,
  listMotifs,
  openRing,
  type Profile,
  resolveSize,
  type SizeSpec,
  sizeSystems,
  sizeTable,
} from "../../index.js";
import {
  friezeGroups,
  gems,
  makeBand,
  orderCsv,
  type StoneOrder,
  symmetryElements,
  VERSION,
} from "../../toolbox/index.js";
import { designOutline } from "./design-outline.js";
import { drawForms } from "./draw-forms.js";
import { explain, explainInside } from "./explain-inside.js";
import { motifOutline } from "./motif-outline.js";
import { stoneSizes } from "./stone-sizes.js";

/** Everything is plain data, so that it can be posted. */
export const ringLibrary = {
  /** A sign of life. */
  isAlive: () => true,
  /** What is known of a field; the whole document's fields for an empty path. @throws AnnuletError `field-unknown` */
  explain,
  /** The same, with all fields inside it. @throws AnnuletError `field-unknown` */
  explainInside,
  /** A cross-section in other forms, SVG each. */
  drawForms,
  motifs: () => listMotifs(),
  designOutline,
  motifOutline,
  /** The cross-section at an angle, degrees from +x, of a band that may taper. @throws AnnuletError as the ring's own questions */
  async sectionAt(text: string, angle: number): Promise<Profile> {
    const ring = openRing(text);
    const [{ profile, tolerance }, { diameter }, { width }] = [
      await ring.design(),
      await ring.size(),
      await ring.profile(),
    ];
    return makeBand({ ...profile, width }, diameter / 2, tolerance).sectionAt((angle * Math.PI) / 180);
  },
  /** Where each frieze group has its elements, by its name. */
  symmetryElements: () => Object.fromEntries(friezeGroups.map((group) => [group.name, symmetryElements(group)])),
  alloys: () => alloys.map(({ symbol, name, density }) => ({ symbol, name, density })),
  gems: () => gems.map(({ symbol, name }) => ({ symbol, name })),
  stoneSizes,
  /** The table to order stones from, CSV. */
  orderCsv: (rows: readonly StoneOrder[]) => orderCsv(rows),
  cautions: () => cautions,
  sizeSystems: () => sizeSystems.map(({ name, title }) => ({ name, title })),
  /** The program and its version, as files name it. */
  tool: () => `annulet ${VERSION}`,
  /** A picture as PNG. */
  png: (picture: Parameters<typeof encodePng>[0]) => encodePng(picture),
  /** The drawing of a flat tile, SVG. */
  tileDrawing: (tile: Plain<FlatTile>) => drawTile(tile as FlatTile),
  /** The nearest label of each system. @throws AnnuletError as `resolveSize` */
  sizeLabels: (spec: SizeSpec) =>
    sizeTable(resolveSize(spec).circumference).map(({ system, title, label }) => ({ system, title, label })),
};

export type RingLibrary = typeof ringLibrary;
