// Covers: src/workbench/keep/kept-design.ts
import { batch, signal } from "@preact/signals";
import { describe, expect, it, onTestFinished } from "vitest";
import { Keep } from "../../../src/workbench/keep/keep.js";
import type { KeepStore } from "../../../src/workbench/keep/kept-design.js";
import type { Begun } from "../../../src/workbench/state/bench.js";
import { type DesignFiles, NO_FILES, withFile } from "../../../src/workbench/state/design-files.js";
import { DesignDocument } from "../../../src/workbench/state/document.js";
import { memoryStore } from "./memory-store.js";

/** One page: a bench without a worker, and what keeps it. */
function page(store: KeepStore, begun: Begun = { text: '{"name":"a"}', id: "a" }) {
  const document = new DesignDocument(begun.text);
  const bench = { document, id: signal(begun.id ?? "?"), files: signal<DesignFiles>(begun.files ?? NO_FILES) };
  document.begin(begun.text, begun.history);
  const keep = new Keep(store);
  onTestFinished(keep.follow(bench));
  const begin = (next: Begun) =>
    batch(() => {
      bench.id.value = next.id ?? "?";
      bench.files.value = next.files ?? NO_FILES;
      document.begin(next.text, next.history);
    });
  return { ...bench, keep, begin };
}

describe("what is kept", () => {
  it("is a design with its files and changes, once it is changed", async () => {
    const store = memoryStore();
    const { document, files, keep } = page(store);
    await keep.flush();
    expect(store.designs.size).toBe(0);
    files.value = withFile(NO_FILES, "leaf.svg", Uint8Array.of(1, 2)).files;
    document.set(["name"], "b");
    document.rest();
    document.set(["name"], "c");
    document.undo();
    expect(keep.behind.value).toBe(true);
    await keep.flush();
    expect(keep.behind.value).toBe(false);
    expect(keep.list.value.map(({ name }) => name)).toEqual(["b"]);

    const other = page(store, { text: "{}", id: "b" });
    const read = await other.keep.read("a");
    other.begin(read as Begun);
    expect(other.document.text.value).toBe('{"name":"b"}');
    expect([...other.files.value]).toEqual([["leaf.svg", Uint8Array.of(1, 2)]]);
    other.document.redo();
    expect(other.document.value.value).toEqual({ name: "c" });
    other.document.undo();
    other.document.undo();
    expect(other.document.value.value).toEqual({ name: "a" });
    expect(await other.keep.read("none")).toBeUndefined();
  });

  it("comes by itself a moment after a change, half written JSON too", async () => {
    const store = memoryStore();
    const { document } = page(store);
    document.type('{"name":"a", ');
    await expect.poll(() => store.designs.get("a")?.text, { timeout: 5000 }).toBe('{"name":"a", ');
  });

  it("is written before another design comes, which is kept for itself", async () => {
    const store = memoryStore();
    const { document, begin, keep } = page(store);
    document.set(["name"], "first");
    begin({ text: '{"name":"second"}', id: "b" });
    await keep.flush();
    expect([...store.designs.keys()]).toEqual(["a"]);
    document.set(["name"], "second, changed");
    await keep.flush();
    expect([...store.designs.values()].map(({ name }) => name)).toEqual(["first", "second, changed"]);
    begin({ text: '{"name":"third"}', id: "c" });
    await keep.keepNow();
    expect(store.designs.get("c")?.name).toBe("third");
  });

  it("is both designs where two pages shape one", async () => {
    const store = memoryStore();
    const first = page(store);
    first.document.set(["name"], "one");
    await first.keep.flush();
    const second = page(store, { text: "{}", id: "elsewhere" });
    second.begin((await second.keep.read("a")) as Begun);
    second.document.set(["name"], "two");
    await second.keep.flush();
    first.document.set(["name"], "one again");
    await first.keep.flush();
    first.document.set(["name"], "one still");
    await first.keep.flush();
    second.document.set(["name"], "two again");
    await second.keep.flush();
    expect([...store.designs.values()].map(({ name }) => name).sort()).toEqual(["one still", "two again"]);
    expect(first.keep.copies.value).toHaveLength(1);
    expect(second.keep.copies.value).toHaveLength(0);
    expect(first.id.value).not.toBe(second.id.value);
  });

  it("is both designs where two pages write at the same moment", async () => {
    const store = memoryStore();
    const pages = Array.from({ length: 6 }, () => page(store));
    for (const [index, { document }] of pages.entries()) document.set(["name"], `page ${index}`);
    await Promise.all(pages.map(({ keep }) => keep.flush()));
    expect([...store.designs.values()].map(({ name }) => name).sort()).toEqual(pages.map((_, i) => `page ${i}`));
  });

  it("can be deleted and brought back, and is gone for good after a month alone", async () => {
    const store = memoryStore();
    const { document, keep, id, files } = page(store);
    files.value = withFile(NO_FILES, "leaf.svg", Uint8Array.of(1)).files;
    document.set(["name"], "b");
    await keep.flush();
    await keep.keepPicture("a", Uint8Array.of(7));
    expect(await keep.picture("a")).toEqual(Uint8Array.of(7));
    expect(await keep.picture("none")).toBeUndefined();
    await keep.remove("a");
    expect(keep.list.value[0].deleted).toBeGreaterThan(0);
    await keep.bringBack("a");
    expect(keep.list.value[0].deleted).toBeUndefined();
    document.set(["name"], "c");
    await keep.flush();
    expect(id.value).toBe("a");
    await keep.remove("a");
    await keep.refresh(Date.now() + 29 * 86_400_000);
    expect(keep.list.value).toHaveLength(1);
    await keep.refresh(Date.now() + 31 * 86_400_000);
    expect(keep.list.value).toHaveLength(0);
    expect(store.parts.size).toBe(0);
  });

  it("waits while storage is full or forbidden, says so, and is written once there is room", async () => {
    const store = memoryStore();
    const { document, keep } = page(store);
    store.wrong = new DOMException("no room", "QuotaExceededError");
    document.set(["name"], "b");
    await keep.flush();
    expect([keep.trouble.value, keep.behind.value]).toEqual(["full", true]);
    store.wrong = new DOMException("no", "SecurityError");
    document.set(["name"], "c");
    await keep.flush();
    expect([keep.trouble.value, keep.behind.value]).toEqual(["forbidden", true]);
    store.wrong = undefined;
    document.set(["name"], "d");
    await keep.flush();
    expect([keep.trouble.value, keep.behind.value]).toEqual([undefined, false]);
    expect(store.designs.get("a")?.name).toBe("d");
  });

  it("knows what a design's file held on the disk", async () => {
    const store = memoryStore();
    const { document, keep } = page(store);
    keep.setBase("a", "digest 1");
    document.set(["name"], "b");
    await keep.flush();
    expect((await page(store).keep.read("a"))?.base).toBe("digest 1");
    keep.setBase("a", "digest 2");
    await keep.flush();
    expect((await page(store).keep.read("a"))?.base).toBe("digest 2");
  });
});
