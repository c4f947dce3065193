/**
 * The document that is shaped: its text is the truth, and every change of it a line in the list of changes, which can be gone
 * back and forth.
 */
import { batch, computed, type ReadonlySignal, signal } from "@preact/signals";
import { changeText, type Misread, type Path, readText } from "./json-text.js";

/** One line of the list. */
export interface Change {
  /** The text after it. */
  readonly text: string;
  /** The same where it is JSON; else the last text before it that was. */
  readonly sound: string;
  /** What was changed: the place in the document, or what was done to the whole. */
  readonly what: Path | "opened" | "typed" | "chosen";
  /** Changes that follow each other under one name are one line: those of a drag, say. */
  readonly joins: string | undefined;
}

/** A list with the line that holds, as it was left. */
export interface ChangeHistory {
  readonly changes: readonly Change[];
  readonly at: number;
}

/** Most lines of the list; the oldest go first, and the list then begins with a later one. Chosen. */
const MOST_CHANGES = 1000;

/** Changes of one name that come within this time of each other are one line, ms. Chosen: a pause in typing. */
const JOINED_WITHIN = 1500;

export class DesignDocument {
  /** As written. */
  readonly text: ReadonlySignal<string>;
  /** What the text holds; while it is no JSON what the last text held that was. */
  readonly value: ReadonlySignal<Readonly<Record<string, unknown>>>;
  /** The last text that is JSON: what the ring is made of. */
  readonly sound: ReadonlySignal<string>;
  /** Where the text stops being JSON. */
  readonly misread: ReadonlySignal<Misread | undefined>;
  readonly changes: ReadonlySignal<readonly Change[]>;
  /** Which line holds now. */
  readonly at: ReadonlySignal<number>;
  readonly #list;
  readonly #now = signal(0);
  #changedAt = Number.NEGATIVE_INFINITY;
  #pulled = false;

  constructor(text: string) {
    this.#list = signal<readonly Change[]>([opened(text)]);
    this.changes = this.#list;
    this.at = this.#now;
    this.text = computed(() => this.#list.value[this.#now.value].text);
    this.sound = computed(() => this.#list.value[this.#now.value].sound);
    this.misread = computed(() => {
      const read = readText(this.text.value);
      return "misread" in read ? read.misread : undefined;
    });
    this.value = computed(() => JSON.parse(this.sound.value));
  }

  /**
   * Sets one value; undefined takes it away.
   *
   * @param joins a name under which changes that follow each other closely are one line of the list
   */
  set(path: Path, value: unknown, joins?: string): void {
    this.#put(changeText(this.sound.peek(), path, value), path, joins);
  }

  /** Sets several values as one line of the list, in order. */
  setAll(values: readonly (readonly [path: Path, value: unknown])[], joins?: string): void {
    const [[first] = [[]]] = values;
    const text = values.reduce((before, [path, value]) => changeText(before, path, value), this.sound.peek());
    this.#put(text, first as Path, joins);
  }

  /** Takes a text as typed, JSON or not. */
  type(text: string): void {
    this.#put(text, "typed", "typed");
  }

  /** Takes another document, as one line of the list, so that it can be gone back. */
  replace(text: string): void {
    this.#put(text, "chosen", undefined);
  }

  /** Takes a design of its own: the list begins anew, or goes on as it was left. */
  begin(text: string, history?: ChangeHistory): void {
    this.rest();
    const left = history?.changes[history.at]?.text === text ? history : undefined;
    batch(() => {
      this.#list.value = left?.changes ?? [opened(text)];
      this.#now.value = left?.at ?? 0;
    });
  }

  /** While something is pulled, changes of one name are one line however slow the hand is. */
  pull(on: boolean): void {
    this.#pulled = on;
  }

  /** What comes next is a line of its own. */
  rest(): void {
    this.#changedAt = Number.NEGATIVE_INFINITY;
  }

  undo(): void {
    this.goTo(this.#now.peek() - 1);
  }

  redo(): void {
    this.goTo(this.#now.peek() + 1);
  }

  /** Goes to a line of the list; beyond its ends nothing happens. */
  goTo(at: number): void {
    this.rest();
    if (at >= 0 && at < this.#list.peek().length) this.#now.value = at;
  }

  #put(text: string, what: Change["what"], joins: string | undefined): void {
    const list = this.#list.peek();
    const at = this.#now.peek();
    const current = list[at];
    if (text === current.text) return;
    const time = performance.now();
    const within = this.#pulled ? Number.POSITIVE_INFINITY : JOINED_WITHIN;
    const joined = joins !== undefined && current.joins === joins && time - this.#changedAt < within;
    this.#changedAt = time;
    const kept = list.slice(Math.max(0, at + 2 - MOST_CHANGES), joined ? at : at + 1);
    const sound = isSound(text) ? text : current.sound;
    batch(() => {
      this.#list.value = [...kept, { text, sound, what, joins }];
      this.#now.value = kept.length;
    });
  }
}

function opened(text: string): Change {
  return { text, sound: isSound(text) ? text : "{}", what: "opened", joins: undefined };
}

function isSound(text: string): boolean {
  return "value" in readText(text);
}
