/**
 * A small design that shows one motif: ten tiles 6 mm wide round a flat band.
 */
import { TURN } from "../../base/units.js";
import type { AnyMotif } from "./motif.js";

export interface SampleOptions {
  /** The motif's parameters. Default: their defaults. */
  readonly parameters?: Readonly<Record<string, number>>;
  /** Height of the tile over its width. Default: the motif's natural one. */
  readonly aspect?: number;
  /** Rows of tiles across the band. Default 1. */
  readonly rows?: number;
}

/** The sample's tiles, thickness and relief, mm. Chosen: a usual band, and the tile that motifs state their details for. */
const SAMPLE = { repeats: 10, tileWidth: 6, thickness: 1.8, height: 0.5 } as const;

/** The motif as a region of tiles of some width, mm: with the ribbon that its lines are meant for. */
export function sampleRegion({ name, ribbon }: Pick<AnyMotif, "name" | "ribbon">, tileWidth: number, parameters = {}) {
  return {
    name,
    motif: { name, ...parameters },
    ...(ribbon === undefined
      ? {}
      : { ribbon: { width: ribbon.share * tileWidth, join: ribbon.join, ends: ribbon.ends } }),
    height: SAMPLE.height,
  };
}

/** The design document, to be built or drawn. */
export function sampleDesign(
  motif: Pick<AnyMotif, "name" | "ribbon" | "group" | "aspect">,
  { parameters, aspect = motif.aspect.natural, rows = 1 }: SampleOptions = {},
) {
  const { repeats, tileWidth, thickness } = SAMPLE;
  return {
    annulet: 1,
    name: motif.name,
    size: { diameter: (2 * repeats * tileWidth) / TURN - 2 * thickness },
    profile: {
      width: rows * aspect * tileWidth,
      thickness,
      bore: { form: "flat", edge: 0 },
      outside: { form: "flat", edge: 0 },
    },
    pattern: {
      fit: { repeats, aspect, rows },
      symmetry: motif.group,
      regions: [sampleRegion(motif, tileWidth, parameters)],
    },
  };
}
