/**
 * Rule sets: limits below which a detail may not come out, each with its source. Any value of this shape can stand beside
 * the built-in ones.
 */
import type { Certainty } from "../../base/certainty.js";

/** How grave it is where a limit is not kept: an error fails `annulet check`, a note only tells. */
export type Severity = "error" | "warning" | "note";

/** What is measured, in which unit, whether the figure must be at least or at most the limit, and what is left out of it. */
export const RULES = {
  shank: { what: "metal from the bore straight out", unit: "mm", keep: "at least", without: "" },
  wall: {
    what: "metal between any two faces",
    unit: "mm",
    keep: "at least",
    without: "raised detail, letters and beads by themselves; faces that lean towards each other by over 30°",
  },
  side: {
    what: "height of the band's sides, 0.1 mm in from them",
    unit: "mm",
    keep: "at least",
    without: "what is sunk or pierced there",
  },
  heavy: { what: "largest ball within the band's section", unit: "mm", keep: "at most", without: "what stands on it" },
  relief: { what: "height of what is raised", unit: "mm", keep: "at least", without: "ends that fade" },
  engraving: { what: "depth of what is sunk", unit: "mm", keep: "at least", without: "height maps' shallow parts" },
  line: { what: "raised line", unit: "mm", keep: "at least", without: "height maps" },
  gap: {
    what: "gap between raised parts, and to the rails",
    unit: "mm",
    keep: "at least",
    without: "height maps, letters, beads",
  },
  island: {
    what: "raised part that stands alone, diameter by area",
    unit: "mm",
    keep: "at least",
    without: "height maps, letters, beads",
  },
  post: {
    what: "height of a raised part that stands alone over its diameter",
    unit: "×",
    keep: "at most",
    without: "height maps, letters, beads",
  },
  groove: { what: "sunk line", unit: "mm", keep: "at least", without: "height maps" },
  "groove-depth": {
    what: "depth of a gap or a sunk line over its width",
    unit: "×",
    keep: "at most",
    without: "height maps; gaps between raised letters, and where they run out to a point",
  },
  hole: { what: "hole, at the bore or at the seat", unit: "mm", keep: "at least", without: "" },
  "hole-depth": {
    what: "way through a hole over its width",
    unit: "×",
    keep: "at most",
    without: "where it runs out to a point",
  },
  bead: { what: "bead", unit: "mm", keep: "at least", without: "" },
  corner: {
    what: "radius of the band's inner corners",
    unit: "mm",
    keep: "at least",
    without: "the feet of relief, letters and beads",
  },
  edge: {
    what: "radius of the band's outer edges",
    unit: "mm",
    keep: "at least",
    without: "edges of relief, letters and holes",
  },
  marks: {
    what: "room between texts, marks and the pattern",
    unit: "mm",
    keep: "at least",
    without: "letters of one text",
  },
  bridge: {
    what: "handles that the design does not imply",
    unit: "",
    keep: "at most",
    without: "",
  },
  undercut: {
    what: "lean of outside faces over the radius",
    unit: "°",
    keep: "at most",
    without: "bore, beads, the band's own surfaces; what leans by under 1°, or a quarter of a facet",
  },
  girdles: { what: "gap between girdles", unit: "mm", keep: "at least", without: "" },
  web: {
    what: "metal between hollows",
    unit: "mm",
    keep: "at least",
    without: "hollows that are cut into each other",
  },
  under: { what: "metal under a closed hollow", unit: "mm", keep: "at least", without: "" },
  beside: { what: "metal beside a hollow or groove", unit: "mm", keep: "at least", without: "bezels" },
  bezel: { what: "bezel", unit: "mm", keep: "at least", without: "" },
  ledge: { what: "ledge under a stone", unit: "mm", keep: "at least", without: "" },
  prong: { what: "prong at its foot", unit: "mm", keep: "at least", without: "" },
  grain: { what: "grain", unit: "mm", keep: "at least", without: "" },
  held: { what: "prongs or grains of a stone", unit: "", keep: "at least", without: "" },
  level: { what: "table off the surface", unit: "mm", keep: "at most", without: "bezels, prongs, channels" },
  unfit: { what: "gems unfit for flush setting", unit: "", keep: "at most", without: "" },
} as const;

/** Rules that only rings with stones are held to. */
export const STONE_RULES = [
  "girdles",
  "web",
  "under",
  "beside",
  "bezel",
  "ledge",
  "prong",
  "grain",
  "held",
  "level",
  "unfit",
] as const satisfies readonly (keyof typeof RULES)[];

/** Name of one of them. */
export type StoneRule = (typeof STONE_RULES)[number];

/** Name of a rule of castability. */
export type RuleName = keyof typeof RULES;

/** Every rule, in the order of tables. */
export const RULE_NAMES = Object.keys(RULES) as readonly RuleName[];

/** The limit of one rule. */
export interface RuleLimit {
  /** In the rule's unit. */
  readonly limit: number;
  readonly severity: Severity;
  readonly source: string;
  readonly certainty: Certainty;
}

/** Limits that castability is judged by. */
export interface RuleSet {
  /** Small letters and hyphens. */
  readonly name: string;
  /** One line. */
  readonly summary: string;
  readonly limits: Readonly<Record<RuleName, RuleLimit>>;
}
