/**
 * Scales of enlargement by ISO 5455 (from memory): 50:1, 20:1, 10:1, 5:1, 2:1, and true size. 50:1 and 20:1 would show a
 * maker more than the hand can follow.
 */
const SCALES = [10, 5, 2, 1] as const;

/** The largest scale at which a thing of a size, mm, has room, mm on paper; true size where none has. */
export function scaleFor(size: readonly [number, number], room: readonly [number, number]): number {
  return SCALES.find((scale) => scale * size[0] <= room[0] && scale * size[1] <= room[1]) ?? 1;
}

/** A scale as drawings write it. */
export function showScale(scale: number): string {
  return `${scale}:1`;
}
