/**
 * The worker of the workbench: rings, and the library's catalogues, each on a port of its own that the page hands over.
 */
import { expose } from "comlink";
import { serveRings } from "../../entries/worker.js";
import { ringLibrary } from "./ring-library.js";

/** The two ports, in the one message that the page posts. */
export interface Ports {
  readonly rings: MessagePort;
  readonly library: MessagePort;
}

addEventListener(
  "message",
  ({ data: { rings, library } }: MessageEvent<Ports>) => {
    serveRings(rings);
    expose(ringLibrary, library);
  },
  { once: true },
);
