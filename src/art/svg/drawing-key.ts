/**
 * The name under which a file's drawing is kept: one file may be taken in several parts.
 */
import type { TakeSpec } from "../../design/art/svg-take.js";

/** A file, and what of it counts. */
export interface TakenFile {
  readonly svg: string;
  readonly take?: TakeSpec | undefined;
}

export function drawingKey({ svg, take }: TakenFile): string {
  return take === undefined ? svg : `${svg} ${JSON.stringify(take)}`;
}
