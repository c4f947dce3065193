/**
 * What a range costs over bare builds of its rings, how much a second core brings, and what the queue takes: all in one run. The queue
 * is measured where there is a `redis-server`.
 */
import { spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { large, text } from "./designs.js";
import { PROGRAM } from "./run-child.js";
import { startTree, type TreeUsage } from "./run-tree.js";

export interface RangeTiming extends TreeUsage {
  readonly what: string;
  /** CPU over that of bare builds. */
  readonly ofBare: number;
  /** CPU and wall over those of the range by one process. */
  readonly ofRange: number;
  readonly wallOfRange: number;
}

/** How many rings, by effort: the README's design, each thicker than the one before by so many mm. */
const RINGS = { quick: 4, full: 40 };
const STEP = 0.001;

/** Coarse, mm: a ring takes about two seconds. */
const TOLERANCE = 0.03;

export async function timeRanges(quick: boolean): Promise<readonly RangeTiming[]> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "annulet-bench-"));
  try {
    return rowsOf(await timeAll(folder, quick ? RINGS.quick : RINGS.full));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

type Timed = readonly [what: string, usage: TreeUsage];

async function timeAll(folder: string, count: number): Promise<readonly Timed[]> {
  const base = { ...JSON.parse(text(large)), tolerance: TOLERANCE };
  const values = Array.from({ length: count }, (_, i) => Number((base.profile.thickness + STEP * i).toFixed(3)));
  const designs = values.map((thickness) => {
    return { ...base, name: `ring-${thickness}`, profile: { ...base.profile, thickness } };
  });
  const [list, plan, bare] = ["designs.json", "plan.json", "bare"].map((name) => path.join(folder, name));
  mkdirSync(bare);
  writeFileSync(list, JSON.stringify(designs));
  const vary = [{ path: "profile.thickness", values }];
  writeFileSync(plan, JSON.stringify({ range: 1, base, vary, outputs: ["stl", "report"] }));
  const child = fileURLToPath(new URL("bare-child.js", import.meta.url));
  const timed: Timed[] = [["bare builds, one process", await timeOne([child, list, bare])]];
  const range = (...words: string[]) => timeOne([PROGRAM, "range", plan, ...words]);
  timed.push(["range, 1 process", await range("-o", path.join(folder, "one"), "--jobs", "1")]);
  timed.push(["range, 2 processes", await range("-o", path.join(folder, "two"), "--jobs", "2")]);
  if (spawnSync("redis-server", ["--version"]).status !== 0) return timed;
  for (const jobs of ["1", "2"]) {
    const out = path.join(folder, `queue-${jobs}`);
    timed.push([`queue, worker of ${jobs}`, await timeQueue(folder, (url) => range("-o", out, "--queue", url), jobs)]);
  }
  return timed;
}

function timeOne(words: readonly string[]): Promise<TreeUsage> {
  process.stderr.write(`${path.basename(words[0])} ${words.slice(1, 2).join(" ")}\n`);
  return startTree([process.execPath, ...words]).done;
}

/** What ends by SIGTERM says so with its code. */
const BY_SIGNAL = [0, 143];

/** The range's wall, and the CPU of range, worker and Redis. */
async function timeQueue(folder: string, range: (url: string) => Promise<TreeUsage>, jobs: string): Promise<TreeUsage> {
  const port = await freePort();
  const url = `redis://127.0.0.1:${port}`;
  const words = ["--port", String(port), "--bind", "127.0.0.1", "--dir", folder, "--save", ""];
  const redis = startTree(["redis-server", ...words], BY_SIGNAL);
  const worker = [PROGRAM, "worker", "--queue", url, "-o", folder, "--jobs", jobs];
  const serving = startTree([process.execPath, ...worker], BY_SIGNAL);
  const { wall, cpu } = await range(url);
  const others = [await serving.end(), await redis.end()];
  return { wall, cpu: others.reduce((sum, other) => sum + other.cpu, cpu) };
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  if (address === null || typeof address === "string") throw new Error("no port");
  return address.port;
}

function rowsOf(timed: readonly Timed[]): readonly RangeTiming[] {
  const [[, bare], [, one]] = timed;
  return timed.map(([what, { wall, cpu }]) => ({
    what,
    wall,
    cpu,
    ofBare: cpu / bare.cpu,
    ofRange: cpu / one.cpu,
    wallOfRange: wall / one.wall,
  }));
}
