/** Motifs completed on strips, and random parameters for them. */

import fc from "fast-check";
import { sampleRegion } from "../../../src/art/motifs/sample.js";
import { listMotifs, type MotifEntry } from "../../../src/design/motifs/list.js";
import type { GridRegion } from "../../../src/flat/polygons.js";
import type { Strip } from "../../../src/flat/strip.js";
import { completeArt } from "../../../src/relief/art.js";
import { collector, region, type StripInput, stripOf } from "../../flat/strips.js";

/** The tile width for which motifs state their least detail, mm. */
export const TILE = 6;

export type Parameters = Readonly<Record<string, number>>;

export interface Completed {
  readonly strip: Strip;
  readonly region: GridRegion;
  readonly codes: readonly string[];
}

/** The motif on a strip of tiles, under its own group unless said otherwise. */
export function complete(motif: MotifEntry, parameters: Parameters, input: StripInput = {}): Completed {
  const strip = stripOf({ tileWidth: TILE, aspect: motif.aspect.natural, symmetry: motif.group, ...input });
  const { codes, warn } = collector();
  const spec = region(sampleRegion(motif, TILE, parameters));
  return { strip, region: completeArt(strip, spec, "region", warn).region, codes };
}

/** Parameters anywhere in their ranges, their ends more often than what lies between. */
export function parametersOf({ parameters }: Pick<MotifEntry, "parameters">): fc.Arbitrary<Parameters> {
  const numbers = parameters.map(({ name, least, most, step }): [string, fc.Arbitrary<number>] => {
    const unit = step ?? (most - least) / 1000;
    const inner = fc.integer({ min: 0, max: Math.round((most - least) / unit) }).map((i) => least + i * unit);
    return [
      name,
      fc.oneof(
        fc.constantFrom(least, most),
        inner.map((value) => Math.min(value, most)),
      ),
    ];
  });
  return fc.record(Object.fromEntries(numbers));
}

/** Heights of a tile over its width for which the motif is made. */
export function aspectsOf({ aspect: { least, natural, most } }: Pick<MotifEntry, "aspect">): fc.Arbitrary<number> {
  return fc.oneof(
    fc.constantFrom(least, natural, most),
    fc.integer({ min: 0, max: 100 }).map((i) => least + ((most - least) * i) / 100),
  );
}

export const entries = listMotifs().map((motif) => [motif.name, motif] as const);
