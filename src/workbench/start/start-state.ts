/**
 * Whether the start lies over the bench, and which step of the guide is shown beside the views.
 */
import { signal } from "@preact/signals";

/** "first" over a bench that nothing was put on yet, "again" over one with work; undefined while it does not lie there. */
export const startShown = signal<"first" | "again" | undefined>(undefined);

/** The steps of the guide, in order. */
export const GUIDE_STEPS = ["size", "band", "motif", "beads", "finish"] as const;

export type GuideStep = (typeof GUIDE_STEPS)[number];

/** Undefined while no guide is followed. */
export const guideStep = signal<GuideStep | undefined>(undefined);

/** The step before or after; undefined beyond the ends. */
export function stepBeside(step: GuideStep, by: -1 | 1): GuideStep | undefined {
  return GUIDE_STEPS[GUIDE_STEPS.indexOf(step) + by];
}
