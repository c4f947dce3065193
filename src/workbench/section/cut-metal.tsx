/**
 * The cut metal: outlined wide and hatched at 45°, with the band's middle as a centre line.
 */
import type { Point2 } from "../../index.js";
import type { SectionPlace } from "./dimension-layout.js";

/** How far a centre line goes beyond the metal, CSS pixels. */
const BEYOND = 10;

/** Between lines of the hatch, CSS pixels. */
const HATCH = 6;

/** Lines of one density on the screen. @param scale of the pattern, where what it fills is itself enlarged */
export function Hatch({
  id,
  turn = 45,
  scale = 1,
}: {
  readonly id: string;
  readonly turn?: number;
  readonly scale?: number;
}) {
  const patternTransform = `rotate(${turn}) scale(${scale})`;
  return (
    <pattern {...{ id, patternTransform }} width={HATCH} height={HATCH} patternUnits="userSpaceOnUse">
      <line class="hatch-line" x1={0} y1={0} x2={0} y2={HATCH} />
    </pattern>
  );
}

export function CutMetal({
  outline,
  boreRadius,
  place,
}: {
  readonly outline: readonly Point2[];
  readonly boreRadius: number;
  readonly place: SectionPlace;
}) {
  const points = outline.map(([w, r]) => place.at([w, r - boreRadius]).join(",")).join(" ");
  const [, middle] = place.at([0, 0]);
  return (
    <>
      <defs>
        <Hatch id="cut-hatch" />
      </defs>
      <polygon class="cut-ground" points={points} />
      <polygon class="cut" points={points} />
      <line class="centre-line" x1={place.left - BEYOND} x2={place.right + BEYOND} y1={middle} y2={middle} />
    </>
  );
}
