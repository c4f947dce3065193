/**
 * How far a strand's top is lifted along it: to the full lift where it passes over, by half a cosine on both sides.
 *
 * With p half the length along the strand that the other ribbon takes up (w / 2 sin α for a width w crossed at α), the top
 * is at its highest for p / 2 to either side of the crossing, and falls over the run. Where the strand next passes under
 * another, it is down again half way from that one's edge to its middle, so that it lies lower there than what passes
 * over by the whole lift in the middle and by half of it or more at the edges.
 */
import { AnnuletError } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import type { WeaveSpec } from "../../design/pattern/weave.js";

/** A crossing as its strand meets it, in the order along the strand. */
export interface Meeting {
  /** mm along the strand. */
  readonly s: number;
  readonly over: boolean;
  /** Half of what the other ribbon takes up of it, mm. */
  readonly half: number;
}

/** Where a strand is lifted: all of it within `level` of `s`, none of it `before` and `after` that. */
export interface Bridge {
  readonly s: number;
  readonly level: number;
  readonly before: number;
  readonly after: number;
}

/** Share of the half length over which a bridge is level, and from which on a strand that passes under is down. */
const LEVEL_SHARE = 0.5;

export interface BridgeOptions {
  readonly weave: Pick<WeaveSpec, "lift" | "run">;
  /** Ribbon width, mm. */
  readonly width: number;
  /** Name of the region. */
  readonly name: string;
  /** Where the weave stands in the document, for errors. */
  readonly path: string;
}

/**
 * The bridge over one crossing.
 *
 * @param neighbours the crossings before and behind it on the strand; undefined where the strand ends first
 * @throws AnnuletError `weave-too-tight` where there is no room to rise, with the room that there is
 */
export function bridgeAt(
  { s, half }: Meeting,
  neighbours: readonly [before: Meeting | undefined, after: Meeting | undefined],
  { weave: { lift, run }, width, name, path }: BridgeOptions,
): Bridge {
  const level = LEVEL_SHARE * half;
  const [before, after] = neighbours.map((next) => {
    const wanted = run ?? width;
    if (next === undefined || next.over) return wanted;
    const room = Math.abs(next.s - s) - level - LEVEL_SHARE * next.half;
    if (wanted <= room) return wanted;
    if (run === undefined && room >= lift) return room;
    const field = run === undefined ? "lift" : "run";
    throw new AnnuletError({
      code: "weave-too-tight",
      message: `${name} crosses over and under within ${showLength(Math.abs(next.s - s))}, which leaves it ${showLength(Math.max(0, room))} to come down`,
      path: `${path}.${field}`,
      value: run ?? lift,
      allowed: room > 0 ? `at most ${showLength(Math.floor(room * 1000) / 1000)}` : "crossings farther apart",
      hint: "make the ribbons narrower, their crossings steeper or farther apart, or the lift lower",
    });
  });
  return { s, level, before, after };
}

/** The share of the lift at a place along a strand, 0 to 1. */
export function shareAt(bridges: readonly Bridge[], s: number): number {
  let most = 0;
  for (const { s: top, level, before, after } of bridges) {
    const away = Math.abs(s - top) - level;
    const run = s < top ? before : after;
    if (away <= 0) return 1;
    if (away < run) most = Math.max(most, (1 + Math.cos((Math.PI * away) / run)) / 2);
  }
  return most;
}
