/**
 * What a fine print in castable resin holds; the metal may not fill it all.
 */
import type { RuleSet } from "./rule-set.js";
import {
  castingHouse,
  commonPractice,
  finishingGuide,
  flushGuide,
  girdleGuide,
  resinGuide,
  sectionGuide,
} from "./sources.js";

export const fineResinPrint: RuleSet = {
  name: "fine-resin-print",
  summary: "what a fine print in castable resin holds; the metal may not",
  limits: {
    shank: castingHouse(0.4, "error"),
    wall: resinGuide(0.3, "error"),
    side: resinGuide(0.3, "warning"),
    heavy: sectionGuide(4, "note"),
    relief: finishingGuide(0.15, "note"),
    engraving: finishingGuide(0.15, "note"),
    line: resinGuide(0.3, "warning"),
    gap: castingHouse(0.2, "warning"),
    island: resinGuide(0.3, "warning"),
    post: commonPractice(3, "warning"),
    groove: castingHouse(0.2, "warning"),
    "groove-depth": commonPractice(3, "warning"),
    hole: castingHouse(0.2, "warning"),
    "hole-depth": commonPractice(3, "warning"),
    bead: resinGuide(0.3, "warning"),
    corner: castingHouse(0.125, "note"),
    edge: castingHouse(0.125, "note"),
    marks: castingHouse(0.2, "warning"),
    bridge: commonPractice(0, "warning"),
    undercut: commonPractice(10, "note"),
    girdles: girdleGuide(0.1, "note"),
    web: commonPractice(0.15, "warning"),
    under: resinGuide(0.3, "warning"),
    beside: resinGuide(0.3, "warning"),
    bezel: resinGuide(0.3, "warning"),
    ledge: commonPractice(0.1, "warning"),
    prong: resinGuide(0.3, "warning"),
    grain: commonPractice(0.2, "note"),
    held: commonPractice(2, "warning"),
    level: commonPractice(0.5, "note"),
    unfit: flushGuide(0, "warning"),
  },
};
