/**
 * What a ring weighs and costs in every material, from the metal in the crucible to the finished piece.
 *
 * m = ρ V. The sprue is a share of the casting's weight, the button a weight; both are melted and come back as scrap, what
 * finishing takes off is lost to the sweeps.
 */

import type { Certainty } from "../../base/certainty.js";
import { AnnuletError } from "../../base/errors.js";
import { MM3_PER_CM3 } from "../../base/units.js";
import type { Alloy } from "../alloys/alloy.js";
import { metalFromWax } from "../alloys/wax-to-metal.js";
import { massOf } from "../mass.js";

/** Defaults: a sprue of 10 % as in a published worked example (riogrande.com: 5 g of wax and 10 %), no button. */
export const WEIGHT_DEFAULTS = { sprue: 10, button: 0 } as const;

/** What a piece is weighed with. */
export interface WeightOptions {
  /** The materials that are weighed in, in the order of the table. */
  readonly alloys: readonly Alloy[];
  /** What the master is made of. */
  readonly pattern: Alloy;
  /** Sprue, % of the casting's weight, 0 or more. Default 10. */
  readonly sprue?: number | undefined;
  /** Button left in the cup, g, 0 or more. Default 0. */
  readonly button?: number | undefined;
  /** Price of a gram by the material's symbol, 0 or more. Default none: no cost is told. */
  readonly prices?: Readonly<Record<string, number>> | undefined;
  /** What prices are in, as text. Default none. */
  readonly currency?: string | undefined;
}

/** mm³ of the piece at its times. */
export interface PieceVolumes {
  readonly finished: number;
  readonly cast: number;
  /** The printed file's. */
  readonly master: number;
  /** The cured pattern's, which the metal replaces. */
  readonly pattern: number;
}

/** One material. Weights in g. */
export interface WeightRow {
  readonly symbol: string;
  readonly name: string;
  readonly kind: Alloy["kind"];
  /** g/cm³ */
  readonly density: number;
  readonly source: string;
  readonly certainty: Certainty;
  /** The finished piece, and by the smallest and largest published density; null where no range is published. */
  readonly finished: number;
  readonly finishedRange: readonly [number, number] | null;
  /** The casting without its sprue. */
  readonly cast: number;
  /** What finishing takes off. */
  readonly finishingLoss: number;
  readonly sprue: number;
  /** Into the crucible: casting, sprue and button. */
  readonly melt: number;
  /** Casting by the wax rule, pattern weight × ρ / ρ of the pattern. It is more than `cast` by what the metal shrinks. */
  readonly byPattern: number;
  /** Price of a gram, null where it is not given; cost of the finished piece, of what finishing takes, of the whole melt. */
  readonly price: number | null;
  readonly cost: { readonly finished: number; readonly finishingLoss: number; readonly melt: number } | null;
}

/** A piece in every material. */
export interface WeightTable {
  readonly rows: readonly WeightRow[];
  /** % of the casting's weight. */
  readonly sprue: number;
  /** g */
  readonly button: number;
  readonly currency: string | null;
  readonly volumes: PieceVolumes;
  readonly pattern: {
    readonly symbol: string;
    readonly density: number;
    /** Of the printed master, ml; without supports and base. */
    readonly millilitres: number;
    /** Of the cured pattern, g: weigh it to check. */
    readonly weight: number;
    readonly weightRange: readonly [number, number] | null;
  };
}

/**
 * Weighs a piece in every material; what patterns are made of is left out of the rows.
 *
 * @throws AnnuletError `allowance-invalid` for a sprue, a button or a price below 0, those of `massOf`
 */
export function weighPiece(volumes: PieceVolumes, options: WeightOptions): WeightTable {
  const { alloys, pattern, prices = {}, currency } = options;
  const { sprue = WEIGHT_DEFAULTS.sprue, button = WEIGHT_DEFAULTS.button } = options;
  for (const [name, value] of Object.entries({ sprue, button })) requireAmount(value, `costing.${name}`);
  for (const [name, value] of Object.entries(prices)) requireAmount(value, `costing.prices.${name}`);
  const patternWeight = massOf(volumes.pattern, pattern);
  const rows = alloys
    .filter(({ kind }) => kind !== "pattern")
    .map((alloy): WeightRow => {
      const finished = massOf(volumes.finished, alloy);
      const cast = massOf(volumes.cast, alloy);
      const finishingLoss = cast - finished;
      const melt = cast * (1 + sprue / 100) + button;
      const price = Object.hasOwn(prices, alloy.symbol) ? prices[alloy.symbol] : null;
      const { symbol, name, kind, density, source, certainty } = alloy;
      return {
        symbol,
        name,
        kind,
        density,
        source,
        certainty,
        finished,
        cast,
        finishingLoss,
        melt,
        price,
        finishedRange: rangeOf(volumes.finished, alloy),
        sprue: (cast * sprue) / 100,
        byPattern: metalFromWax(patternWeight, density, pattern.density),
        cost:
          price === null
            ? null
            : { finished: price * finished, finishingLoss: price * finishingLoss, melt: price * melt },
      };
    });
  return {
    rows,
    sprue,
    button,
    currency: currency ?? null,
    volumes,
    pattern: {
      symbol: pattern.symbol,
      density: pattern.density,
      millilitres: volumes.master / MM3_PER_CM3,
      weight: patternWeight,
      weightRange: rangeOf(volumes.pattern, pattern),
    },
  };
}

function rangeOf(volume: number, { range }: Alloy): readonly [number, number] | null {
  if (range === undefined) return null;
  return [massOf(volume, { density: range[0] }), massOf(volume, { density: range[1] })];
}

function requireAmount(value: number, path: string): void {
  if (value >= 0 && Number.isFinite(value)) return;
  throw new AnnuletError({
    code: "allowance-invalid",
    message: "this is no amount",
    path,
    value,
    allowed: "a number, 0 or more",
  });
}
