/**
 * What the page tells its reader about files, storage and the like: one line each, until it is read.
 */
import { type ReadonlySignal, signal } from "@preact/signals";
import type { WordKey } from "../words/english.js";

/** A line with what can be done about it. */
export interface Note {
  /** Another line of the same name takes its place. */
  readonly name: string;
  readonly text: WordKey;
  readonly values?: Readonly<Record<string, string | number>>;
  /** Trouble stays until it is over or put away; news go when something else comes. */
  readonly kind: "trouble" | "news";
  readonly choices?: readonly Choice[];
}

/** A button. The line goes when it is pressed. */
export interface Choice {
  readonly text: WordKey;
  readonly take: () => void;
}

/** Most lines that stand at once; the oldest go first. Chosen. */
const MOST_NOTES = 6;

export class Notes {
  readonly all: ReadonlySignal<readonly Note[]>;
  readonly #all = signal<readonly Note[]>([]);

  constructor() {
    this.all = this.#all;
  }

  tell(note: Note): void {
    const others = this.#all.peek().filter(({ name, kind }) => name !== note.name && kind === "trouble");
    this.#all.value = [...others, note].slice(-MOST_NOTES);
  }

  /** It is over. */
  drop(name: string): void {
    if (this.#all.peek().some((note) => note.name === name)) {
      this.#all.value = this.#all.peek().filter((note) => note.name !== name);
    }
  }
}
