/**
 * What a worker's own file calls: it then opens rings for the page that connects to it.
 */
import { expose } from "comlink";
import { requireArgument } from "../base/options.js";
import { PORT } from "./port-rule.js";
import { RingServer } from "./ring-server.js";

/**
 * Serves rings to the page that started this worker, or to whatever holds the other end of `port`. Call it at once, before
 * anything waits, so that no message is missed.
 *
 * @example
 * // ring-worker.js
 * import { serveRings } from "annulet/worker";
 * serveRings();
 *
 * @param port where messages come and go; default this worker's own
 * @throws AnnuletError `option-invalid` for what is no port, and outside of a worker without one
 */
export function serveRings(port?: MessagePort): void {
  requireArgument("port", port ?? globalThis, PORT);
  expose(new RingServer(), port);
}
