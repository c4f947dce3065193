/**
 * What the cross-section and the strip share: where they look, how large they are, which lane and part is shown.
 */
import { type Signal, signal } from "@preact/signals";
import type { TilePart } from "../../index.js";
import type { AnswerOf } from "../engine/answers.js";
import type { Bench } from "../state/bench.js";
import type { FlatView, ScreenPoint } from "./flat-view.js";

/** The flat tile as the worker posts it. */
export type ShownTile = NonNullable<AnswerOf<"tile">>;

export interface SharedView {
  readonly view: Signal<FlatView>;
  /** Size of the strip's drawing, CSS pixels. */
  readonly size: Signal<ScreenPoint>;
  /** The lane that is shown; undefined for the lowest. */
  readonly lane: Signal<string | undefined>;
  readonly part: Signal<TilePart>;
  /** Whether something is being pulled: the view then stays, so that it keeps under the pointer. */
  readonly pulling: Signal<boolean>;
  /** Whether the next press on the strip puts a stone there. */
  readonly addsStone: Signal<boolean>;
}

const shared = new WeakMap<Bench, SharedView>();

/** One for each bench. */
export function sharedView(bench: Bench): SharedView {
  const known = shared.get(bench);
  if (known !== undefined) return known;
  const made: SharedView = {
    view: signal<FlatView>({ scale: 20, u: 0, v: 0, hold: "band" }),
    size: signal<ScreenPoint>([0, 0]),
    lane: signal(undefined),
    part: signal<TilePart>("tile"),
    pulling: signal(false),
    addsStone: signal(false),
  };
  shared.set(bench, made);
  return made;
}
