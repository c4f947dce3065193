/**
 * Serves rings to designs from strangers: `POST /ring.stl` with a design gives an STL. Bodies, time, triangles and the number
 * of those who wait are bounded; a worker that does not end is ended. Run: `node examples/dist/server.js 8080`.
 */
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { startPool, threads } from "./ring-pool.js";
import type { RingAnswer, RingTask } from "./ring-worker.js";

/** Bytes of a design, far above any that is drawn by hand. */
const MOST_BYTES = 200_000;
/** Designs that wait for a worker. */
const MOST_WAITING = 16;
/** What one design may cost: the library ends it after so many seconds, and the server the worker a little later. */
const LIMITS = { seconds: Number(process.env.RING_SECONDS ?? 10), triangles: 1_000_000, corners: 1_000_000 };
const GRACE = 2000;

const pool = startPool();

/** Designs that are worked or wait. */
let inside = 0;

const server = createServer((request, response) => {
  answer(request, response).catch((error: unknown) => {
    console.error(error);
    reply(response, 500, { errors: [{ code: "internal", message: "the server failed" }] });
  });
});

async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.url !== "/ring.stl") return reply(response, 404, problem("not-found", "there is POST /ring.stl alone"));
  if (request.method !== "POST") return reply(response, 405, problem("not-allowed", "send a design by POST"));
  if (inside >= threads + MOST_WAITING) {
    response.setHeader("retry-after", String(LIMITS.seconds));
    return reply(response, 429, problem("busy", "too many designs are waiting: try again later"));
  }
  inside++;
  try {
    const document = await bodyOf(request);
    if (document === undefined) {
      response.setHeader("connection", "close");
      return reply(response, 413, problem("document-too-large", `a design has at most ${MOST_BYTES} bytes`));
    }
    const task: RingTask = { document, limits: LIMITS };
    const made = await withinTime(task, response);
    if (made === undefined) return reply(response, 504, problem("too-long", "the ring took too long"));
    if ("error" in made) return reply(response, 422, { errors: made.error.problems });
    response.writeHead(200, { "content-type": "model/stl", "content-length": made.stl.length });
    response.end(made.stl);
  } finally {
    inside--;
  }
}

/** The worker's answer; undefined where it had to be ended, as it took too long or nobody waits any more. */
async function withinTime(task: RingTask, response: ServerResponse): Promise<RingAnswer | undefined> {
  const stop = new AbortController();
  const waiting = Math.ceil((inside + 1) / threads);
  const timer = setTimeout(() => stop.abort(), waiting * (1000 * LIMITS.seconds + GRACE));
  response.once("close", () => stop.abort());
  try {
    return await pool.run(task, { name: "makeRing", signal: stop.signal });
  } catch (error) {
    if (stop.signal.aborted) return undefined;
    throw error;
  } finally {
    clearTimeout(timer);
  }
}

/** The body as text; undefined where it is too large. */
async function bodyOf(request: IncomingMessage): Promise<string | undefined> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > MOST_BYTES) return undefined;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString("utf8");
}

function problem(code: string, message: string) {
  return { errors: [{ code, message }] };
}

function reply(response: ServerResponse, status: number, body: object): void {
  if (response.headersSent || response.destroyed) return;
  response.writeHead(status, { "content-type": "application/json" });
  response.end(`${JSON.stringify(body)}\n`);
}

server.requestTimeout = 30_000;
// This machine alone can reach it: put what you trust in front of it.
server.listen(Number(process.argv[2] ?? 0), "127.0.0.1", () => {
  const address = server.address();
  console.log(`http://127.0.0.1:${typeof address === "object" ? address?.port : ""}/ring.stl`);
});

process.once("SIGTERM", async () => {
  server.close();
  server.closeAllConnections();
  await pool.destroy();
});
