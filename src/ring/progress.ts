/**
 * How far the answer to a question has come: the phases of a build with their usual shares of the time.
 */
import { PHASES, type Phase } from "../base/phases.js";

/** How far a build has come. */
export interface Progress {
  /** The phase that works now; `done` at the end. */
  readonly stage: Phase | "done";
  /** Share of the whole, 0 to 1, by the phases' usual shares of the time. It never falls. */
  readonly share: number;
}

/** Growth of the share that is told within a phase. Chosen: where steps are many times as many as expected, each moves by little. */
const LEAST_GROWTH = 0.0002;

/** A stage of one of the two pieces, as far as progress is told of it. */
interface Step {
  readonly piece: string;
  readonly stage: { readonly phase: Phase | undefined };
}

/** Tells how far the work has come. */
export interface Teller<One> {
  /** A stage begins to work: told where it begins another phase than the one before it. */
  readonly begin: (step: One) => void;
  /** Of a stage that works this share is done, 0 to 1: told where it is worth telling. */
  readonly within: (step: One, share: number) => void;
}

/** For one question, whose stages work in this order. */
export function tellerOf<One extends Step>(
  order: readonly One[],
  onProgress: ((progress: Progress) => void) | undefined,
): Teller<One> {
  if (onProgress === undefined) return { begin: () => undefined, within: () => undefined };
  const before = new Map<string, number>();
  let sum: number = PHASES.document;
  for (const { piece, stage } of order) {
    if (stage.phase === undefined || before.has(`${piece} ${stage.phase}`)) continue;
    before.set(`${piece} ${stage.phase}`, sum);
    sum += PHASES[stage.phase];
  }
  let last = "";
  let reached = 0;
  const tell = ({ piece, stage }: One, within: number, least: number) => {
    const id = `${piece} ${stage.phase}`;
    if (stage.phase === undefined) return;
    const share = ((before.get(id) ?? 0) + within * PHASES[stage.phase]) / sum;
    // Several stages of one phase each begin at its beginning.
    if (id === last && share < reached + least) return;
    last = id;
    reached = Math.max(share, reached);
    onProgress({ stage: stage.phase, share: reached });
  };
  return {
    begin: (step) => {
      if (`${step.piece} ${step.stage.phase}` !== last) tell(step, 0, 0);
    },
    within: (step, share) => tell(step, share, LEAST_GROWTH),
  };
}
