/**
 * Sets the ring's stage up on its canvas, or says why there is none.
 */
import type { RefObject } from "preact";
import type { Bench } from "../state/bench.js";
import { followBench } from "./follow-bench.js";
import { readPens } from "./paper-pens.js";
import type { RingState } from "./ring-state.js";
import { RingStage } from "./stage.js";

interface Opening {
  readonly canvas: HTMLCanvasElement;
  /** What is kept where the plane of a cut leaves the ring. */
  readonly handle: RefObject<HTMLElement | null>;
  readonly bench: Bench;
  readonly state: RingState;
}

/** @returns the stage and what closes it; undefined where the browser has no WebGL, which is told in the state */
export function openStage({ canvas, handle, bench, state }: Opening) {
  const stage = newStage(canvas);
  if (stage === undefined) {
    state.trouble.value = "no-webgl";
    return undefined;
  }
  stage.onDrawn = () => {
    const at = stage.cutHandle();
    if (at !== undefined && handle.current !== null) handle.current.style.transform = `translate(${at.x}px, ${at.y}px)`;
  };
  canvas.addEventListener("webglcontextlost", () => {
    state.trouble.value = "lost";
  });
  canvas.addEventListener("webglcontextrestored", () => {
    state.trouble.value = "none";
  });
  const sizes = new ResizeObserver(() => stage.resize(canvas.clientWidth, canvas.clientHeight));
  sizes.observe(canvas);
  const unfollow = followBench(bench, state, stage);
  const close = (): void => {
    sizes.disconnect();
    unfollow();
    stage.dispose();
  };
  return { stage, close };
}

function newStage(canvas: HTMLCanvasElement): RingStage | undefined {
  try {
    return new RingStage(canvas, readPens(document.body));
  } catch {
    return undefined;
  }
}
