/**
 * The catalogue as plain data: what programs print and editors offer. Read from the schemas, so that it cannot differ.
 */

import { z } from "zod";
import type { FriezeName } from "../../base/frieze/symmetry.js";
import { motifFacts } from "./catalogue.js";
import type { MotifAspects, MotifFacts, MotifRibbon } from "./facts.js";

/** A number that shapes a motif. */
export interface MotifParameterEntry {
  readonly name: string;
  /** What it is, with its unit, range and default. */
  readonly description: string;
  readonly least: number;
  readonly most: number;
  readonly default: number;
  /** Whole numbers only, multiples of this; left out where any number will do. */
  readonly step?: number;
}

/** A motif of the catalogue. */
export interface MotifEntry {
  /** By which documents call it. */
  readonly name: string;
  /** What one sees. */
  readonly summary: string;
  /** The richest frieze group that a pattern of it alone may have. */
  readonly group: FriezeName;
  /** Of lines that cross: the richest group under which they may be woven, in words; left out where none cross. */
  readonly woven?: string;
  /** Heights of the tile over its width. */
  readonly aspect: MotifAspects;
  /** The ribbon that its lines are meant for; left out where it is filled. */
  readonly ribbon?: MotifRibbon;
  readonly parameters: readonly MotifParameterEntry[];
}

const facts: readonly MotifFacts[] = motifFacts;

/**
 * Every motif of the catalogue with its parameters.
 *
 * @example
 * const [{ name, parameters }] = listMotifs();
 * console.log(name, parameters.map((one) => one.description));
 */
export function listMotifs(): MotifEntry[] {
  return facts.map(({ name, summary, group, woven, aspect, ribbon, parameters }) => ({
    name,
    summary,
    group,
    ...(woven === undefined ? {} : { woven }),
    aspect,
    ...(ribbon === undefined ? {} : { ribbon }),
    parameters: parametersOf(parameters),
  }));
}

function parametersOf(parameters: MotifFacts["parameters"]): MotifParameterEntry[] {
  const { properties = {} } = z.toJSONSchema(parameters, { io: "input" });
  return Object.entries(properties).map(([name, field]) => {
    const {
      description = "",
      minimum,
      maximum,
      default: standard,
      type,
      multipleOf,
    } = field as z.core.JSONSchema.Schema;
    return {
      name,
      description,
      least: minimum as number,
      most: maximum as number,
      default: standard as number,
      ...(type === "integer" ? { step: multipleOf ?? 1 } : {}),
    };
  });
}
