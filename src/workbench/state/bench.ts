/**
 * Everything that the page's parts share: the document, what is known of its ring, what is selected.
 */
import { effect, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { WorkerSetup } from "../../entries/worker.js";
import { Answers } from "../engine/answers.js";
import { type RingHost, startHost } from "../engine/ring-host.js";
import { DesignDocument } from "./document.js";
import type { Path } from "./json-text.js";

export interface Bench {
  readonly document: DesignDocument;
  readonly answers: Answers;
  readonly host: ReadonlySignal<RingHost>;
  /** The part of the document that all views show as chosen: a region, a bead run, a field. */
  readonly selected: Signal<Path | undefined>;
  /** Ends the worker. */
  end(): void;
}

/** What a bench is opened with. */
export interface BenchSetup {
  readonly text: string;
  readonly startWorker: () => Worker;
  readonly setup: WorkerSetup;
}

/** Opens the document and follows its changes. */
export function openBench({ text, startWorker, setup }: BenchSetup): Bench {
  const document = new DesignDocument(text);
  const start = (): RingHost => startHost(startWorker, () => restart());
  const host = signal(start());
  const answers = new Answers(host.peek().rings, setup);
  const restart = (): void => {
    host.value = start();
    answers.restart(host.value.rings);
  };
  const unfollow = effect(() => answers.show(document.sound.value));
  const end = (): void => {
    unfollow();
    host.peek().end();
  };
  return { document, answers, host, selected: signal(undefined), end };
}

export const BenchContext = createContext<Bench | undefined>(undefined);

/** The bench that a component is drawn for. */
export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (bench === undefined) throw new Error("drawn outside of a bench");
  return bench;
}
