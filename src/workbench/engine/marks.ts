/**
 * Marks on the browser's timeline, for who wants to know how long a picture takes: the change, and the answers to it.
 */
import { effect } from "@preact/signals";
import type { Bench } from "../state/bench.js";

/** The document is another; its ring has come at draft; in full. */
export const MARKS = { change: "annulet-change", draft: "annulet-draft", full: "annulet-full" } as const;

/** @returns what ends it */
export function markTimes({ document, answers }: Pick<Bench, "document" | "answers">): () => void {
  const ends = [
    effect(() => {
      if (document.sound.value !== undefined) mark(MARKS.change);
    }),
    effect(() => {
      const buffers = answers.of.buffers.value;
      if (buffers !== undefined && buffers.text === document.sound.peek()) mark(MARKS[buffers.detail]);
    }),
  ];
  return () => {
    for (const end of ends) end();
  };
}

/** One of each is kept. */
function mark(name: string): void {
  performance.clearMarks(name);
  performance.mark(name);
}
