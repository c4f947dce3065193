/**
 * Where the limits of the built-in rule sets come from.
 */
import type { RuleLimit, Severity } from "./rule-set.js";

type Published = (limit: number, severity: Severity) => RuleLimit;

const published =
  (source: string): Published =>
  (limit, severity) => ({ limit, severity, source, certainty: "one credible source" });

/**
 * A casting house: any thickness 0.40, broad flats 0.50, gaps and holes 0.20, all edges and corners of radius 0.125 mm; gaps
 * and holes no deeper than they are wide.
 */
export const castingHouse = published("a casting house's CAD guidelines (morrisandwatson.com)");

/** Another casting house: walls 0.8, engraving 0.3 wide and 0.5 deep, prongs 0.6 mm. */
export const carefulHouse = published("a casting house's guide (gemwares.com)");

/** A castable resin's printing guide: wires 0.3 mm. A limit of the print, not of the metal. */
export const resinGuide = published("a castable-resin maker's guide, July 2019");

/** A print service: finishing takes 0.05 to 0.15 mm in all, so what is lower may be gone. */
export const finishingGuide = published("a print service's guide: finishing takes up to 0.15 mm in all");

/** A guide to casting: detail 0.3 mm. */
export const detailGuide = published("a guide to casting, detail at least 0.3 mm (mssolucoesjoalheria.com)");

/** A guide to castable resin: sections over 4 mm are to be hollowed out. */
export const sectionGuide = published("a guide to castable resin, sections over 4 mm hollow (saqlainbullion.com)");

/** A guide for buyers: 1.5 mm of shank for daily wear. */
export const wearGuide = (limit: number, severity: Severity): RuleLimit => {
  return { limit, severity, source: "a retail guide, for daily wear", certainty: "weak" };
};

/** Gaps between girdles: 0.1 mm. */
export const girdleGuide = published("a laboratory's benchmark (gia.edu) and a tool house's guide (stuller.com)");

/** A bench course: 0.3 mm of metal left round a seat is enough. */
export const seatGuide = published("a bench course (ganoksin, nenam)");

/** A bench guide to single-row pavé: 0.5 mm beside the stones, on each side. */
export const paveGuide = published("a bench guide to single-row pavé (ganoksin)");

/** A supplier's sheet: bezels 0.5 mm, culet to bore 0.5 mm. */
export const supplierSheet = published("CAD best-practice sheet of a large US supplier");

/** Flush: hard and tough stones only. */
export const flushGuide = published("a bench teacher (nancylthamilton.com)");

export const commonPractice = (limit: number, severity: Severity): RuleLimit => {
  return { limit, severity, source: "common practice, no source", certainty: "common practice" };
};
