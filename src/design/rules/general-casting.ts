/**
 * What one casting house asks for in general.
 */
import type { RuleSet } from "./rule-set.js";
import {
  castingHouse,
  commonPractice,
  finishingGuide,
  flushGuide,
  girdleGuide,
  paveGuide,
  sectionGuide,
} from "./sources.js";

export const generalCasting: RuleSet = {
  name: "general-casting",
  summary: "the least that one casting house takes",
  limits: {
    shank: castingHouse(0.5, "error"),
    wall: castingHouse(0.4, "error"),
    side: castingHouse(0.4, "warning"),
    heavy: sectionGuide(4, "note"),
    relief: finishingGuide(0.15, "warning"),
    engraving: finishingGuide(0.15, "warning"),
    line: castingHouse(0.4, "warning"),
    gap: castingHouse(0.2, "warning"),
    island: castingHouse(0.4, "warning"),
    post: commonPractice(2, "warning"),
    groove: castingHouse(0.2, "warning"),
    "groove-depth": castingHouse(1, "warning"),
    hole: castingHouse(0.2, "warning"),
    "hole-depth": castingHouse(1, "warning"),
    bead: commonPractice(0.3, "warning"),
    corner: castingHouse(0.125, "note"),
    edge: castingHouse(0.125, "warning"),
    marks: castingHouse(0.2, "warning"),
    bridge: commonPractice(0, "warning"),
    undercut: commonPractice(5, "note"),
    girdles: girdleGuide(0.1, "warning"),
    web: commonPractice(0.2, "warning"),
    under: castingHouse(0.4, "warning"),
    beside: paveGuide(0.5, "warning"),
    bezel: castingHouse(0.4, "warning"),
    ledge: commonPractice(0.15, "warning"),
    prong: castingHouse(0.4, "warning"),
    grain: commonPractice(0.2, "warning"),
    held: commonPractice(3, "warning"),
    level: commonPractice(0.2, "warning"),
    unfit: flushGuide(0, "warning"),
  },
};
