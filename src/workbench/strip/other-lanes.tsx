/**
 * The lanes beside the one whose tile is one's own: each with its tile, its copies and its symmetry's elements, to be pressed like it.
 */
import { useMemo } from "preact/hooks";
import { laneShift, overStrip } from "./lane-layout.js";
import type { ShownTile } from "./shared-view.js";
import { StripArt } from "./strip-art.js";
import type { StripLayout } from "./strip-layout.js";
import { SymmetryMarks, TileBorders } from "./strip-marks.js";
import { useElements } from "./use-elements.js";

/** A lane with its tile. */
export interface LaidLane {
  readonly tile: ShownTile;
  readonly layout: StripLayout;
}

interface Others {
  readonly lanes: readonly LaidLane[];
  /** Of the lane that is shown. */
  readonly shown: StripLayout;
  readonly scale: number;
}

export function OtherLanes({ lanes, shown, scale }: Others) {
  const { from, to, bandWidth } = shown;
  return (
    <>
      <clipPath id="strip-ends">
        <rect x={from} width={to - from} y={-bandWidth} height={2 * bandWidth} />
      </clipPath>
      <g clip-path="url(#strip-ends)">
        {lanes.map((lane, i) => (
          <OtherLane key={lane.tile.lane} {...lane} {...{ shown, scale }} id={`lane-${i}`} />
        ))}
      </g>
    </>
  );
}

function OtherLane({ tile, layout, shown, scale, id }: LaidLane & Omit<Others, "lanes"> & { readonly id: string }) {
  const elements = useElements(tile.group.name, tile.fit.cycle > 1);
  const laid = useMemo(() => {
    return overStrip(layout, shown, tile.fit.cover === shown.cover && tile.round.medallion === 0);
  }, [layout, shown, tile]);
  const shift = laneShift(layout, shown);
  const drawn = useMemo(() => <StripArt {...{ tile, id }} layout={laid} chosen={undefined} />, [tile, laid, id]);
  return (
    <g class="other-lane" transform={`translate(${shift} 0)`}>
      <TileBorders layout={laid} />
      <g transform={`translate(0 ${-layout.laneMiddle})`}>{drawn}</g>
      <SymmetryMarks layout={laid} {...{ elements, scale }} />
    </g>
  );
}
