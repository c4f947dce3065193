/**
 * Dimension lines, and the grips at their arrows.
 */
import { useRef } from "preact/hooks";
import { useBench } from "../state/bench.js";
import { sharedView } from "../strip/shared-view.js";
import { say, sayNumber } from "../words/language.js";
import { type DimensionLayout, gripAt, type SectionPlace } from "./dimension-layout.js";
import type { Dimension, Grip } from "./dimensions.js";
import { pulledSize, SIZE_STEPS, snapSize, stepsOfKey } from "./pulled-value.js";
import { sizePath } from "./section-sizes.js";

interface Lines {
  readonly layout: DimensionLayout;
  /** Whether its size is what is chosen. */
  readonly chosen: boolean;
}

export function DimensionLines({ layout, chosen }: Lines) {
  return (
    <g class={`dimension-lines ${chosen ? "dimension-chosen" : ""}`}>
      {layout.lines.map(([[x1, y1], [x2, y2]]) => (
        <line key={`${x1} ${y1} ${x2} ${y2}`} {...{ x1, y1, x2, y2 }} />
      ))}
      {layout.arrows.map((arrow) => (
        <polygon key={arrow.join()} points={arrow.map((point) => point.join(",")).join(" ")} />
      ))}
    </g>
  );
}

/** How finely a size moves: to hundredths while Alt is held. */
export function stepOf({ altKey }: { readonly altKey: boolean }): number {
  return altKey ? SIZE_STEPS.fine : SIZE_STEPS.coarse;
}

/** Sets the size that a dimension measures. */
export function useSetSize(dimension: Dimension): (value: number, step: number) => void {
  const { document, selected } = useBench();
  return (value, step) => {
    selected.value = sizePath(dimension.size);
    document.set(sizePath(dimension.size), snapSize(value, step, dimension), `drag ${dimension.size}`);
  };
}

interface Pull {
  readonly value: number;
  readonly from: readonly [x: number, y: number];
  /** CSS pixels in a millimetre as it began. */
  readonly scale: number;
}

/** A grip: pulled by pointer, or moved with the arrow keys. */
export function DimensionGrip({
  dimension,
  grip,
  place,
  scale,
}: {
  readonly dimension: Dimension;
  readonly grip: Grip;
  readonly place: SectionPlace;
  readonly scale: number;
}) {
  const bench = useBench();
  const { document } = bench;
  const { pulling } = sharedView(bench);
  const set = useSetSize(dimension);
  const pull = useRef<Pull | undefined>(undefined);
  const [cx, cy] = gripAt(dimension, grip, place);
  const { value, least, most, label } = dimension;
  const end = (): void => {
    if (pull.current === undefined) return;
    pull.current = undefined;
    pulling.value = false;
    document.pull(false);
    document.rest();
  };
  return (
    <g
      class={`grip grip-${dimension.kind}`}
      role="slider"
      tabIndex={0}
      aria-label={say(label)}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuenow={value}
      aria-valuetext={`${sayNumber(value, 2)} mm`}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        pull.current = { value, from: [event.clientX, event.clientY], scale };
        pulling.value = true;
        document.pull(true);
        document.rest();
      }}
      onPointerMove={(event) => {
        if (pull.current === undefined) return;
        const { from, value: start, scale: near } = pull.current;
        const moved = [-(event.clientY - from[1]) / near, (event.clientX - from[0]) / near] as const;
        set(pulledSize(start, grip, moved), stepOf(event));
      }}
      onPointerUp={end}
      onPointerCancel={end}
      onBlur={() => document.rest()}
      onKeyDown={(event) => {
        const steps = stepsOfKey(event.key);
        if (steps === 0) return;
        event.preventDefault();
        set(value + steps * stepOf(event), stepOf(event));
      }}
    >
      <circle class="grip-room" {...{ cx, cy }} r={12} />
      <circle class="grip-mark" {...{ cx, cy }} r={4.5} />
    </g>
  );
}
