/**
 * The page's side: rings that live in a worker, asked like rings that do not.
 */
import { proxy, type Remote, wrap } from "comlink";
import { AnnuletError } from "../base/errors.js";
import { requireArgument } from "../base/options.js";
import type { RingWorker } from "./messages.js";
import { PORT } from "./port-rule.js";
import { Switchboard } from "./switchboard.js";
import { CallerRing, type WorkerRing } from "./worker-ring.js";
import type { WorkerSetup } from "./worker-setup.js";

/** A worker that opens rings. */
export interface Rings {
  /** Opens a ring in the worker, as `openRing` does here. */
  open(document: unknown, setup?: WorkerSetup): WorkerRing;
  /** Ends the connection: every question that waits rejects with `worker-lost`. The worker itself is yours to end. */
  leave(): void;
}

/** What messages go to and come from: a worker, or one end of a channel. */
export type RingPort = Worker | MessagePort;

/**
 * Connects to a worker that serves rings.
 *
 * What a worker posts is a copy and yours to change; arrays are handed over. Functions are left out of answers
 * (`tile.top.develop`). Where the worker dies, all questions reject with AnnuletError `worker-lost`: start another one and
 * open the document again.
 *
 * @throws AnnuletError `option-invalid`, `option-missing` for what is no port
 *
 * @example
 * const worker = new Worker(new URL("./ring-worker.js", import.meta.url), { type: "module" });
 * const ring = connectRings(worker).open(document);
 * const { positions, normals, triangles } = await ring.buffers({ detail: "draft" });
 * const next = ring.change({ ...document, material: "au750-yellow" });
 */
export function connectRings(port: RingPort): Rings {
  requireArgument("port", port, PORT);
  const remote: Remote<RingWorker> = wrap<RingWorker>(port);
  const switchboard = new Switchboard(remote);
  const lost = (event: Event): void => switchboard.loseAll(workerLost((event as ErrorEvent).message));
  port.addEventListener("error", lost);
  port.addEventListener("messageerror", lost);
  remote.hear(proxy(switchboard.page)).catch(lost);
  return {
    open: (document, setup = {}) => CallerRing.open(switchboard, document, setup),
    leave: () => switchboard.loseAll(workerLost("the page has left it")),
  };
}

function workerLost(reason: string | undefined): AnnuletError {
  return new AnnuletError({
    code: "worker-lost",
    message: `the worker that makes rings answers no more${reason ? `: ${reason}` : ""}`,
    hint: "start another worker and open the design again; nothing of the document is lost",
  });
}
