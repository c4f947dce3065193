/**
 * Materials of the user's own, by their density or by their composition.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Alloy } from "./alloy.js";
import { alloys } from "./catalogue.js";
import { mixDensity } from "./mix.js";
import { pureDensities } from "./pure.js";

/** A pure metal whose density is known. */
export type PureMetal = keyof typeof pureDensities;

/** Symbols of the pure metals that mixtures may hold. */
export const PURE_METALS = Object.keys(pureDensities) as readonly PureMetal[];

/** What a user says of a material. */
export interface OwnAlloy {
  readonly symbol: string;
  /** Default its symbol. */
  readonly name?: string;
  /** g/cm³. This or a mix. */
  readonly density?: number;
  /** Shares of the mass, which sum to 1, by the metals' symbols. */
  readonly mix?: Readonly<Partial<Record<PureMetal, number>>>;
  /** g/cm³. */
  readonly range?: readonly [number, number];
  /** ‰ */
  readonly fineness?: number;
  /** Default other. */
  readonly kind?: Alloy["kind"];
  /** Default the user's own. */
  readonly source?: string;
}

/**
 * The material that a user describes.
 *
 * @param path where it stands in the document
 * @throws AnnuletError `alloy-unclear` where neither or both of density and mix are given, `alloy-known` for the symbol of
 *   a built-in one, `mix-shares`, `mix-density`
 *
 * @example
 * const marshGold = ownAlloy({ symbol: "marsh-gold", mix: { Au: 0.583, Ag: 0.104, Cu: 0.313 } });
 * console.log(marshGold.density); // 13.33 g/cm³
 */
export function ownAlloy(own: OwnAlloy, path = "alloys"): Alloy {
  // A caller in JavaScript may pass anything.
  const given = Object(own) as OwnAlloy;
  const { symbol, name = symbol, density, mix, range, fineness, kind = "other", source } = given;
  if (alloys.some((alloy) => alloy.symbol === symbol)) {
    throw new AnnuletError({
      code: "alloy-known",
      message: `there is a material ${symbol} already`,
      path: `${path}.symbol`,
      value: symbol,
      allowed: "a symbol of its own",
      hint: `call it ${symbol}-own`,
    });
  }
  if ((density === undefined) === (mix === undefined)) {
    throw new AnnuletError({
      code: "alloy-unclear",
      message: density === undefined ? "its density is not given" : "its density is given in two ways",
      path,
      value: own,
      allowed: "either density or mix",
    });
  }
  return {
    symbol,
    name,
    kind,
    density: density ?? densityOf(mix ?? {}, `${path}.mix`),
    ...(range === undefined ? {} : { range }),
    ...(fineness === undefined ? {} : { fineness }),
    source: source ?? (mix === undefined ? "the design's own figure" : "mixing rule on the design's own composition"),
    certainty: mix === undefined ? "own" : "computed",
  };
}

function densityOf(mix: Readonly<Partial<Record<PureMetal, number>>>, path: string): number {
  const parts = Object.entries(mix).map(([metal, share]) => ({ density: pureDensities[metal as PureMetal], share }));
  try {
    return mixDensity(parts);
  } catch (cause) {
    if (!(cause instanceof AnnuletError)) throw cause;
    throw new AnnuletError({ ...cause.problems[0], path }, { cause });
  }
}
