/**
 * What the program's exit code tells. The program's first module needs it, so nothing else is loaded with it.
 */

export const EXIT = {
  /** All that was asked for is there. */
  done: 0,
  /** The design, or the mesh that was inspected, fails a check. */
  check: 1,
  /** Wrong usage, a wrong document, or a file that cannot be read or written. */
  usage: 2,
  /** A fault of annulet itself. */
  internal: 3,
} as const;
