/**
 * The ring's stones on the strip, from above and at true size: the girdle's outline with the facets over it.
 */
import { useMemo } from "preact/hooks";
import type { Point2, StoneBodyInView, StonesInView } from "../../index.js";
import type { StoneSpot } from "./stone-spots.js";
import type { StripLayout } from "./strip-layout.js";

interface StripStonesProps {
  readonly stones: StonesInView;
  readonly spots: readonly StoneSpot[];
  readonly layout: StripLayout;
  /** The group that is chosen. */
  readonly chosen: number | undefined;
  /** Groups that the symmetry repeats: their own stones lie in the own tile. */
  readonly repeated: ReadonlySet<number>;
}

export function StripStones({ stones: { bodies }, spots, layout, chosen, repeated }: StripStonesProps) {
  const outlines = useMemo(() => bodies.map(outlineOf), [bodies]);
  return (
    <g class="strip-stones">
      <defs>
        {outlines.map(({ girdle, facets }, i) => (
          <g key={i} id={`stone-body-${i}`}>
            <path class="stone-girdle" d={girdle} />
            <path class="stone-facets" d={facets} />
          </g>
        ))}
      </defs>
      {spots.map(({ stone, u, v }) => (
        <use
          key={`${stone.number} ${u}`}
          href={`#stone-body-${stone.body}`}
          class={classOf(stone.group === chosen, repeated.has(stone.group) && (u < 0 || u >= layout.period))}
          style={{ "--gem": colourOf(bodies[stone.body]) }}
          transform={`translate(${u} ${-v}) rotate(${-stone.flat.turn})`}
        />
      ))}
    </g>
  );
}

function classOf(isChosen: boolean, isCopy: boolean): string {
  return `stone${isChosen ? " stone-chosen" : ""}${isCopy ? " tile-copy" : ""}`;
}

/** Path data of a body from above, y downwards. */
function outlineOf({ outline, facets }: StoneBodyInView): { readonly girdle: string; readonly facets: string } {
  return { girdle: ringPath(outline), facets: facets.map(ringPath).join("") };
}

function ringPath(ring: readonly Point2[]): string {
  return `M${ring.map(([x, y]) => `${x.toFixed(4)} ${(-y).toFixed(4)}`).join("L")}Z`;
}

/** The gem's colour as the page's style has colours. */
function colourOf({ gem }: StoneBodyInView): string {
  return `color(srgb-linear ${gem.colour.join(" ")})`;
}
