/**
 * The worker that makes rings, as the page holds it: started when needed, and started anew where it died.
 */
import { type Remote, wrap } from "comlink";
import { connectRings, type Rings } from "../../entries/worker.js";
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
 */
export function startHost(start: () => Worker, onLost: (reason: string) => void): RingHost {
  const worker = start();
  const forRings = new MessageChannel();
  const forLibrary = new MessageChannel();
  worker.postMessage({ rings: forRings.port2, library: forLibrary.port2 }, [forRings.port2, forLibrary.port2]);
  const rings = connectRings(forRings.port1);
  const end = (): void => {
    rings.leave();
    worker.terminate();
  };
  const lost = (event: Event): void => {
    event.preventDefault();
    end();
    onLost((event as ErrorEvent).message ?? "");
  };
  worker.addEventListener("error", lost, { once: true });
  return { rings, library: wrap<RingLibrary>(forLibrary.port1), end };
}
