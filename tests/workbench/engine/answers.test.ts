// Covers: src/workbench/engine/ring-host.ts, src/workbench/engine/ring-library.ts, src/workbench/engine/worker.ts, src/workbench/state/bench.ts, src/workbench/engine/unpack.ts
import { gzipSync } from "node:zlib";
import { describe, expect, it, onTestFinished, vi } from "vitest";
import { openRing, toBuffers } from "../../../src/index.js";
import { Answers } from "../../../src/workbench/engine/answers.js";
import { startHost } from "../../../src/workbench/engine/ring-host.js";
import { unpack } from "../../../src/workbench/engine/unpack.js";
import { openBench } from "../../../src/workbench/state/bench.js";
import { withFile } from "../../../src/workbench/state/design-files.js";

const DOCUMENT = {
  annulet: 1,
  name: "Bench ring",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 4, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
};
const TEXT = JSON.stringify(DOCUMENT);

/** What the worker's file does with the page's message. */
let heard: ((message: { data: unknown }) => void) | undefined;
vi.stubGlobal("addEventListener", (_: string, hear: typeof heard) => {
  heard = hear;
});
await import("../../../src/workbench/engine/worker.js");
vi.unstubAllGlobals();

/** A worker that lives in this thread. */
class NearWorker extends EventTarget {
  postMessage(data: unknown): void {
    heard?.({ data });
  }
  terminate(): void {}
}

const nearWorker = () => new NearWorker() as unknown as Worker;

describe("the answers of the page", () => {
  it("come at draft at once and in full after a pause", async () => {
    const host = startHost(nearWorker, () => undefined);
    const answers = new Answers(host.rings);
    answers.show(TEXT);
    expect(answers.pending.value).toBe(true);
    await vi.waitFor(() => expect(answers.of.buffers.value?.detail).toBe("draft"), 20_000);
    // In the pause before the full ring nothing is worked, and all the same something is still to come.
    await vi.waitFor(() => expect(answers.working.value).toBeUndefined(), 20_000);
    expect(answers.pending.value).toBe(true);
    await vi.waitFor(() => expect(answers.of.check.value?.detail).toBe("full"), 20_000);
    await vi.waitFor(() => expect(answers.pending.value).toBe(false), 5_000);
    expect(answers.working.value).toBeUndefined();
    const own = toBuffers(await openRing(TEXT).solid());
    expect(answers.of.buffers.value?.value.positions).toEqual(own.positions);
    expect(answers.of.size.value?.value.circumference).toBeCloseTo(54, 9);
    expect(answers.problems.value).toEqual([]);
    host.end();
  });

  it("tell what is wrong once, and keep the last ring", async () => {
    const bench = openBench({ text: TEXT, startWorker: nearWorker, setup: {} });
    await vi.waitFor(() => expect(bench.answers.of.report.value).toBeDefined(), 20_000);
    bench.document.set(["material"], "tin");
    await vi.waitFor(() => expect(bench.answers.problems.value).toHaveLength(1), 20_000);
    expect(bench.answers.problems.value[0]).toMatchObject({ path: "material" });
    expect(bench.answers.of.buffers.value?.text).toBe(TEXT);
    bench.document.undo();
    await vi.waitFor(() => expect(bench.answers.problems.value).toEqual([]), 20_000);
    bench.end();
  });

  it("follow the newest of many changes alone, and stop when told to", async () => {
    const bench = openBench({ text: TEXT, startWorker: nearWorker, setup: {} });
    for (let width = 4; width < 5; width += 0.05) bench.document.set(["profile", "width"], width);
    const { text } = bench.document;
    await vi.waitFor(() => expect(bench.answers.of.buffers.value?.text).toBe(text.value), 20_000);
    bench.answers.stop();
    expect(bench.answers.stopped.value).toBe(true);
    await vi.waitFor(() => expect(bench.answers.pending.value).toBe(false), 5_000);
    bench.document.set(["profile", "width"], 6);
    await vi.waitFor(() => expect(bench.answers.of.buffers.value?.text).toBe(text.value), 20_000);
    expect(bench.answers.stopped.value).toBe(false);
    bench.end();
  });

  it("come on the way of a drag that changes the document faster than drafts are made", async () => {
    const bench = openBench({ text: TEXT, startWorker: nearWorker, setup: {} });
    await vi.waitFor(() => expect(bench.answers.of.buffers.value?.text).toBe(TEXT), 20_000);
    const { text } = bench.document;
    let onTheWay = 0;
    const unfollow = bench.answers.of.buffers.subscribe((answer) => {
      if (answer !== undefined && answer.text !== text.peek()) onTheWay++;
    });
    for (let step = 1; onTheWay < 2 && step < 5000; step++) {
      bench.document.set(["profile", "width"], 4 + step / 1000);
      await new Promise((done) => setTimeout(done, 1));
    }
    expect(onTheWay).toBeGreaterThanOrEqual(2);
    await vi.waitFor(() => expect(bench.answers.pending.value).toBe(false), 20_000);
    expect(bench.answers.of.buffers.value).toMatchObject({ text: text.value, detail: "full" });
    unfollow();
    bench.end();
  });

  it("begin nothing anew that waited for a draft when the maker stopped it", async () => {
    const bench = openBench({ text: TEXT, startWorker: nearWorker, setup: {} });
    bench.document.set(["profile", "width"], 5);
    bench.answers.stop();
    await vi.waitFor(() => expect(bench.answers.pending.value).toBe(false), 5_000);
    await new Promise((done) => setTimeout(done, 50));
    expect(bench.answers.pending.value).toBe(false);
    expect(bench.answers.of.buffers.value).toBeUndefined();
    bench.end();
  });

  it("take files of the bench, then others, and ask anew when files come", async () => {
    const drawn = { ...DOCUMENT, pattern: { regions: [{ svg: "own.svg", height: 0.2 }] } };
    const square = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h8v8h-8z"/></svg>';
    const bench = openBench({ text: JSON.stringify(drawn), startWorker: nearWorker, setup: {} });
    await vi.waitFor(() => expect(bench.answers.problems.value[0]?.code).toBe("svg-file-missing"), 20_000);
    const { files, name } = withFile(bench.files.value, "own.svg", new TextEncoder().encode(square));
    expect(name).toBe("own.svg");
    bench.files.value = files;
    await vi.waitFor(() => expect(bench.answers.of.tile.value?.value?.regions).toHaveLength(1), 20_000);
    bench.begin({ text: TEXT });
    expect(bench.files.value.size).toBe(0);
    expect(bench.document.changes.value).toHaveLength(1);
    await vi.waitFor(() => expect(bench.answers.of.report.value?.text).toBe(TEXT), 20_000);
    bench.end();
  });

  it("go on with another worker where one died", async () => {
    const workers: NearWorker[] = [];
    const startWorker = () => {
      workers.push(new NearWorker());
      return workers.at(-1) as unknown as Worker;
    };
    const bench = openBench({ text: TEXT, startWorker, setup: {} });
    await vi.waitFor(() => expect(bench.answers.of.report.value).toBeDefined(), 20_000);
    workers[0].dispatchEvent(new Event("error"));
    expect(workers).toHaveLength(2);
    bench.document.set(["profile", "width"], 5);
    await vi.waitFor(() => expect(bench.answers.of.buffers.value?.text).toBe(bench.document.text.value), 20_000);
    bench.end();
  });
});

it("the worker is taken for dead where it answers no more, and says nothing of it", () => {
  vi.useFakeTimers();
  onTestFinished(() => void vi.useRealTimers());
  const mute = new NearWorker();
  mute.postMessage = () => undefined;
  const terminate = vi.spyOn(mute, "terminate");
  const onLost = vi.fn();
  startHost(() => mute as unknown as Worker, onLost);
  vi.advanceTimersByTime(10_000);
  expect(onLost).not.toHaveBeenCalled();
  vi.advanceTimersByTime(300_000);
  expect(onLost).toHaveBeenCalledOnce();
  expect(terminate).toHaveBeenCalledOnce();
});

describe("the library in the worker", () => {
  it("tells fields, motifs and sizes", async () => {
    const host = startHost(nearWorker, () => undefined);
    const [outside] = await host.library.explain("profile.outside");
    expect(outside.forms.map((form) => form.name)).toContain("channel");
    expect(await host.library.motifs()).not.toHaveLength(0);
    expect(await host.library.sizeLabels({ system: "uk", value: "N" })).toContainEqual(
      expect.objectContaining({ system: "uk", label: "N" }),
    );
    expect(await host.library.alloys()).toContainEqual(expect.objectContaining({ symbol: "ag925" }));
    expect(await host.library.sizeSystems()).toContainEqual(expect.objectContaining({ name: "japan" }));
    expect(await host.library.cautions()).not.toHaveLength(0);
    host.end();
  });
});

describe("bytes that the page carries", () => {
  it("come out as they went in", async () => {
    const bytes = Uint8Array.from({ length: 5000 }, (_, index) => (index * index) % 251);
    expect(await unpack(gzipSync(bytes).toString("base64"))).toEqual(bytes);
  });
});
