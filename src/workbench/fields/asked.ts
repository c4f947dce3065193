/**
 * What the library in the worker is asked once: kept for as long as the page is there.
 */
import { type ReadonlySignal, type Signal, signal } from "@preact/signals";

const KEPT = new Map<string, Signal<unknown>>();

/**
 * The answer to a question, undefined until it is there. A question that failed is asked again by the next who wants to know.
 *
 * @param name of the question, with all that it depends on
 */
export function asked<Value>(name: string, ask: () => Promise<Value>): ReadonlySignal<Value | undefined> {
  const known = KEPT.get(name);
  if (known !== undefined) return known as Signal<Value | undefined>;
  const answer = signal<Value | undefined>(undefined);
  KEPT.set(name, answer as Signal<unknown>);
  ask().then(
    (value) => {
      answer.value = value;
    },
    () => KEPT.delete(name),
  );
  return answer;
}
