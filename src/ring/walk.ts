/**
 * One walk through the stages that a question needs: hands each what it reads, and gathers what is said.
 */

import { canonicalText } from "../base/canonical.js";
import { AnnuletError, type Warning } from "../base/errors.js";
import type { Phase, Timings } from "../base/phases.js";
import { saidOfCasting } from "../casting/piece.js";
import type { Answer } from "./answer-store.js";
import type { Answers, PieceDesign, RingOptions } from "./answers.js";
import type { Pieces } from "./pieces.js";
import { type Node, type Piece, Plan } from "./plan.js";
import type { Given, StageName } from "./stage.js";

/** Answers with what was said while they were worked out. */
export interface Told<Name extends StageName> {
  readonly answers: Pick<Answers, Name>;
  readonly warnings: readonly Warning[];
  /** Of the finished piece: times of the runs that made the answers. */
  readonly timings: Timings;
}

/** By which an option is compared. */
export type OptionText = (name: keyof RingOptions, value: unknown) => string;

export class Walk<Name extends StageName> {
  readonly order: readonly Node[];
  readonly #names: readonly Name[];
  readonly #targets: readonly (Node | undefined)[];
  readonly #option: RingOptions;
  readonly #pieces: Pieces;
  readonly #optionText: OptionText;
  readonly #taken = new Map<Node, Answer>();
  readonly #keys = new Map<Node, string>();

  constructor(names: readonly Name[], option: RingOptions, pieces: Pieces, optionText: OptionText) {
    const plan = new Plan(option, pieces.casting);
    this.#names = names;
    this.#targets = names.map((name) => plan.need(name));
    this.order = plan.order;
    this.#option = option;
    this.#pieces = pieces;
    this.#optionText = optionText;
  }

  /** All that a stage reads, as text: where it is the same, so is the answer. */
  key(node: Node): string {
    const key = this.#keys.get(node) ?? this.#readKey(node);
    this.#keys.set(node, key);
    return key;
  }

  #readKey({ reads, piece }: Node): string {
    return reads
      .map(({ read, node }) => {
        if (node !== undefined) return this.#answerOf(node).mark;
        const name = afterDot(read);
        if (read.startsWith("design.")) return this.#pieces.of(piece).text(name as keyof PieceDesign);
        return this.#optionText(name as keyof RingOptions, this.#option[name as keyof RingOptions]);
      })
      .join("\n");
  }

  /** What a stage is handed: what it reads, and nothing else. */
  given({ reads, piece }: Node): Given<never> {
    const [answers, cast, design, option]: Record<string, unknown>[] = [{}, {}, {}, {}];
    for (const { read, node } of reads) {
      const name = afterDot(read);
      if (node !== undefined) (read.startsWith("cast.") ? cast : answers)[name] = valueIn(this.#answerOf(node));
      else if (read.startsWith("design.")) design[name] = this.#pieces.of(piece).value[name as keyof PieceDesign];
      else option[name] = this.#option[name as keyof RingOptions];
    }
    return { ...answers, cast, design, option } as unknown as Given<never>;
  }

  /** @throws AnnuletError where the stage failed, with the warnings so far */
  take(node: Node, answer: Answer): void {
    this.#taken.set(node, answer);
    if ("error" in answer.outcome) throw this.failure(answer.outcome.error, node.piece);
  }

  /** What goes on to the one who asked. */
  failure(error: unknown, piece: Piece): unknown {
    const warnings = this.#warnings();
    if (!(error instanceof AnnuletError) || (piece === "finished" && warnings.length === 0)) return error;
    const problems = piece === "cast" ? error.problems.map(saidOfCasting) : error.problems;
    return new AnnuletError(problems, { cause: error, warnings });
  }

  told(): Told<Name> {
    const answers = this.#names.map((name, i) => [name, valueIn(this.#answerOf(this.#targets[i] as Node))]);
    return {
      answers: Object.fromEntries(answers) as Pick<Answers, Name>,
      warnings: this.#warnings(),
      timings: this.#timings(),
    };
  }

  #answerOf(node: Node): Answer {
    const answer = this.#taken.get(node);
    if (answer === undefined) throw new Error(`${node.id} is read before it is worked out: the table's order is wrong`);
    return answer;
  }

  /** Warnings stage by stage. Of the casting only what was not said of the finished piece in the same words of the same place. */
  #warnings(): Warning[] {
    const all: Warning[] = [];
    const said = new Set<string>();
    for (const [{ piece }, { warnings }] of this.#taken) {
      for (const warning of warnings) {
        const words = canonicalText([warning.code, warning.path, warning.message]);
        if (piece === "finished") all.push(warning);
        else if (!said.has(words)) all.push(saidOfCasting(warning));
        said.add(words);
      }
    }
    return all;
  }

  #timings(): Timings {
    const timings: Partial<Record<Phase, number>> = {};
    for (const [{ piece, stage }, { ms }] of this.#taken) {
      const { phase } = stage;
      if (phase !== undefined && piece === "finished") timings[phase] = (timings[phase] ?? 0) + ms;
    }
    return timings;
  }
}

function valueIn({ outcome }: Answer): unknown {
  if ("error" in outcome) throw outcome.error;
  return outcome.value;
}

/** `design.size` → `size`. */
function afterDot(read: string): string {
  return read.slice(read.indexOf(".") + 1);
}
