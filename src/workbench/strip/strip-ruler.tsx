/**
 * Degrees above the band and millimetres below it.
 */
import { sayNumber } from "../words/language.js";
import { type FlatView, type ScreenPoint, toFlat, toScreen } from "./flat-view.js";
import { lettersSize } from "./letters-size.js";
import { decimalsOf, rulerMarks } from "./ruler-ticks.js";
import { angleAt, type StripLayout } from "./strip-layout.js";

/** From the ruler to the band, the length of a mark, from it to its number's foot; CSS pixels where letters are 16 of them high. */
const OFF = 10;
const MARK = 5;
const BELOW = 17;
const ABOVE = 8;

/** Rulers stay in sight, this far from the view's own edges: what stands there has room. */
const LEAST = { above: 48, below: 40 } as const;

const ROUND = 360;

interface Seen {
  readonly layout: StripLayout;
  readonly view: FlatView;
  readonly size: ScreenPoint;
}

export function StripRuler({ layout, view, size }: Seen) {
  const { from, to, around, start, bandWidth } = layout;
  const seen = [toFlat(view, size, [0, 0])[0], toFlat(view, size, [size[0], 0])[0]];
  const [low, high] = [Math.max(from, seen[0]), Math.min(to, seen[1])];
  const letters = lettersSize();
  const above = Math.max(LEAST.above * letters, toScreen(view, size, [0, bandWidth / 2])[1] - OFF * letters);
  const below = Math.min(size[1] - LEAST.below * letters, toScreen(view, size, [0, -bandWidth / 2])[1] + OFF * letters);
  const x = (u: number): number => toScreen(view, size, [u, 0])[0];
  const length = rulerMarks(low, high, view.scale, "mm");
  const degree = around / ROUND;
  const round = rulerMarks(start + low / degree, start + high / degree, view.scale * degree, "degrees");
  return (
    <g class="ruler">
      {length.marks.map((u) => (
        <g key={`mm ${u}`}>
          <line x1={x(u)} x2={x(u)} y1={below} y2={below + MARK * letters} />
          <text x={x(u)} y={below + BELOW * letters}>
            {sayNumber(u, decimalsOf(length.step))}
          </text>
        </g>
      ))}
      {round.marks.map((angle) => {
        const u = (angle - start) * degree;
        return (
          <g key={`degrees ${angle}`}>
            <line x1={x(u)} x2={x(u)} y1={above} y2={above - MARK * letters} />
            <text x={x(u)} y={above - ABOVE * letters}>
              {`${sayNumber(Math.round(angleAt(layout, u) * 10) / 10, decimalsOf(round.step))}°`}
            </text>
          </g>
        );
      })}
    </g>
  );
}
