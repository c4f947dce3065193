/**
 * Takes a picture of each kept design once its ring has been worked out and nothing changes.
 */
import { effect } from "@preact/signals";
import type { Bench } from "../state/bench.js";
import type { Keep } from "./keep.js";

/** Of the list's pictures, pixels: twice as fine as they are shown. */
const SIZE = { width: 192, height: 144 } as const;

/** @returns what ends it */
export function keepPictures({ answers, document, host, id }: Bench, keep: Keep): () => void {
  let stopper = new AbortController();
  const unfollow = effect(() => {
    const checked = answers.of.check.value;
    stopper.abort();
    if (checked === undefined || checked.text !== document.text.value) return;
    stopper = new AbortController();
    void take(id.peek(), stopper.signal);
  });
  const take = async (design: string, signal: AbortSignal): Promise<void> => {
    const { ring } = answers;
    if (ring === undefined || !keep.has(design)) return;
    // A picture is no work: where none comes, the list shows an empty frame.
    try {
      const picture = await ring.picture({ ...SIZE, ground: "clear" }, { signal });
      const png = await host.peek().library.png(picture);
      if (!signal.aborted) await keep.keepPicture(design, png);
    } catch {}
  };
  return () => {
    unfollow();
    stopper.abort();
  };
}
