/**
 * Which part of a cross-section each side of its polyline belongs to: the seat by its index, all else by the way that it faces.
 */
import type { Point2 } from "../../base/math/point.js";
import type { Profile } from "./profile.js";

/** `outside` is what lies beside a seat without rails: bevels, slopes, rounded edges. */
export type SectionPart = "seat" | "outside" | "rail" | "step" | "side" | "bore";

/** What is looked at of a cross-section. */
export type PartedSection = Pick<Profile, "polyline" | "seatSpan" | "rails" | "ledges">;

/** A side that leans less than this from a direction faces it: 45°, where a rounded edge passes from one part to the other. */
const FACES = Math.SQRT1_2;

/** A ledge's side lies at its radius to within this, mm: rounding and its rounded corner. */
const ON_LEDGE = 0.05;

/** One part for each side of the polyline, that from point i to the next. */
export function sectionParts(section: PartedSection): SectionPart[] {
  const { polyline, seatSpan } = section;
  const [first, last] = seatSpan;
  return polyline.map((from, i) => {
    if (i >= first && i < last) return "seat";
    return partBeside(section, from, polyline[(i + 1) % polyline.length]);
  });
}

/** The part of a side that is none of the seat. The polyline runs counter-clockwise, so the outside is on a side's right. */
function partBeside({ rails, ledges }: PartedSection, [w0, r0]: Point2, [w1, r1]: Point2): SectionPart {
  const length = Math.hypot(w1 - w0, r1 - r0);
  const [out, up] = [(r1 - r0) / length, (w0 - w1) / length];
  if (up < -FACES) return "bore";
  const [w, r] = [(w0 + w1) / 2, (r0 + r1) / 2];
  const away = out * Math.sign(w);
  const ledge = ledges?.[w < 0 ? 0 : 1].radius;
  const onLedge = ledge !== undefined && Math.abs(w) > 0 && r > ledge - ON_LEDGE;
  if (away > FACES) return onLedge && r > ledge + ON_LEDGE ? "step" : "side";
  if (onLedge && r < ledge + ON_LEDGE) return "step";
  return rails === undefined ? "outside" : "rail";
}

/** The sides at which a part begins or ends: places in the polyline. A part that is all of it has none. */
export function partEnds(parts: readonly SectionPart[], wanted: readonly SectionPart[]): number[] {
  const isWanted = parts.map((part) => wanted.includes(part));
  return isWanted.flatMap((is, i) => (is === isWanted[(i + parts.length - 1) % parts.length] ? [] : [i]));
}
