/** Figures of a made ring, from its report. */
import type { Report } from "../../output/report/report.js";
import { densitySpan, gramDecimals } from "../../output/report/show-grams.js";
import type { MadeFigures } from "./record.js";

export function figuresOf(report: Report): MadeFigures {
  const { size, band, fit, beads, volume, mass, weights, triangles } = report;
  const [material, weight] = Object.entries(mass)[0];
  const counts: Record<string, number> = {};
  for (const { code } of report.warnings) counts[code] = (counts[code] ?? 0) + 1;
  return {
    circumference: size.circumference,
    diameter: size.diameter,
    thickness: band.thickness,
    bandWidth: band.width,
    repeats: fit?.repeats ?? null,
    rows: fit?.rows ?? null,
    tileWidth: fit?.tileWidth ?? null,
    tileHeight: fit?.tileHeight ?? null,
    stretch: fit?.stretch ?? null,
    beads: beads.reduce((sum, { count }) => sum + count, 0),
    beadRatioMin: beads.length === 0 ? null : Math.min(...beads.map(({ ratioMin }) => ratioMin)),
    beadRatioMax: beads.length === 0 ? null : Math.max(...beads.map(({ ratioMax }) => ratioMax)),
    stones: report.stones?.count ?? 0,
    carats: report.stones?.carats ?? 0,
    volume,
    weight,
    material,
    weightDecimals: gramDecimals((weight * densitySpan(weights, material)) / 2),
    triangles,
    warnings: counts,
  };
}
