/**
 * `annulet/worker`: rings in a worker. A page connects to its worker and asks rings there like rings of its own thread; the
 * worker's file serves them.
 */
export { AnnuletError, type Warning } from "../base/errors.js";
export { connectRings, type RingPort, type Rings } from "../worker/connect-rings.js";
export type { BuffersAsking, FileAsking } from "../worker/messages.js";
export type { Plain } from "../worker/plain.js";
export { serveRings } from "../worker/serve-rings.js";
export type { WorkerRing } from "../worker/worker-ring.js";
export type { WorkerSetup } from "../worker/worker-setup.js";
