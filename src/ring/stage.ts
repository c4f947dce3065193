/**
 * A stage: one step of the work on a ring, with everything that it reads.
 *
 * It is handed what it declares and nothing else, so what is not declared cannot be read: TypeScript refuses it, and at
 * run time it is not there. That is why an answer may stand as long as what its stage reads is the same.
 */
import type { Warn } from "../base/errors.js";
import type { Remember } from "../base/memory.js";
import type { Phase } from "../base/phases.js";
import type { Work } from "../base/work.js";
import type { Answers, PieceDesign, RingOptions } from "./answers.js";

export type StageName = keyof Answers;

/** What a stage may read: a field of the design, an option, another stage's answer, or that of the casting. */
export type Read = `design.${keyof PieceDesign}` | `option.${keyof RingOptions}` | StageName | `cast.${StageName}`;

/** The reads in a line of them, with a space between. */
type Listed<Line extends string> = Line extends `${infer First} ${infer Rest}` ? First | Listed<Rest> : Line;

/** A line of reads; what cannot be read in it is an error. */
type Reads<Line extends string> = [Listed<Line>] extends [Read] ? Line : Read;

/** The names in reads that begin with a word. */
type After<Word extends string, All> = All extends `${Word}.${infer Name}` ? Name : never;

/** What a stage is handed. */
export type Given<All> = Pick<Answers, All & StageName> & {
  readonly design: Pick<PieceDesign, After<"design", All> & keyof PieceDesign>;
  readonly option: Pick<RingOptions, After<"option", All> & keyof RingOptions>;
  /** Of the casting before it is finished; the finished piece where finishing takes nothing off. */
  readonly cast: Pick<Answers, After<"cast", All> & StageName>;
};

/** What a stage may use beside that. */
export interface Tools {
  /** Takes its warnings: they come again with the remembered answer. */
  readonly warn: Warn;
  /** Takes over parts of earlier runs that were made of the same. */
  readonly remember: Remember;
  /** Raised when nobody waits for the answer any more. */
  readonly signal: AbortSignal;
  /** Gives way to that signal and counts against the limits. */
  readonly work: Work;
}

type Run<Line extends string, Result> = (given: Given<Listed<Line>>, tools: Tools) => Result | Promise<Result>;

/** Tells whether two answers are the same. */
export interface Comparison<Result> {
  same(a: Result, b: Result): boolean;
}

/** A stage that works. */
export interface WorkStage<Result> {
  readonly kind: "work" | "slice";
  /** Under what its time is told; of a slice and of what follows a build none is. */
  readonly phase: Phase | undefined;
  readonly reads: readonly Read[];
  readonly run: (given: Given<never>, tools: Tools) => Result | Promise<Result>;
  /**
   * How its answer is compared by stages that read it: by its `value`, where that is small and plain; by the `work` it
   * came from; or with earlier answers one by one, where the same may come from other work.
   */
  readonly compare: "value" | "work" | Comparison<Result>;
}

/** A stage whose answer is that of another one, which an option chooses. */
export interface ChoiceStage<Result> {
  readonly kind: "choice";
  readonly choose: (option: RingOptions) => StageOf<Result>;
}

/** The stages whose answers are of a type. */
type StageOf<Result> = { [Name in StageName]: Answers[Name] extends Result ? Name : never }[StageName];

export type Stage<Result> = WorkStage<Result> | ChoiceStage<Result>;

/** A stage for each answer. */
export type StageTable = { readonly [Name in StageName]: Stage<Answers[Name]> };

/** A stage whose answer is compared by the work it came from. `reads` is a line of names with a space between. */
export function work<const Line extends string, Result>(
  phase: Phase | undefined,
  reads: Reads<Line>,
  run: Run<Line, Result>,
): WorkStage<Result> {
  return {
    kind: "work",
    phase,
    reads: reads.split(" ") as Read[],
    // It is handed what the line names, and the table's types hold it to that.
    run: run as unknown as WorkStage<Result>["run"],
    compare: "work",
  };
}

/** A stage whose answer is plain, and compared by its value. */
export function figure<const Line extends string, Result>(
  phase: Phase | undefined,
  reads: Reads<Line>,
  run: Run<Line, Result>,
): WorkStage<Result> {
  return { ...work<Line, Result>(phase, reads, run), compare: "value" };
}

/** What other stages read of something larger: worked out at once, compared by its value. */
export function slice<const Line extends string, Result>(
  reads: Reads<Line>,
  run: (given: Given<Listed<Line>>) => Result,
): WorkStage<Result> {
  return { ...figure<Line, Result>(undefined, reads, run), kind: "slice" };
}

/** A stage whose answer is compared with earlier ones, since the same may come from other work. */
export function compared<const Line extends string, Result>(
  phase: Phase | undefined,
  reads: Reads<Line>,
  run: Run<Line, Result>,
  same: Comparison<Result>["same"],
): WorkStage<Result> {
  return { ...work<Line, Result>(phase, reads, run), compare: { same } };
}

/** The answer of one of several stages, as an option says. */
export function choice<Result>(choose: ChoiceStage<Result>["choose"]): ChoiceStage<Result> {
  return { kind: "choice", choose };
}
