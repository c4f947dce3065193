/**
 * A Redis server of a test's own: Debian's `redis-server` on loopback, on a free port, in a temporary folder, with all that is written
 * appended to a file. No service of the system is touched.
 */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Without the program the tests say skipped. */
export const hasRedis = spawnSync("redis-server", ["--version"]).status === 0;

export interface TestRedis {
  readonly url: string;
  /** Kills it, and starts it again after a moment with what it has written. */
  restart(): Promise<void>;
  end(): Promise<void>;
}

export async function startRedis(): Promise<TestRedis> {
  const port = await freePort();
  const folder = mkdtempSync(join(tmpdir(), "annulet-redis-"));
  let server = await launch(port, folder);
  const kill = async () => {
    if (server.exitCode !== null || server.signalCode !== null) return;
    const gone = once(server, "exit");
    server.kill("SIGKILL");
    await gone;
  };
  return {
    url: `redis://127.0.0.1:${port}`,
    async restart() {
      await kill();
      server = await launch(port, folder);
    },
    async end() {
      await kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function launch(port: number, folder: string): Promise<ChildProcess> {
  const words = ["--port", String(port), "--bind", "127.0.0.1", "--dir", folder, "--save", "", "--appendonly", "yes"];
  const server = spawn("redis-server", words, { stdio: ["ignore", "pipe", "ignore"] });
  let said = "";
  for await (const chunk of server.stdout) {
    said += chunk;
    if (said.includes("Ready to accept connections")) break;
  }
  if (server.exitCode !== null) throw new Error(`redis-server ended: ${said}`);
  return server;
}

async function freePort(): Promise<number> {
  const server = createServer();
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  if (address === null || typeof address === "string") throw new Error("no port");
  return address.port;
}
