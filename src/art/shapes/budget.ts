/**
 * Limits on what one shape may come to, so that nested copies made to stall are refused at once. All chosen: far above
 * drawings made for a ring. Times were measured on 2 shared cores, Node 20.
 */
import { AnnuletError } from "../../base/errors.js";
import type { GridRegion } from "../../flat/polygons.js";
import { nearPairs } from "../../flat/tangled.js";

const SHAPE_LIMITS = {
  /** Deepest nesting, named shapes included. */
  depth: 24,
  /** Most nodes drawn; a named shape counts once. */
  nodes: 5_000,
  /** Most corners that pass through nodes, counted in each. */
  points: 150_000,
  /** Most open lines in what one shape comes to: each is compared with the others' images, to join their ends. */
  lines: 1_000,
  /** Most pairs of edges that may lie near enough to cross, counted in each node. */
  pairs: 100_000,
} as const;

/** Counts what the nodes of a pattern's shapes come to. */
export class Budget {
  #nodes = 0;
  #points = 0;
  #pairs = 0;

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

  /** Refuses so many copies before they are made. */
  allow(paths: GridRegion, copies: number, where: string): void {
    if (this.#points + copies * cornersOf(paths) > SHAPE_LIMITS.points) throw tooManyCorners(where);
  }

  /** Refuses too many open lines in a shape. */
  allowLines(lines: GridRegion, where: string): void {
    const { lines: most } = SHAPE_LIMITS;
    if (lines.length > most) throw tooComplex(`comes to ${lines.length} open lines`, `at most ${most}`, where);
  }

  /** Corners have been drawn or are about to be worked on, `times` over. */
  spend(paths: GridRegion, where: string, times = 1): void {
    this.#points += times * cornersOf(paths);
    if (this.#points > SHAPE_LIMITS.points) throw tooManyCorners(where);
  }

  /** Paths are about to be united or cut. */
  spendUnion(paths: GridRegion, where: string): void {
    this.spend(paths, where);
    this.#pairs += nearPairs(paths, SHAPE_LIMITS.pairs - this.#pairs);
    if (this.#pairs <= SHAPE_LIMITS.pairs) return;
    throw tooComplex(
      "is too tangled: its lines lie across each other",
      `at most ${SHAPE_LIMITS.pairs} near pairs, counted in each step`,
      where,
    );
  }
}

function cornersOf(paths: GridRegion): number {
  return paths.reduce((sum, path) => sum + path.length, 0);
}

function tooManyCorners(where: string): AnnuletError {
  return tooComplex(
    `comes to more than ${SHAPE_LIMITS.points} corners, counted in each step`,
    `at most ${SHAPE_LIMITS.points}`,
    where,
  );
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
