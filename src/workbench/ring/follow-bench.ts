/**
 * Keeps the ring's stage as the bench and the view's own choices have it.
 */
import { effect } from "@preact/signals";
import { dimensionsOf } from "../../entries/view.js";
import { theme } from "../settings/theme.js";
import type { Bench } from "../state/bench.js";
import { sayNumber } from "../words/language.js";
import { markChosen } from "./choose-part.js";
import { materialOf } from "./material-of.js";
import { readPens } from "./paper-pens.js";
import { measuredLines, type RingState } from "./ring-state.js";
import type { RingStage } from "./stage.js";

/** Radius of a bore of which nothing is known yet, mm: an everyday ring's. */
const EVERYDAY_BORE = 8.6;

const write = (length: number): string => sayNumber(length, 2);

/** @returns what ends it */
export function followBench(bench: Bench, state: RingState, stage: RingStage): () => void {
  const { answers, document } = bench;
  const dark = matchMedia("(prefers-color-scheme: dark)");
  // Each for itself, so that an answer draws again only what shows it.
  const layers = [
    () => {
      const report = state.dimensions.value ? answers.of.report.value?.value : undefined;
      const sizes = report && { ...report.band, diameter: report.size.diameter };
      stage.drawDimensions("dimensions", sizes === undefined ? [] : dimensionsOf(sizes, write));
    },
    () => stage.drawFindings(state.findings.value ? (answers.of.check.value?.value.findings ?? []) : []),
    () => stage.drawDimensions("measured", measuredLines(state.measured.value ?? [], write)),
  ];
  const repaint = (): void => {
    stage.usePens(readPens(window.document.body));
    for (const layer of layers) layer();
  };
  const ends = [
    effect(() => {
      const answer = answers.of.buffers.value;
      const diameter = answers.of.size.peek()?.value.diameter;
      if (answer === undefined) return;
      stage.show(answer.value, diameter === undefined ? EVERYDAY_BORE : diameter / 2);
      stage.canvas.dataset.detail = answer.detail;
    }),
    effect(() => stage.dress({ material: materialOf(document.value.value), finish: state.finish.value })),
    effect(() => {
      // Asked at draft with the ring: they stand where its metal has room for them.
      const stones = state.stones.value ? answers.of.stones.value?.value : undefined;
      stage.showStones(stones === undefined || stones.stones.length === 0 ? undefined : stones);
    }),
    effect(() => stage.cut(state.cut.value)),
    ...layers.map((layer) => effect(layer)),
    markChosen(bench, stage),
    effect(() => {
      // The page's root takes the theme's colours after this.
      if (theme.value !== undefined) queueMicrotask(repaint);
    }),
  ];
  dark.addEventListener("change", repaint);
  return () => {
    dark.removeEventListener("change", repaint);
    for (const end of ends) end();
  };
}
