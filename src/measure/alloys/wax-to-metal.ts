/**
 * Metal to melt for a wax: m = m_wax × ρ / ρ_wax (riogrande.com).
 */
import { AnnuletError } from "../../base/errors.js";

/**
 * Mass of metal that fills what the wax filled, g. Weigh the sprue with the wax; no allowance is added.
 *
 * @param waxMass g, 0 or more
 * @param metalDensity g/cm³, above 0
 * @param waxDensity g/cm³, above 0; 1.00 by convention
 * @throws AnnuletError `wax-mass` or `wax-density`
 */
export function metalFromWax(waxMass: number, metalDensity: number, waxDensity: number): number {
  if (!(waxMass >= 0 && Number.isFinite(waxMass))) {
    throw new AnnuletError({
      code: "wax-mass",
      message: "This is no mass.",
      path: "waxMass",
      value: waxMass,
      allowed: "a number, 0 or more, g",
    });
  }
  requireDensity(metalDensity, "metalDensity");
  requireDensity(waxDensity, "waxDensity");
  return (waxMass * metalDensity) / waxDensity;
}

function requireDensity(density: number, path: string): void {
  if (density > 0 && Number.isFinite(density)) return;
  throw new AnnuletError({
    code: "wax-density",
    message: "This is no density.",
    path,
    value: density,
    allowed: "a number above 0, g/cm³",
  });
}
