/**
 * What one casting house asks for in general.
 */
import type { RuleSet } from "./rule-set.js";
import { castingHouse, commonPractice } from "./sources.js";

export const generalCasting: RuleSet = {
  name: "general-casting",
  summary: "the least that one casting house takes",
  limits: {
    shank: castingHouse(0.5, "error"),
    wall: castingHouse(0.4, "error"),
    line: castingHouse(0.4, "warning"),
    gap: castingHouse(0.2, "warning"),
    island: castingHouse(0.4, "warning"),
    groove: castingHouse(0.2, "warning"),
    "groove-depth": commonPractice(2, "warning"),
    hole: castingHouse(0.2, "warning"),
    bead: commonPractice(0.3, "warning"),
    corner: castingHouse(0.125, "note"),
  },
};
