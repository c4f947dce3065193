// Covers: src/range/disk/queue/queue-makers.ts, src/range/disk/queue/queue-link.ts
/**
 * Ranges and workers in this process, over a Redis of the test's own.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Queue, Worker } from "bullmq";
import { Redis } from "ioredis";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { AnnuletError } from "../../../../src/base/errors.js";
import { makeRange } from "../../../../src/range/disk/make-range.js";
import { makeVariants } from "../../../../src/range/disk/make-variant.js";
import type { Makers } from "../../../../src/range/disk/makers.js";
import { PREFIX, QUEUE_NAME } from "../../../../src/range/disk/queue/queue-link.js";
import { type ServeSetup, serveRanges } from "../../../../src/range/disk/queue/serve-ranges.js";
import type { RangeEvent } from "../../../../src/range/disk/range-run.js";
import type { RangeSetup } from "../../../../src/range/disk/range-setup.js";
import { PLAIN, put, tempFolder } from "../../../cli/support.js";
import { heldBy, MEMORY_STORE } from "../../../support/memory-store.js";
import { hasRedis, startRedis, type TestRedis } from "../../../support/redis.js";

const BASE = { ...PLAIN, name: "Heron", tolerance: 0.2 };
const widths = (...values: number[]) => ({
  range: 1,
  base: BASE,
  vary: [{ path: "profile.width", values }],
  outputs: ["stl"],
});

const inside: Makers = { make: makeVariants, end: async () => {} };

let redis: TestRedis;
let own: Redis;
let queue: Queue;

beforeAll(async () => {
  if (!hasRedis) return;
  redis = await startRedis();
  own = new Redis(redis.url, { maxRetriesPerRequest: null });
  queue = new Queue(QUEUE_NAME, { connection: own, prefix: PREFIX });
});

afterAll(async () => {
  if (!hasRedis) return;
  await queue.close();
  own.disconnect();
  await redis.end();
});

/** Starts a worker that ends with the test, or before. */
function serve(folder: string, setup: Partial<ServeSetup> = {}) {
  const stop = new AbortController();
  const news: string[] = [];
  const done = serveRanges({
    queue: redis.url,
    folder,
    jobs: 2,
    makers: inside,
    signal: stop.signal,
    onNews: (text) => news.push(text),
    ...setup,
  });
  const end = () => {
    stop.abort();
    return done;
  };
  onTestFinished(() => end().catch(() => {}));
  return { end, news, done };
}

async function run(plan: object, folder: string, setup: Partial<RangeSetup> = {}) {
  const events: RangeEvent[] = [];
  const range = makeRange(plan, { folder, queue: redis.url, ...setup });
  let step = await range.next();
  for (; step.done !== true; step = await range.next()) events.push(step.value);
  return { manifest: step.value, kinds: events.map(({ kind }) => kind).sort(), events };
}

const alone = (plan: object, folder: string, setup: Partial<RangeSetup> = {}) =>
  run(plan, folder, { queue: undefined, makers: inside, jobs: 1, ...setup });

async function until(isSo: () => boolean | Promise<boolean>): Promise<void> {
  while (!(await isSo())) await new Promise((resolve) => setTimeout(resolve, 10));
}

const manifestIn = (folder: string) => readFileSync(join(folder, "manifest.json"), "utf8");

/** Makes nothing until it is ended. */
function endless(): Makers & { readonly begun: string[] } {
  const stop = new AbortController();
  const begun: string[] = [];
  return {
    begun,
    make: ({ variants: [{ name }] }) =>
      new Promise((_, reject) => {
        begun.push(name);
        stop.signal.addEventListener("abort", () => reject(new AnnuletError({ code: "maker-lost", message: "ended" })));
      }),
    end: async () => stop.abort(),
  };
}

describe.skipIf(!hasRedis)("a range on a queue", () => {
  it("is beside another what one machine makes, with files that its designs name, faults and gaps", async () => {
    const [shop, planFolder, single] = [tempFolder(), tempFolder(), tempFolder()];
    put(planFolder, "leaf.svg", `<svg xmlns="http://www.w3.org/2000/svg"><rect width="5" height="6"/></svg>`);
    const drawn = (svg: string) => ({
      fit: { repeats: 6, hold: "band" },
      regions: [{ svg, unit: "mm", height: 0.2, place: { fit: [1, 1] } }],
    });
    const files = {
      ...widths(4),
      vary: [{ path: "pattern", values: ["leaf.svg", "none.svg", "../leaf.svg"].map(drawn), name: "art" }],
      name: "{n}",
    };
    const plain = { ...widths(3, -1, 60), leaveOut: [{ figure: "bandWidth", above: 50 }] };
    serve(shop);
    const [one, two] = await Promise.all([
      run(files, join(shop, "files"), { planFolder }),
      run(plain, join(shop, "plain")),
    ]);
    expect(one.kinds).toEqual(["failed", "failed", "made"]);
    expect(two.kinds).toEqual(["failed", "left-out", "made"]);
    await alone(files, join(single, "files"), { planFolder });
    await alone(plain, join(single, "plain"));
    for (const name of ["files", "plain"]) {
      expect(manifestIn(join(shop, name))).toBe(manifestIn(join(single, name)));
      expect(readdirSync(join(shop, name)).sort()).toEqual(
        name === "plain"
          ? readdirSync(join(single, name)).sort()
          : [...readdirSync(join(single, name)), "files"].sort(),
      );
    }
    expect(readdirSync(join(shop, "files/files"))).toEqual([]);
    const again = await run(plain, join(shop, "plain"));
    expect(again.kinds).toEqual(["failed", "kept", "left-out"]);
  });

  it("goes into any store that both sides are given", async () => {
    serve("nowhere", { store: MEMORY_STORE });
    const { kinds } = await run(widths(3, 4), "queued", { store: MEMORY_STORE });
    expect(kinds).toEqual(["made", "made"]);
    expect([...heldBy("queued").keys()].filter((path) => path.endsWith(".stl"))).toHaveLength(2);
    expect(heldBy("queued").has("queue.key")).toBe(false);
  });

  it("has what was lost with its worker made by another", async () => {
    const shop = tempFolder();
    const client = new Redis(redis.url, { maxRetriesPerRequest: null });
    // Takes one job and is gone, without a word.
    const dying = new Worker(QUEUE_NAME, () => new Promise(() => {}), {
      connection: client,
      prefix: PREFIX,
      lockDuration: 300,
      skipStalledCheck: true,
    });
    const taken = new Promise<void>((resolve) => void dying.on("active", () => resolve()));
    const made = run(widths(3, 4), join(shop, "heron"));
    await taken;
    await dying.close(true);
    client.disconnect();
    // When was last looked for lost ones, by any worker.
    await own.del(`${PREFIX}:${QUEUE_NAME}:stalled-check`);
    serve(shop, { lostAfter: 0.5 });
    expect((await made).kinds).toEqual(["made", "made"]);
  });

  it("is tried again where a worker's disk fails, and not where a variant does not end", async () => {
    const shop = tempFolder();
    const tried: string[] = [];
    const failing: Makers = {
      ...inside,
      async make(task) {
        const [{ number, name }] = task.variants;
        tried.push(name);
        if (name === "Heron-4") throw new AnnuletError({ code: "variant-stuck", message: "it was killed" });
        if (tried.filter((one) => one === name).length > 1) return makeVariants(task);
        const problem = { code: "output-failed", message: "the disk is full" };
        return { answers: [{ number, kind: "failed", problems: [problem] }], memory: 0 };
      },
    };
    serve(shop, { makers: failing });
    const { events } = await run(widths(3, 4), join(shop, "heron"));
    expect(events.map(({ name, kind }) => [name, kind]).sort()).toEqual([
      ["Heron-3", "made"],
      ["Heron-4", "failed"],
    ]);
    expect(tried.toSorted()).toEqual(["Heron-3", "Heron-3", "Heron-4"]);
  });

  it("makes nothing of what strangers put on the queue, and believes nothing that they answer", async () => {
    const shop = tempFolder();
    const stop = endless();
    const held = serve(shop, { makers: stop, jobs: 1 });
    const heron = join(shop, "heron");
    const made = run(widths(3, 4), heron);
    await until(() => stop.begun.length === 1);
    const [waiting] = await queue.getWaiting();
    // What its own run has sealed, for another job; and an answer that nobody has sealed.
    await queue.add("make", waiting.data, { jobId: "again" });
    const forged = JSON.stringify({ text: JSON.stringify({ answers: [] }), seal: "00".repeat(32) });
    const events = `${PREFIX}:${QUEUE_NAME}:events`;
    await own.xadd(events, "*", "event", "completed", "jobId", waiting.id ?? "", "returnvalue", forged);
    const key = "ab".repeat(32);
    mkdirSync(join(shop, "other"));
    const sealed = { text: "{}", seal: key };
    const taken = { range: "heron", place: waiting.data.place, ...sealed };
    const others = [{ range: "../etc", place: key, ...sealed }, taken, { ...taken, range: "other" }];
    for (const data of [{}, 7, ...others]) {
      await queue.add("make", data, { jobId: `stranger-${JSON.stringify(data)}`.replaceAll(":", "") });
    }
    await own.hset(`${PREFIX}:${QUEUE_NAME}:${waiting.id}`, "name", "../../x");
    // Not even JSON.
    await own.hset(`${PREFIX}:${QUEUE_NAME}:broken`, { name: "make", data: "{", opts: "{}", timestamp: "1" });
    await own.lpush(`${PREFIX}:${QUEUE_NAME}:wait`, "broken");
    await held.end();
    serve(shop, { jobs: 3 });
    const { events: told } = await made;
    const failed = told.flatMap((event) => (event.kind === "failed" ? event.problems : []));
    expect(told.map(({ kind }) => kind).sort()).toEqual(["failed", "made"]);
    expect(failed).toEqual([
      expect.objectContaining({ code: "maker-lost", message: expect.stringContaining("sealed") }),
    ]);
    await until(async () => (await queue.getFailedCount()) >= 4);
    expect(readdirSync(shop).sort()).toEqual(["heron", "other"]);
    expect(readdirSync(join(shop, "other"))).toEqual([]);
    // The same run again makes what the forgery has cost.
    expect((await run(widths(3, 4), heron)).kinds).toEqual(["kept", "made"]);
    await queue.obliterate({ force: true });
  });

  it("gives way where another run begins in its folder", async () => {
    const shop = tempFolder();
    const heron = join(shop, "heron");
    const first = run(widths(3, 4), heron);
    const gone = expect(first).rejects.toMatchObject({ code: "queue-taken-over" });
    await until(async () => (await queue.getWaitingCount()) === 2);
    const second = run(widths(4, 5), heron);
    // The first one's are off the queue by then; it finds that out as it hears of it.
    const texts = async () => (await queue.getWaiting()).map(({ data }) => data.text as string);
    await until(async () => (await texts()).some((text) => text.includes("Heron-5")));
    serve(shop);
    expect((await second).kinds).toEqual(["made", "made"]);
    await gone;
    expect(readdirSync(join(heron, "rings")).sort()).toEqual(["Heron-4.stl", "Heron-5.stl"]);
  });

  it("takes its jobs off the queue when it is ended", async () => {
    const shop = tempFolder();
    const stop = new AbortController();
    const made = run(widths(3, 4, 5), join(shop, "heron"), { signal: stop.signal });
    await until(async () => (await queue.getWaitingCount()) === 3);
    stop.abort(new Error("enough"));
    await expect(made).rejects.toThrow("enough");
    expect(await queue.getJobCounts()).toMatchObject({ waiting: 0, active: 0, delayed: 0 });
    expect((await run(widths(3), join(shop, "heron"), { queue: undefined, makers: inside })).kinds).toEqual(["made"]);
  });
});

describe.skipIf(!hasRedis)("a worker", () => {
  it("gives back what it is at when it is ended, and another makes it at once", async () => {
    const shop = tempFolder();
    const makers = endless();
    const first = serve(shop, { makers, jobs: 1 });
    const made = run(widths(3), join(shop, "heron"));
    await until(() => makers.begun.length === 1);
    await first.end();
    serve(shop);
    expect((await made).kinds).toEqual(["made"]);
  });

  it("does not take a range of the same name in another folder for its own", async () => {
    const [shop, other] = [tempFolder(), tempFolder()];
    const held = endless();
    const busy = serve(shop, { makers: held, jobs: 1 });
    const here = run(widths(3, 4), join(shop, "heron"));
    await until(() => held.begun.length === 1);
    // Begins while the other is at work, and neither waits for it nor takes its jobs off the queue.
    const there = run(widths(5), join(other, "heron"));
    await until(async () => (await queue.getWaitingCount()) === 2);
    await busy.end();
    serve(shop);
    serve(other);
    expect([(await here).kinds, (await there).kinds]).toEqual([["made", "made"], ["made"]]);
    expect(readdirSync(join(other, "heron/rings"))).toEqual(["Heron-5.stl"]);
  });

  it("leaves to others a range whose folder it does not have, and says so", async () => {
    const shop = tempFolder();
    const astray = serve(tempFolder(), { jobs: 1 });
    const made = run(widths(3), join(shop, "heron"));
    await until(() => astray.news.some((text) => text.includes("asks for the range heron")));
    serve(shop);
    expect((await made).kinds).toEqual(["made"]);
  });
});

describe.skipIf(!hasRedis)("Redis", () => {
  it("that is not there is told at once, and one that stays away after a while; the same command goes on", async () => {
    const shop = tempFolder();
    const other = await startRedis();
    const heron = join(shop, "heron");
    const news: string[] = [];
    const setup = { queue: other.url, queueWait: 0.5, onNews: (text: string) => void news.push(text) };
    const worker = serve(shop, { ...setup, jobs: 1 });
    const range = makeRange(widths(3, 4, 5, 6, 7, 8), { ...setup, folder: heron });
    await range.next();
    const left = expect(worker.done).rejects.toMatchObject({ code: "queue-away" });
    await other.end();
    const rest = async () => {
      while ((await range.next()).done !== true);
    };
    await expect(rest()).rejects.toMatchObject({ code: "queue-away", message: expect.stringContaining("0.5 s") });
    await left;
    // What workers are at may still be stored.
    expect(existsSync(join(heron, "queue.key"))).toBe(true);
    expect(news).toContain(`${other.url} is away; waiting for it, 0.5 s at most`);
    const none = run(widths(3), join(shop, "none"), { queue: other.url, queueWait: 0.5 });
    await expect(none).rejects.toMatchObject({ code: "queue-away", message: expect.stringContaining("ECONNREFUSED") });
    serve(shop);
    const { kinds } = await run(widths(3, 4, 5, 6, 7, 8), heron);
    expect(kinds).toHaveLength(6);
    expect(kinds).toContain("kept");
  });
});
