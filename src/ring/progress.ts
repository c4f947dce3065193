/**
 * How far the answer to a question has come: the phases of a build with their usual shares of the time.
 */

/** How far a build has come. */
export interface Progress {
  /** The phase that begins now; `done` at the end. */
  readonly stage: string;
  /** Share of the whole, 0 to 1, by the phases' usual shares of the time. */
  readonly share: number;
}

/**
 * The phases in order with their usual shares of the time: the mean over the examples at their own tolerances, rounded.
 * Decimation is off as a rule.
 */
export const PHASES = {
  document: 0.01,
  size: 0.005,
  fit: 0.02,
  profile: 0.01,
  pattern: 0.145,
  wrap: 0.03,
  solids: 0.19,
  union: 0.55,
  decimate: 0,
  checks: 0.01,
  measure: 0.03,
} as const;

/** Name of a part of the work that is timed. */
export type Phase = keyof typeof PHASES;

/** Milliseconds of each phase. */
export type Timings = Readonly<Partial<Record<Phase, number>>>;

/** A stage of one of the two pieces, as far as progress is told of it. */
interface Step {
  readonly piece: string;
  readonly stage: { readonly phase: Phase | undefined };
}

/** Tells when a stage begins another phase of the work than the one before it. */
export function tellerOf<One extends Step>(
  order: readonly One[],
  onProgress: ((progress: Progress) => void) | undefined,
): (step: One) => void {
  if (onProgress === undefined) return () => undefined;
  const before = new Map<string, number>();
  let sum: number = PHASES.document;
  for (const { piece, stage } of order) {
    if (stage.phase === undefined || before.has(`${piece} ${stage.phase}`)) continue;
    before.set(`${piece} ${stage.phase}`, sum);
    sum += PHASES[stage.phase];
  }
  let last = "";
  return ({ piece, stage }) => {
    const id = `${piece} ${stage.phase}`;
    if (stage.phase === undefined || id === last) return;
    last = id;
    onProgress({ stage: stage.phase, share: (before.get(id) ?? 0) / sum });
  };
}
