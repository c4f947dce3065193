/**
 * The worker that makes rings, as the page holds it: started when needed, and started anew where it died.
 */
import { type Remote, wrap } from "comlink";
import { connectRings, type Rings } from "../../entries/worker.js";
import { followPulse } from "./heartbeat.js";
import type { RingLibrary } from "./ring-library.js";

/** A worker with its two ends. */
export interface RingHost {
  readonly rings: Rings;
  readonly library: Remote<RingLibrary>;
  /** Ends the worker, at once. */
  end(): void;
}

/**
 * @param start starts the worker
 * @param onLost hears that it died, once, with the reason where there is one
 * @param isBusy whether it has been asked for a ring, so that it may be long before it answers
 */
export function startHost(
  start: () => Worker,
  onLost: (reason: string) => void,
  isBusy: () => boolean = () => false,
): RingHost {
  const worker = start();
  const forRings = new MessageChannel();
  const forLibrary = new MessageChannel();
  worker.postMessage({ rings: forRings.port2, library: forLibrary.port2 }, [forRings.port2, forLibrary.port2]);
  const rings = connectRings(forRings.port1);
  const library = wrap<RingLibrary>(forLibrary.port1);
  const end = (): void => {
    unfollow();
    rings.leave();
    worker.terminate();
  };
  const lose = (reason: string): void => {
    end();
    onLost(reason);
  };
  const unfollow = followPulse({ ask: () => library.isAlive(), isBusy, onSilent: () => lose("") });
  const lost = (event: Event): void => {
    event.preventDefault();
    lose((event as ErrorEvent).message ?? "");
  };
  worker.addEventListener("error", lost, { once: true });
  return { rings, library, end };
}
