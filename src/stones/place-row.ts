/**
 * Rows round the band: on the seat's middle, at v, or on both rails; all round, over the pattern's cover, or from one angle to
 * another.
 */
import { AnnuletError } from "../base/errors.js";
import { radians, showLength, TOP } from "../base/units.js";
import { coverArc } from "../beads/cover-arc.js";
import { FULL_COVER } from "../design/repeat-numbers.js";
import type { StonePlaceOf } from "../design/stones/stone-place.js";
import type { Ground } from "./ground.js";
import { type PlacedRow, placeAlong, type RowAsk } from "./place-along.js";
import { type RoundLine, roundTrack } from "./track.js";

/**
 * @param where the place's own place in the document
 * @throws AnnuletError `no-rails`, `stone-off-seat`, `no-cover`, `bead-line-too-short`, `stones-row-full`, `too-many-stones`
 */
export function placeRow(
  place: StonePlaceOf<"row">,
  ask: Omit<RowAsk, "row" | "gap" | "count" | "to" | "turn" | "where">,
  ground: Ground,
  where: string,
): PlacedRow[] {
  return linesOf(place, ground, where).map((on, row) => {
    const arc = arcOf(place, on, ask.stone.length, ground, where);
    const track = roundTrack({ band: ground.band, wrap: ground.wrap, on, ...arc });
    return placeAlong(track, { ...ask, ...place, row, where });
  });
}

function linesOf({ along }: StonePlaceOf<"row">, ground: Ground, where: string): RoundLine["on"][] {
  if (along === "middle") return [{ v: 0 }];
  if (along === "rail") {
    requireRails(ground, where);
    return [{ rail: 0 }, { rail: 1 }];
  }
  requireOnSeat(along.v, ground, `${where}.along.v`);
  return [{ v: along.v }];
}

/** @throws AnnuletError `no-rails` */
function requireRails({ band }: Ground, where: string): void {
  if (band.rails !== undefined) return;
  throw new AnnuletError({
    code: "no-rails",
    message: "the band has no rails for stones to stand on",
    path: `${where}.along`,
    value: "rail",
    allowed: '"middle" or {"v": …}; "rail" on a channel band',
    hint: "choose a channel outside, or another line for the row",
  });
}

/** @throws AnnuletError `stone-off-seat` where v lies beyond the seat at some angle */
export function requireOnSeat(v: number, { band, wrap }: Ground, path: string): void {
  const half = Math.min(...band.looks.map((angle) => wrap.lineAt(angle).reach));
  if (Math.abs(v) <= half) return;
  throw new AnnuletError({
    code: "stone-off-seat",
    message: `stones there stand ${showLength(Math.abs(v) - half)} beyond the edge of the seat`,
    path,
    value: v,
    allowed: `within ±${showLength(half)}`,
    hint: "move them towards the middle of the band",
  });
}

/** Angles of the first and the last stone; the first alone, at the top, where the row goes all round. */
function arcOf(
  { over }: StonePlaceOf<"row">,
  on: RoundLine["on"],
  size: number,
  { band, wrap, pattern, coverStop }: Ground,
  where: string,
): Pick<RoundLine, "from" | "to"> {
  if (over === "round") return { from: TOP };
  if (typeof over === "object") return { from: radians(over.from), to: radians(over.to) };
  if (pattern === undefined || pattern.cover === FULL_COVER) {
    throw new AnnuletError({
      code: "no-cover",
      message: "the row should stop with the pattern, which needs one with a cover under 360",
      path: `${where}.over`,
      value: over,
      allowed: '"round" or {"from": …, "to": …}',
    });
  }
  const radiusAt = (angle: number) => {
    if ("rail" in on) return { w: 0, radius: band.sectionAt(angle).rails?.top ?? 0, outward: [0, 1] as const };
    const [w, radius] = wrap.lineAt(angle).point(on.v, 0);
    return { w, radius, outward: [0, 1] as const };
  };
  const stop = "rail" in on ? undefined : coverStop;
  const [from, to] = coverArc(radiusAt, { startAngle: wrap.startAngle, diameter: size, stop, path: where });
  return { from, to };
}
