/**
 * For casters who are not known, and rings that are worn daily.
 */
import type { RuleSet } from "./rule-set.js";
import {
  carefulHouse,
  castingHouse,
  commonPractice,
  detailGuide,
  flushGuide,
  girdleGuide,
  seatGuide,
  sectionGuide,
  supplierSheet,
  wearGuide,
} from "./sources.js";

export const conservative: RuleSet = {
  name: "conservative",
  summary: "for a caster who is not known, and a ring worn daily",
  limits: {
    shank: wearGuide(1.5, "warning"),
    wall: carefulHouse(0.8, "error"),
    side: carefulHouse(0.8, "warning"),
    heavy: sectionGuide(4, "warning"),
    relief: detailGuide(0.3, "warning"),
    engraving: carefulHouse(0.5, "warning"),
    line: carefulHouse(0.6, "warning"),
    gap: carefulHouse(0.3, "warning"),
    island: carefulHouse(0.6, "warning"),
    post: commonPractice(1, "warning"),
    groove: carefulHouse(0.3, "warning"),
    "groove-depth": castingHouse(1, "warning"),
    hole: carefulHouse(0.3, "warning"),
    "hole-depth": castingHouse(1, "warning"),
    bead: castingHouse(0.4, "warning"),
    corner: castingHouse(0.125, "warning"),
    edge: castingHouse(0.125, "warning"),
    marks: carefulHouse(0.3, "warning"),
    bridge: commonPractice(0, "warning"),
    undercut: commonPractice(2, "note"),
    girdles: girdleGuide(0.1, "warning"),
    web: seatGuide(0.3, "warning"),
    under: supplierSheet(0.5, "warning"),
    beside: carefulHouse(0.8, "warning"),
    bezel: supplierSheet(0.5, "warning"),
    ledge: seatGuide(0.3, "warning"),
    prong: carefulHouse(0.6, "warning"),
    grain: commonPractice(0.3, "warning"),
    held: commonPractice(4, "warning"),
    level: commonPractice(0.1, "warning"),
    unfit: flushGuide(0, "warning"),
  },
};
