/**
 * How large the files that a design names may be, by the endings of their names: far above what art for a ring takes, low enough
 * that a file made to stall is refused before it is read. All are chosen, not taken from a source.
 */

/** Most bytes. */
export const ART_BYTES = {
  /** Latin fonts take some 0.1 MB, the largest Han fonts some 20. */
  font: 30_000_000,
  image: 10_000_000,
  drawing: 5_000_000,
} as const;

const ENDINGS: readonly (readonly [ending: RegExp, bytes: number])[] = [
  [/\.(ttf|otf|woff2?|ttc)$/i, ART_BYTES.font],
  [/\.png$/i, ART_BYTES.image],
  [/\.svgz?$/i, ART_BYTES.drawing],
];

/** Most bytes that a file may have to be art; undefined where its name is none of art. */
export function artLimit(name: string): number | undefined {
  return ENDINGS.find(([ending]) => ending.test(name))?.[1];
}
