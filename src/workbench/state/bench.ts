/**
 * Everything that the page's parts share: the document, what is known of its ring, what is selected.
 */
import { batch, effect, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { WorkerSetup } from "../../entries/worker.js";
import { Answers } from "../engine/answers.js";
import { Losses } from "../engine/losses.js";
import { type RingHost, startHost } from "../engine/ring-host.js";
import { Notes } from "../notes/notes.js";
import { type DesignFiles, NO_FILES } from "./design-files.js";
import { type ChangeHistory, DesignDocument } from "./document.js";
import type { Path } from "./json-text.js";

export interface Bench {
  readonly document: DesignDocument;
  /** Which design lies here: what it is kept under. */
  readonly id: Signal<string>;
  /** What the design names, or could. */
  readonly files: Signal<DesignFiles>;
  readonly answers: Answers;
  readonly host: ReadonlySignal<RingHost>;
  /** The part of the document that all views show as chosen: a region, a bead run, a field. */
  readonly selected: Signal<Path | undefined>;
  readonly notes: Notes;
  /** Puts another design here, with a list of changes of its own; the one before is kept where anything is. */
  begin(design: Begun): void;
  /** Ends the worker. */
  end(): void;
}

/** A design that is put on the bench. */
export interface Begun {
  readonly text: string;
  readonly files?: DesignFiles;
  /** Default a new one. */
  readonly id?: string;
  readonly history?: ChangeHistory | undefined;
}

/** What a bench is opened with. */
export interface BenchSetup extends Begun {
  readonly startWorker: () => Worker;
  /** `files` is asked for what the bench itself has not. */
  readonly setup: WorkerSetup;
}

/** Opens the document and follows its changes. */
export function openBench({ startWorker, setup, ...begun }: BenchSetup): Bench {
  const document = new DesignDocument(begun.text);
  document.begin(begun.text, begun.history);
  const id = signal(begun.id ?? newId());
  const files = signal(begun.files ?? NO_FILES);
  const selected = signal<Path | undefined>(undefined);
  const notes = new Notes();
  const isBusy = (): boolean => answers.pending.peek();
  const start = (): RingHost => startHost(startWorker, () => lost(), isBusy);
  const host = signal(start());
  const answers = new Answers(host.peek().rings, { ...setup, files: filesOf(files, setup.files) });
  const losses = new Losses();
  const restart = (): void => {
    losses.resting = false;
    host.value = start();
    answers.restart(host.value.rings);
  };
  const lost = (): void => {
    if (losses.mayTryAgain(document.sound.peek())) {
      restart();
      return;
    }
    answers.rest();
    const again = { text: "work.try-again", take: restart } as const;
    notes.tell({ name: "worker", text: "work.lost", kind: "trouble", choices: [again] });
  };
  let shown = files.peek();
  const unfollow = effect(() => {
    const [text, now] = [document.sound.value, files.value];
    if (losses.resting) restart();
    answers.show(text, now !== shown);
    shown = now;
  });
  const begin = (next: Begun): void =>
    batch(() => {
      id.value = next.id ?? newId();
      files.value = next.files ?? NO_FILES;
      selected.value = undefined;
      document.begin(next.text, next.history);
    });
  const end = (): void => {
    unfollow();
    host.peek().end();
  };
  return { document, id, files, answers, host, selected, notes, begin, end };
}

/** The bench's own files first. */
function filesOf(own: ReadonlySignal<DesignFiles>, others: WorkerSetup["files"] = {}): WorkerSetup["files"] {
  return async (name) => {
    const bytes = own.peek().get(name);
    if (bytes !== undefined) return bytes;
    if (typeof others === "function") return others(name);
    return Object.hasOwn(others, name) ? others[name] : undefined;
  };
}

/** 96 random bits: two never meet. */
function newId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

export const BenchContext = createContext<Bench | undefined>(undefined);

/** The bench that a component is drawn for. */
export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (bench === undefined) throw new Error("drawn outside of a bench");
  return bench;
}
