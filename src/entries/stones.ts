/** Stones alone, as `annulet/stones`: gems, sizes and weights, facets as meshes, without the design's schema. */

export type { Certainty } from "../base/certainty.js";
export { gems } from "../gems/catalogue.js";
export type { Gem, HeatCare, Told, UltrasonicCare } from "../gems/gem.js";
export type { ProportionsInput, ProportionsSpec } from "../gems/proportions.js";
export type { CutName, Proportions, Stone, StoneHeights } from "../gems/stone.js";
export { type StoneMeshOptions, stoneMesh } from "../gems/stone-mesh.js";
export { type StoneFacts, type StoneInput, type StoneOptions, stoneOf } from "../gems/stone-of.js";
export type { UsedFormula } from "../gems/weight.js";
