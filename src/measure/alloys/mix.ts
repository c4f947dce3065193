/**
 * Density of a mixture from its parts: 1/ρ = Σ wᵢ/ρᵢ, wᵢ by mass (the rule of mixtures: volumes add up).
 */
import { AnnuletError } from "../../base/errors.js";

/** One part of a mixture. */
export interface MixPart {
  /** g/cm³, above 0. */
  readonly density: number;
  /** Share of the mass, 0 to 1. */
  readonly share: number;
}

/** How far the shares may miss 1 in all. */
const SHARES_TOLERANCE = 1e-6;

/**
 * Density of a mixture, g/cm³.
 *
 * @throws AnnuletError `mix-density` for a density that is not above 0, `mix-shares` for shares that are negative or
 * do not sum to 1 within 1e-6
 */
export function mixDensity(parts: readonly MixPart[]): number {
  let sum = 0;
  let volume = 0;
  for (const [i, { density, share }] of parts.entries()) {
    if (!(density > 0 && Number.isFinite(density))) {
      throw new AnnuletError({
        code: "mix-density",
        message: "A part of the mixture has no usable density.",
        path: `parts[${i}].density`,
        value: density,
        allowed: "a number above 0, g/cm³",
      });
    }
    if (!(share >= 0)) throw sharesError(`parts[${i}].share`, share);
    sum += share;
    volume += share / density;
  }
  if (!(Math.abs(sum - 1) <= SHARES_TOLERANCE)) throw sharesError("parts", sum);
  return 1 / volume;
}

function sharesError(path: string, value: number): AnnuletError {
  return new AnnuletError({
    code: "mix-shares",
    message: "The shares of a mixture do not make a whole.",
    path,
    value,
    allowed: "shares of the mass, each 0 to 1, that sum to 1",
    hint: "Divide parts in a thousand by 1000.",
  });
}
