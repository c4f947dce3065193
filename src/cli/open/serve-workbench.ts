/**
 * The workbench on this machine alone: one design, one page, one address that nobody can guess.
 */
import { randomBytes } from "node:crypto";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { basename } from "node:path";
import { filesBeside } from "../design-folder.js";
import { STDIN } from "../files.js";
import { answer, type Offer } from "./answer.js";
import { writeArt } from "./art-on-disk.js";
import { DesignOnDisk } from "./design-on-disk.js";
import { pageFor, pageHeaders } from "./page-headers.js";

/** What reaches this machine alone. */
const LOOPBACK = "127.0.0.1";

/** Bytes of the token: 192 bits, far beyond guessing. Chosen. */
const TOKEN_BYTES = 24;

/** How long a request may take to arrive, ms, and how many connections there may be at once. Chosen. */
const PATIENCE = 30_000;
const MOST_CONNECTIONS = 32;

export interface ServedWorkbench {
  /** Of the page, with the token. */
  readonly address: string;
  /** Ends the server. */
  close(): Promise<void>;
  /** Rejects where the server had to end: Interrupted, or a fault. */
  readonly failed: Promise<never>;
}

/**
 * Serves the page on a free port.
 *
 * @param html the page
 * @param design path of the design; undefined for an empty start
 */
export async function serveWorkbench(html: string, design?: string): Promise<ServedWorkbench> {
  const token = randomBytes(TOKEN_BYTES).toString("base64url");
  const server = createServer();
  await listen(server);
  const host = `${LOOPBACK}:${(server.address() as AddressInfo).port}`;
  const offer: Offer = {
    door: { host, token },
    html: pageFor(html, design && basename(design)),
    headers: pageHeaders(html),
    design: design === undefined ? undefined : new DesignOnDisk(design),
    art: (name, bytes) => design !== undefined && writeArt(design, name, bytes),
    file: filesBeside(design ?? STDIN),
  };
  const failed = new Promise<never>((_, reject) => {
    server.on("request", (request, response) => void answer(request, response, offer).catch(reject));
    server.on("error", reject);
  });
  failed.catch(() => undefined);
  const close = async (): Promise<void> => {
    server.closeAllConnections();
    await new Promise((closed) => server.close(closed));
  };
  return { address: `http://${host}/${token}/`, close, failed };
}

function listen(server: Server): Promise<void> {
  server.requestTimeout = PATIENCE;
  server.headersTimeout = PATIENCE;
  server.maxConnections = MOST_CONNECTIONS;
  return new Promise((ready, failed) => {
    server.once("error", failed);
    server.listen(0, LOOPBACK, ready);
  });
}
