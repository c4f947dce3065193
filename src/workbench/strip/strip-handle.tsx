/**
 * A point on the strip that can be taken hold of, by pointer or keys.
 */
import { useRef } from "preact/hooks";
import { useBench } from "../state/bench.js";
import { NUDGE } from "./drag-art.js";
import { type FlatPoint, type ScreenPoint, toScreen } from "./flat-view.js";
import { sharedView } from "./shared-view.js";

/** A point is pulled to what is nearer than this, CSS pixels: a fingertip's shake. Chosen. */
export const SNAP_REACH = 9;

export interface HandleProps {
  readonly place: FlatPoint;
  readonly kind: "end" | "control" | "point" | "level" | "scale" | "turn";
  readonly label: string;
  /** Of what keys make more or less of, in place of moving it. */
  readonly slider?: HandleSlider | undefined;
  /** Moved to a place of the strip; snaps within so many mm. */
  readonly onMove: (place: FlatPoint, reach: number) => void;
  readonly onRest: () => void;
  readonly onAdd?: (() => void) | undefined;
  readonly onRemove?: (() => void) | undefined;
}

/** A size or an angle that a handle stands for. */
export interface HandleSlider {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly text: string;
  /** @param fine whether by a finer step */
  readonly onStep: (up: boolean, fine: boolean) => void;
}

/** What is pulled: where it was, and the pointer on the screen, so that a page that is laid out anew meanwhile moves nothing. */
interface Pull {
  readonly place: FlatPoint;
  readonly from: ScreenPoint;
  readonly scale: number;
}

const STRIDES: Readonly<Record<string, FlatPoint>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

export function StripHandle({ place, kind, label, slider, onMove, onRest, onAdd, onRemove }: HandleProps) {
  const { document } = useBench();
  const shared = sharedView(useBench());
  const pull = useRef<Pull | undefined>(undefined);
  const view = shared.view.value;
  const [x, y] = toScreen(view, shared.size.value, place);
  const end = (event: PointerEvent): void => {
    event.stopPropagation();
    if (pull.current === undefined) return;
    pull.current = undefined;
    shared.pulling.value = false;
    document.pull(false);
    onRest();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const stride = Object.hasOwn(STRIDES, event.key) ? STRIDES[event.key] : undefined;
    const by = event.altKey ? NUDGE.fine : NUDGE.coarse;
    if (stride !== undefined && slider !== undefined) slider.onStep(stride[0] + stride[1] > 0, event.altKey);
    else if (stride !== undefined) onMove([place[0] + by * stride[0], place[1] + by * stride[1]], 0);
    else if (event.key === "Enter" && onAdd !== undefined) onAdd();
    else if (/^(?:Delete|Backspace)$/.test(event.key) && onRemove !== undefined) onRemove();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it is a button or a slider
    <g
      class={`handle handle-${kind}`}
      role={slider === undefined ? "button" : "slider"}
      tabIndex={0}
      aria-label={label}
      {...sliderWords(slider)}
      transform={`translate(${x} ${y})`}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        event.currentTarget.focus();
        pull.current = { place, from: [event.clientX, event.clientY], scale: view.scale };
        shared.pulling.value = true;
        document.pull(true);
        onRest();
      }}
      onPointerMove={(event) => {
        if (pull.current === undefined) return;
        event.stopPropagation();
        const { place: start, from, scale } = pull.current;
        const moved: FlatPoint = [
          start[0] + (event.clientX - from[0]) / scale,
          start[1] - (event.clientY - from[1]) / scale,
        ];
        onMove(moved, event.altKey ? 0 : SNAP_REACH / scale);
      }}
      onPointerUp={end}
      onPointerCancel={end}
      onLostPointerCapture={end}
      onBlur={onRest}
      {...{ onKeyDown }}
    >
      <circle class="grip-room" r={12} />
      <HandleMark {...{ kind }} />
    </g>
  );
}

function sliderWords(slider: HandleSlider | undefined) {
  if (slider === undefined) return {};
  const { value, least, most, text } = slider;
  return { "aria-valuenow": value, "aria-valuemin": least, "aria-valuemax": most, "aria-valuetext": text };
}

/** Ends are squares, what bends or turns is round, places are lozenges. */
function HandleMark({ kind }: Pick<HandleProps, "kind">) {
  const HALF = 4;
  if (kind === "control" || kind === "turn") return <circle class="grip-mark" r={HALF} />;
  if (kind === "end" || kind === "scale")
    return <rect class="grip-mark" x={-HALF} y={-HALF} width={2 * HALF} height={2 * HALF} />;
  return <path class="grip-mark" d={`M0 ${-HALF - 3}L${HALF + 3} 0L0 ${HALF + 3}L${-HALF - 3} 0Z`} />;
}
