/**
 * How the ring is shown: what is cut, drawn over it and measured. It belongs to the view, not to the document.
 */
import { type Signal, signal } from "@preact/signals";
import type { Dimension, Dress } from "../../entries/view.js";
import type { Cut } from "./cut-plane.js";

/** A place on the ring, mm. */
export type Place = readonly [number, number, number];

export interface RingState {
  readonly cut: Signal<Cut>;
  readonly finish: Signal<NonNullable<Dress["finish"]>>;
  readonly dimensions: Signal<boolean>;
  readonly findings: Signal<boolean>;
  readonly stones: Signal<boolean>;
  /** Places of the distance that is measured: none, one or two; undefined where nothing is measured. */
  readonly measured: Signal<readonly Place[] | undefined>;
  /** Why no picture is seen. */
  readonly trouble: Signal<"none" | "no-webgl" | "lost">;
}

export function newRingState(): RingState {
  return {
    cut: signal<Cut>({ kind: "none" }),
    finish: signal<NonNullable<Dress["finish"]>>("polished"),
    dimensions: signal(false),
    findings: signal(true),
    stones: signal(true),
    measured: signal<readonly Place[] | undefined>(undefined),
    trouble: signal<"none" | "no-webgl" | "lost">("none"),
  };
}

/** The next place: the second after the first, the first of another distance after two. */
export function addPlace(places: readonly Place[], place: Place): readonly Place[] {
  return places.length === 1 ? [places[0], place] : [place];
}

/** mm between the two places; undefined before there are two. */
export function distanceOf(places: readonly Place[]): number | undefined {
  if (places.length < 2) return undefined;
  const [[ax, ay, az], [bx, by, bz]] = places;
  return Math.hypot(bx - ax, by - ay, bz - az);
}

/** The distance as a dimension line; none before there are two places, or where both are one. */
export function measuredLines(places: readonly Place[], write: (length: number) => string): readonly Dimension[] {
  const distance = distanceOf(places);
  if (distance === undefined || distance === 0) return [];
  return [{ from: places[0], to: places[1], text: `${write(distance)} mm`, through: true }];
}
