/**
 * What a worker's own file calls: it then opens rings for the page that connects to it.
 */
import { expose } from "comlink";
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
 */
export function serveRings(port?: MessagePort): void {
  expose(new RingServer(), port);
}
