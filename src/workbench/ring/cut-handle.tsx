/**
 * The handle that drags a cut: it stands where the plane leaves the ring. Arrow keys move it too.
 */
import type { RefObject } from "preact";
import { say, sayNumber } from "../words/language.js";
import { type Cut, moveCut } from "./cut-plane.js";
import type { RingState } from "./ring-state.js";
import type { RingStage } from "./stage.js";

interface HandleProps {
  readonly state: RingState;
  readonly stage: () => RingStage | undefined;
  readonly place: RefObject<HTMLButtonElement | null>;
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -10,
  PageUp: 10,
};

export function CutHandle({ state, stage, place }: HandleProps) {
  const cut = state.cut.value;
  const drag = (event: PointerEvent & { readonly currentTarget: HTMLButtonElement }): void => {
    const there = stage();
    if (there === undefined || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const box = there.canvas.getBoundingClientRect();
    const [x, y] = [event.clientX - box.left, event.clientY - box.top];
    state.cut.value = there.cutAt({ x, y, width: box.width, height: box.height });
  };
  const step = (event: KeyboardEvent): void => {
    const steps = STEPS[event.key];
    if (steps === undefined) return;
    event.preventDefault();
    state.cut.value = moveCut(cut, steps);
  };
  const words = wordsFor(cut);
  return (
    <button
      ref={place}
      type="button"
      class="cut-handle"
      hidden={cut.kind === "none"}
      role="slider"
      aria-label={say("ring.cut.handle")}
      aria-valuenow={cut.kind === "axis" ? Math.round(cut.angle) : cut.kind === "across" ? cut.at : 0}
      aria-valuemin={cut.kind === "axis" ? 0 : -20}
      aria-valuemax={cut.kind === "axis" ? 360 : 20}
      aria-valuetext={words}
      title={words}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={drag}
      onKeyDown={step}
    />
  );
}

/** Where the cut is, in words. */
export function wordsFor(cut: Cut): string {
  if (cut.kind === "axis") return say("ring.cut.degrees", { angle: sayNumber(cut.angle, 0) });
  return cut.kind === "across" ? say("ring.cut.millimetres", { at: sayNumber(cut.at, 1) }) : "";
}
