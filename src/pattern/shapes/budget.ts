/**
 * Limits on what one shape may come to, so that nested copies made to stall are refused at once. All chosen: far above
 * drawings made for a ring. Times were measured on 2 shared cores, Node 20.
 */
import { AnnuletError } from "../../errors.js";
import type { GridRegion } from "../polygons.js";
import { isTangled } from "../tangled.js";

export const SHAPE_LIMITS = {
  /** Deepest nesting, named shapes included. */
  depth: 24,
  /** Most nodes drawn; a named shape counts once. */
  nodes: 5_000,
  /** Most corners that pass through the nodes, all together. */
  points: 200_000,
  /** Most pairs of edges, in one node, that may lie near enough to cross. */
  pairs: 200_000,
} as const;

/** Counts what the nodes of a document's shapes come to. */
export class Budget {
  #nodes = 0;
  #points = 0;

  /** A node is entered, `depth` nodes deep. */
  enter(depth: number, where: string): void {
    if (depth > SHAPE_LIMITS.depth) {
      throw tooComplex(
        `is nested more than ${SHAPE_LIMITS.depth} deep`,
        `at most ${SHAPE_LIMITS.depth} shapes deep`,
        where,
      );
    }
    this.#nodes++;
    if (this.#nodes > SHAPE_LIMITS.nodes) {
      throw tooComplex(`draws more than ${SHAPE_LIMITS.nodes} parts`, `at most ${SHAPE_LIMITS.nodes}`, where);
    }
  }

  /** Corners are about to be worked on, `times` over. */
  spend(rings: GridRegion, where: string, times = 1): void {
    for (const ring of rings) this.#points += ring.length * times;
    if (this.#points <= SHAPE_LIMITS.points) return;
    throw tooComplex(
      `comes to more than ${SHAPE_LIMITS.points} corners, counted in each step`,
      `at most ${SHAPE_LIMITS.points}`,
      where,
    );
  }

  /** Rings are about to be united. */
  spendUnion(rings: GridRegion, where: string): void {
    this.spend(rings, where);
    if (!isTangled(rings, SHAPE_LIMITS.pairs)) return;
    throw tooComplex(
      "is too tangled: its lines lie across each other",
      `at most ${SHAPE_LIMITS.pairs} near pairs`,
      where,
    );
  }
}

function tooComplex(message: string, allowed: string, where: string): AnnuletError {
  return new AnnuletError({
    code: "shape-too-complex",
    message: `the shape ${message}`,
    path: where,
    allowed,
    hint: "draw it more simply: a tile is a few millimetres wide",
  });
}
