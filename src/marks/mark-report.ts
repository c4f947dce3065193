/**
 * What the report says of lettering and of the hallmark's field.
 */
import type { HallmarkSpec, LetteringSpec } from "../design/marks.js";
import { MARK_DEFAULTS } from "../design/marks.js";
import type { MarkDesign, Marks } from "./marks.js";

/** One mark; lengths in mm. */
export interface MarkReport {
  readonly kind: "lettering" | "hallmark";
  /** What is written; null of a field. */
  readonly text: string | null;
  /** File or package that the font comes from; null of a field. */
  readonly font: string | null;
  readonly at: LetteringSpec["at"];
  /** Which rail; null elsewhere. */
  readonly side: "+z" | "-z" | null;
  /** Degrees on the ring of its middle. */
  readonly angle: number;
  /** Of its middle from the surface's middle, + towards +z. */
  readonly v: number;
  /** A plain field is level with its surface. */
  readonly mode: "raised" | "sunk" | "plain";
  /** Above or below the surface. */
  readonly depth: number;
  /** Of capitals, or of the field across the band. */
  readonly height: number;
  /** Along the surface, as laid out: the whole text, or the field. */
  readonly length: number;
}

/** All marks in the order of the document, the hallmark's field last. */
export function reportMarks({ lettering, hallmark }: MarkDesign, { marks, field }: Marks): MarkReport[] {
  const texts = field?.mark === undefined ? marks : marks.slice(1);
  const told = lettering.map((spec, i): MarkReport => {
    const { mode, depth, relief } = spec;
    const [low, high] = texts[i].box.u;
    return {
      kind: "lettering",
      text: spec.text,
      font: spec.font,
      ...placeOf(spec),
      mode,
      depth: mode === "sunk" ? (depth ?? MARK_DEFAULTS.lettering.depth) : (relief ?? MARK_DEFAULTS.lettering.relief),
      height: spec.height,
      length: high - low,
    };
  });
  if (hallmark === undefined) return told;
  const { depth, height, width } = hallmark;
  const mode = depth > 0 ? "sunk" : "plain";
  const own: MarkReport = {
    kind: "hallmark",
    text: null,
    font: null,
    ...placeOf(hallmark),
    mode,
    depth,
    height,
    length: width,
  };
  return [...told, own];
}

function placeOf({
  at,
  side,
  angle,
  v,
}: LetteringSpec | HallmarkSpec): Pick<MarkReport, "at" | "side" | "angle" | "v"> {
  return { at, side: at === "rail" ? (side ?? MARK_DEFAULTS.side) : null, angle, v };
}
