/**
 * Thin lines from the band's edges, and from those of its seat, over to the strip beside it.
 */
import type { ScreenPoint } from "../strip/flat-view.js";
import type { SectionPlace } from "./dimension-layout.js";
import { edgesOf } from "./section-edges.js";
import type { SectionNumbers } from "./section-sizes.js";

/** What they leave free beside the metal, CSS pixels. */
const CLEAR = 4;

export function Projections({
  place,
  size,
  numbers,
}: {
  readonly place: SectionPlace;
  readonly size: ScreenPoint;
  readonly numbers: SectionNumbers;
}) {
  return (
    <g class="projections">
      {edgesOf(numbers).map(({ w, height }) => {
        const [x, y] = place.at([w, height]);
        return <line key={w} x1={x + CLEAR} x2={size[0]} y1={y} y2={y} />;
      })}
    </g>
  );
}
