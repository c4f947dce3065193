/**
 * What a page of one ring tells beside the mesh, as plain JSON.
 */

import type { Alloy } from "../../measure/alloys/alloy.js";
import { lookOf } from "../../measure/alloys/look.js";
import type { Grid } from "../files/packed/grid.js";
import type { Report } from "../report/report.js";
import type { StonesInView } from "../stones/stones-in-view.js";
import { type StoneFacts, stoneFacts } from "./stone-facts.js";

/** A metal that the ring can be looked at in. */
export interface RingMetalFacts {
  readonly symbol: string;
  readonly name: string;
  /** Linear red, green, blue, 0 to 1. */
  readonly colour: readonly [number, number, number];
  readonly metal: boolean;
  /** Of the finished piece, g, by the smallest and largest published density; one number twice where none is published. */
  readonly grams: readonly [number, number];
}

export interface RingFacts {
  readonly name: string;
  /** As asked for, where it is a label of a system. */
  readonly size: { readonly system: string | undefined; readonly label: string | undefined };
  /** mm */
  readonly sizes: {
    readonly diameter: number;
    readonly width: number;
    readonly thickness: number;
    readonly overall: number;
  };
  /** Symbol of the metal that is shown first. */
  readonly material: string;
  readonly metals: readonly RingMetalFacts[];
  readonly grid: Grid;
  /** Undefined where the ring has none. */
  readonly stones?: StoneFacts | undefined;
}

/** What a page is told of a ring beside its report. */
export interface RingFactsSource {
  /** Symbol of the design's. */
  readonly material: string;
  readonly grid: Grid;
  readonly stones: StonesInView;
}

export function ringFacts(report: Report, { material, grid, stones }: RingFactsSource): RingFacts {
  const { width, thickness, overall } = report.band;
  const { diameter, system, label } = report.size;
  const metals = report.weights.rows.map(({ symbol, name, kind, finished, finishedRange }) => {
    const { colour, metal } = lookOf({ symbol, name, kind } as Alloy);
    return { symbol, name, colour, metal, grams: finishedRange ?? ([finished, finished] as const) };
  });
  return {
    name: report.name,
    size: { system, label },
    sizes: { diameter, width, thickness, overall },
    material,
    metals,
    grid,
    ...(stones.stones.length > 0 && { stones: stoneFacts(stones) }),
  };
}
