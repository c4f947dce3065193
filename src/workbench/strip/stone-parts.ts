/**
 * What of a group of stones can be taken hold of on the strip: its place in the tile, its line, its row across the band, its
 * angles round it.
 */
import type { Path } from "../state/json-text.js";
import type { StripLayout } from "./strip-layout.js";

/** A place round the band: a single stone, or an end of a row. */
export interface SpotPart {
  readonly kind: "spot";
  /** Of the angle. */
  readonly at: Path;
  /** Degrees on the ring. */
  readonly angle: number;
  /** mm from the seat's middle, and where that stands; undefined where it is not moved with the angle. */
  readonly v: number;
  readonly vAt: Path | undefined;
}

/** A circle round the band that carries a row; `{v}` is written as a whole where the row stands on the middle by name. */
export interface RowPart {
  readonly kind: "row";
  readonly at: Path;
  readonly v: number;
}

type Part = Readonly<Record<string, unknown>>;

/** Of the places that the tile's own art does not have. @param at of `place` in the document */
export function roundParts(place: Part, at: Path): (SpotPart | RowPart)[] {
  if (place.form === "single") {
    const { angle, v } = place;
    return [{ kind: "spot", at: [...at, "angle"], angle: numberOr(angle, TOP), v: numberOr(v, 0), vAt: [...at, "v"] }];
  }
  if (place.form !== "row") return [];
  const { along = "middle", over } = place;
  const v = along === "middle" ? 0 : numberIn(along, "v");
  const ends = (["from", "to"] as const).flatMap((key): SpotPart[] => {
    const angle = numberIn(over, key);
    return angle === undefined ? [] : [{ kind: "spot", at: [...at, "over", key], angle, v: v ?? 0, vAt: undefined }];
  });
  return [...(v === undefined ? [] : [{ kind: "row", at: [...at, "along"], v } as const]), ...ends];
}

/** The top of the ring, degrees. */
const TOP = 90;

function numberOr(value: unknown, otherwise: number): number {
  return typeof value === "number" ? value : otherwise;
}

function numberIn(value: unknown, key: string): number | undefined {
  const found = typeof value === "object" && value !== null ? (value as Part)[key] : undefined;
  return typeof found === "number" ? found : undefined;
}

/** Degrees in a circle, and the most that the document takes either way. */
const ROUND = 360;

/** Steps to which angles are written, degrees: snapped, and by keys or without snapping. Chosen. */
const STEPS = { snapped: 1, free: 0.1 } as const;

/** The angle of a place of the strip as the document has it: that of the turns which lies nearest to what stood there. */
export function angleNear(
  { start, around }: Pick<StripLayout, "start" | "around">,
  u: number,
  before: number,
  snapped: boolean,
): number {
  const angle = start + (ROUND * u) / around;
  const turned = angle + ROUND * Math.round((before - angle) / ROUND);
  const step = snapped ? STEPS.snapped : STEPS.free;
  const written = Number((Math.round(turned / step) * step).toFixed(1));
  if (written > ROUND) return written - ROUND;
  return written < -ROUND ? written + ROUND : written;
}
