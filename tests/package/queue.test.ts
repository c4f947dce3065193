// Across: ranges made by workers from one queue, as the package ships them
/**
 * `annulet range --queue` with `annulet worker` as they are built: a worker killed in the middle, then Redis itself.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it, onTestFinished } from "vitest";
import { makeRange } from "../../src/range/disk/make-range.js";
import { makeVariants } from "../../src/range/disk/make-variant.js";
import { verifyRange } from "../../src/range/disk/verify-range.js";
import { PLAIN, put, tempFolder } from "../cli/support.js";
import { hasRedis, startRedis } from "../support/redis.js";

const PROGRAM = fileURLToPath(new URL("../../dist/bin/main.js", import.meta.url));

/** 200 variants: 50 sizes in four alloys, each size one job. */
const PLAN = {
  range: 1,
  base: { ...PLAIN, name: "Heron", tolerance: 0.2 },
  vary: [
    { size: { system: "diameter", from: 14, to: 23.8, step: 0.2 } },
    { material: ["ag925", "au585-yellow", "au750-yellow", "pd950"] },
  ],
  outputs: ["stl"],
};

function start(...words: string[]): ChildProcess & { readonly said: () => string } {
  const child = spawn(process.execPath, [PROGRAM, ...words], { stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) {
    stream?.on("data", (chunk) => {
      said += chunk;
    });
  }
  onTestFinished(() => void child.kill("SIGKILL"));
  return Object.assign(child, { said: () => said });
}

const ringsIn = (folder: string) => {
  const rings = join(folder, "rings");
  return existsSync(rings) ? readdirSync(rings).filter((name) => name.endsWith(".stl")) : [];
};

async function untilThere(count: number, folder: string, child: ChildProcess): Promise<void> {
  while (ringsIn(folder).length < count && child.exitCode === null) {
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

/** Names that a worker's lines say it has made. */
function madeBy(said: string): string[] {
  const lines = said.split("\n").filter((line) => line.startsWith("{"));
  return lines.flatMap((line) => {
    const { names, kinds } = JSON.parse(line) as { names: string[]; kinds: string[] };
    return names.filter((_, i) => kinds[i] === "made");
  });
}

async function alone(folder: string): Promise<void> {
  const makers = { make: makeVariants, end: async () => {} };
  const range = makeRange(PLAN, { folder, makers, jobs: 1 });
  while ((await range.next()).done !== true);
}

it.skipIf(!existsSync(PROGRAM) || !hasRedis)(
  "200 variants by two workers, one killed and Redis killed and started again, are those of one machine",
  { timeout: 300_000 },
  async () => {
    const shop = tempFolder();
    const redis = await startRedis();
    onTestFinished(redis.end);
    const plan = put(shop, "plan.json", PLAN);
    const out = join(shop, "heron");
    const words = [
      "worker",
      "--queue",
      redis.url,
      "-o",
      shop,
      "--jobs",
      "1",
      "--lost-after",
      "2",
      "--queue-wait",
      "5",
      "--json",
    ];
    const workers = [start(...words), start(...words)];
    const range = start("range", plan, "-o", out, "--queue", redis.url);
    const ended = once(range, "exit");
    await untilThere(30, out, range);
    workers[0].kill("SIGKILL");
    await untilThere(80, out, range);
    await redis.restart();
    expect([(await ended)[0], range.said()]).toEqual([
      0,
      expect.stringMatching(/ left out, 0 failed\nmanifest: 200 v/),
    ]);
    const single = join(shop, "single");
    await alone(single);
    const manifest = (folder: string) => readFileSync(join(folder, "manifest.json"), "utf8");
    expect(manifest(out)).toBe(manifest(single));
    expect(await verifyRange(out)).toMatchObject({ files: 203, deviations: [] });
    const made = workers.flatMap(({ said }) => madeBy(said()));
    expect(new Set(made).size).toBe(made.length);
    // Nothing is left of how it was made.
    expect(readdirSync(out).sort()).toEqual([
      ...["index.html", "manifest.json", "records", "rings", "summary.csv", "summary.json"],
    ]);
    const gone = once(workers[1], "exit");
    await redis.end();
    expect((await gone)[0]).toBe(2);
    expect(workers[1].said()).toContain("Redis is not there");
  },
);
