/**
 * Sizes of the stones of a row that graduates: from its middle to its ends, or from a closed row's first stone to the one
 * opposite.
 */
import type { Stone } from "../gems/stone.js";

/** The stone at a share of the row, 0 to 1; beyond that an open row keeps its ends' and a closed one comes again. */
export type StoneAt = (share: number) => Stone;

/** @param to the size at an open row's ends, half way round a closed one, mm; undefined where all are alike */
export function stonesAlong(stone: Stone, to: number | undefined, closed: boolean): StoneAt {
  if (to === undefined || to === stone.length) return () => stone;
  return (share) => {
    const inside = closed ? share - Math.floor(share) : Math.min(1, Math.max(0, share));
    const fromMiddle = Math.abs(2 * inside - 1);
    return grown(stone, 1 + (to / stone.length - 1) * (closed ? 1 - fromMiddle : fromMiddle));
  };
}

/** A stone so many times as large. */
export function grown(stone: Stone, times: number): Stone {
  const { length, width, narrow } = stone;
  return {
    ...stone,
    length: length * times,
    width: width * times,
    ...(narrow === undefined ? {} : { narrow: narrow * times }),
  };
}
