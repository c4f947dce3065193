/**
 * Fields that several parts of the pattern share.
 */
import { z } from "zod";
import { type FriezeName, friezeGroups } from "../../base/frieze/symmetry.js";
import { drawingUnit } from "../path-schema.js";
import { PATTERN_DEFAULTS } from "./defaults.js";

const friezeNames = friezeGroups.map((group) => group.name) as [FriezeName, ...FriezeName[]];

export const lengthUnit = drawingUnit
  .default(PATTERN_DEFAULTS.region.unit)
  .describe("of path, shape or place: tile (1 wide, `aspect` high) or mm; default tile");

export const symmetry = z.enum(friezeNames).meta({ id: "symmetry" }).default(PATTERN_DEFAULTS.symmetry);
