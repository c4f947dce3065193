/**
 * A motion of the flat seat: along it, across it, turned end for end where it is mirrored, and upside down where it is
 * flipped.
 */

/**
 * Where a place goes: u becomes `u` + u, or `u` − u where it is mirrored; v becomes `v` + v, or `v` − v where it is
 * flipped. mm.
 */
export interface Motion {
  readonly u: number;
  readonly v: number;
  readonly mirrored: boolean;
  readonly flipped: boolean;
}

/** The motion that moves nothing. */
export const STAY: Motion = { u: 0, v: 0, mirrored: false, flipped: false };

/** Where a motion takes u, mm. */
export function movedAlong(u: number, { u: by, mirrored }: Motion): number {
  return mirrored ? by - u : by + u;
}

/** Where a motion takes v, mm. */
export function movedAcross(v: number, { v: by, flipped }: Motion): number {
  return flipped ? by - v : by + v;
}

/** Whether a motion turns what runs counter-clockwise so that it runs clockwise. */
export function turnsOver({ mirrored, flipped }: Motion): boolean {
  return mirrored !== flipped;
}

/** Where a motion takes what lies between two u, mm, the lower one first. */
export function movedSpan(
  [low, high]: readonly [number, number],
  motion: Motion,
): readonly [low: number, high: number] {
  const [from, to] = [movedAlong(low, motion), movedAlong(high, motion)];
  return motion.mirrored ? [to, from] : [from, to];
}

/** The motion that takes back another. */
export function inverseOf({ u, v, mirrored, flipped }: Motion): Motion {
  return { u: mirrored ? u : -u, v: flipped ? v : -v, mirrored, flipped };
}

/** Both motions as one, the first one first. */
export function inTurn(first: Motion, second: Motion): Motion {
  return {
    u: movedAlong(first.u, second),
    v: movedAcross(first.v, second),
    mirrored: first.mirrored !== second.mirrored,
    flipped: first.flipped !== second.flipped,
  };
}
