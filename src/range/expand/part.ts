/**
 * A part of a range, for several machines that each make one: groups of variants go round like cards that are dealt.
 */
import { AnnuletError } from "../../base/errors.js";
import type { PlainObject } from "../../design/plain.js";
import type { FaultyVariant, OpenPlan, Variant } from "./open-plan.js";

/** The `part`th of `of` parts. */
export interface Part {
  /** From 1. */
  readonly part: number;
  readonly of: number;
}

/** Most parts. Chosen: as many as a scheduler's array of jobs has at most. */
const MOST_PARTS = 10_000;

/** Most variants of a group, so that one that is stuck keeps few waiting. Chosen. */
export const LARGEST_GROUP = 16;

/** Variants that are made one after the other. */
export type Group = readonly (Variant | FaultyVariant)[];

/** @param text `3/8` @throws AnnuletError `option-invalid` */
export function readPart(text: string): Part {
  const [, part, of] = (/^(\d{1,6})\/(\d{1,6})$/.exec(text) ?? []).map(Number);
  if (part >= 1 && part <= of && of <= MOST_PARTS) return { part, of };
  throw new AnnuletError({
    code: "option-invalid",
    message: "is no part of a range",
    path: "part",
    value: text,
    allowed: `i/n, with i from 1 to n, n at most ${MOST_PARTS}`,
  });
}

/**
 * Variants in groups that are best made one after the other: they differ in their material and name alone, so the
 * mesh is the same.
 *
 * @param wanted which groups; default all
 */
export function* groupsOf(open: OpenPlan, wanted?: Part): Generator<Group, void, void> {
  let [group, shape, index]: [(Variant | FaultyVariant)[], string, number] = [[], "", 0];
  const isWanted = () => wanted === undefined || index % wanted.of === wanted.part - 1;
  for (let number = 1; number <= open.count; number++) {
    const variant = open.tryVariant(number);
    const own = "document" in variant ? shapeOf(variant.document) : "";
    if (group.length > 0 && (own !== shape || group.length >= LARGEST_GROUP)) {
      if (isWanted()) yield group;
      group = [];
      index++;
    }
    group.push(variant);
    shape = own;
  }
  if (group.length > 0 && isWanted()) yield group;
}

/** What a mesh depends on, as text. */
function shapeOf(document: PlainObject): string {
  const { material: _, name: __, ...shape } = document;
  return JSON.stringify(shape);
}
