/**
 * The ring in metal.
 */
import type { RefObject } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import { useBench } from "../state/bench.js";
import { say, sayNumber } from "../words/language.js";
import type { CameraPlaceName } from "./camera-places.js";
import { choosePart, chooseStone, sayChosen } from "./choose-part.js";
import { CutHandle, wordsFor } from "./cut-handle.js";
import { openStage } from "./open-stage.js";
import { pressKey } from "./press-key.js";
import { addPlace, distanceOf, newRingState, type RingState } from "./ring-state.js";
import { RingTools } from "./ring-tools.js";
import type { RingStage } from "./stage.js";
import "./ring.css";

/** How long the camera may take from one place to another, ms; not at all where motion is unwanted. */
const flightTime = (): number => (matchMedia("(prefers-reduced-motion: reduce)").matches ? 0 : 350);

export function RingView() {
  const bench = useBench();
  const state = useMemo(newRingState, []);
  const canvas = useRef<HTMLCanvasElement>(null);
  const handle = useRef<HTMLButtonElement>(null);
  const stage = useRef<RingStage>(undefined);
  useEffect(() => {
    if (canvas.current === null) return undefined;
    const opened = openStage({ canvas: canvas.current, handle, bench, state });
    stage.current = opened?.stage;
    return opened?.close;
  }, [bench, state]);
  const look = (name: CameraPlaceName): void => stage.current?.look(name, flightTime());
  const pick = (x: number, y: number): void => {
    const there = stage.current;
    const places = state.measured.value;
    if (there?.buffers === undefined) return;
    const { clientWidth: width, clientHeight: height } = there.canvas;
    const place = { x, y, width, height };
    const stone = places === undefined ? there.stoneAt(place) : undefined;
    if (stone !== undefined) {
      chooseStone(bench, stone);
      return;
    }
    const pointed = there.pointAt(place);
    if (places !== undefined) {
      if (pointed !== undefined) state.measured.value = addPlace(places, pointed.point);
    } else if (pointed === undefined) bench.selected.value = undefined;
    else void choosePart(bench, there.buffers, pointed.hit);
  };
  return (
    <div class="ring-frame">
      <RingTools state={state} look={look} />
      <div class="ring-stage">
        <RingCanvas
          canvas={canvas}
          pick={pick}
          press={(event) => pressKey(event, { stage: stage.current, state, look, pick })}
        />
        <CutHandle state={state} stage={() => stage.current} place={handle} />
        <RingStatus state={state} />
      </div>
    </div>
  );
}

interface CanvasProps {
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  readonly pick: (x: number, y: number) => void;
  readonly press: (event: KeyboardEvent) => void;
}

/** A press that moved no further is a click, CSS pixels. */
const STILL = 4;

function RingCanvas({ canvas, pick, press }: CanvasProps) {
  const down = useRef({ x: 0, y: 0 });
  const begin = ({ offsetX, offsetY }: PointerEvent): void => {
    down.current = { x: offsetX, y: offsetY };
  };
  const end = ({ offsetX, offsetY }: MouseEvent): void => {
    const moved = Math.hypot(offsetX - down.current.x, offsetY - down.current.y);
    if (moved < STILL) pick(offsetX, offsetY);
  };
  return (
    <div
      class="ring-picture"
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: keys turn the ring, so it takes the focus
      tabIndex={0}
      aria-label={say("view.ring")}
      aria-describedby="ring-keys"
      onPointerDown={begin}
      onClick={end}
      onKeyDown={press}
    >
      <canvas ref={canvas} />
    </div>
  );
}

function RingStatus({ state }: { readonly state: RingState }) {
  const { trouble, measured, cut } = state;
  const { selected, document } = useBench();
  const chosen = selected.value;
  const words = [
    trouble.value === "none" ? statusOf(measured.value) : say(`ring.trouble.${trouble.value}`),
    cut.value.kind === "none" ? "" : wordsFor(cut.value),
    chosen === undefined ? "" : say("ring.chosen", { name: sayChosen(document.value.value, chosen) }),
  ];
  return (
    <>
      <p id="ring-keys" class="heard-only">
        {say("ring.keys")}
      </p>
      <p class="ring-status" role="status">
        {words.filter((text) => text !== "").join(" ")}
      </p>
    </>
  );
}

function statusOf(places: RingState["measured"]["value"]): string {
  if (places === undefined) return "";
  const distance = distanceOf(places);
  if (distance !== undefined) return say("ring.measure.distance", { distance: sayNumber(distance, 2) });
  return say(places.length === 0 ? "ring.measure.first" : "ring.measure.second");
}
