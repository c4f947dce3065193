// Covers: src/range/disk/store/*
/**
 * The store's interface: the folder that comes with annulet and one in memory do the same, and what is no store is told.
 */
import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import type { AnnuletError } from "../../../../src/base/errors.js";
import { makeRange } from "../../../../src/range/disk/make-range.js";
import { makeVariants } from "../../../../src/range/disk/make-variant.js";
import { keepFile, keepText, sha256Of } from "../../../../src/range/disk/store/keep-file.js";
import { openStore } from "../../../../src/range/disk/store/open-store.js";
import { namesIn } from "../../../../src/range/disk/store/range-store.js";
import { verifyRange } from "../../../../src/range/disk/verify-range.js";
import { PLAIN, put, tempFolder } from "../../../cli/support.js";
import { heldBy, MEMORY_STORE } from "../../../support/memory-store.js";

const bytes = (text: string) => new TextEncoder().encode(text);

const failing = (work: Promise<unknown>): Promise<AnnuletError> =>
  work.then(
    () => expect.fail("nothing was thrown"),
    (error: unknown) => error as AnnuletError,
  );

describe.each([
  ["the disk", () => ({ folder: tempFolder() })],
  ["memory", () => ({ folder: "contract", module: MEMORY_STORE })],
])("a store on %s", (_, place) => {
  it("gives what was put last, lists it, and takes it away", async () => {
    const store = await openStore(place());
    expect([await store.get("rings/a"), await store.has("rings/a"), await namesIn(store, "rings")]).toEqual([
      ...[undefined, undefined, []],
    ]);
    const file = await keepFile(store, "rings/a", [bytes("on"), bytes("e")]);
    expect(file).toEqual({ path: "rings/a", bytes: 3, sha256: sha256Of("one") });
    await store.put("rings/a", [bytes("other")]);
    await store.put("top", []);
    expect(new TextDecoder().decode(await store.get("rings/a"))).toBe("other");
    expect([await store.has("rings/a"), await store.has("top"), await store.has("rings")]).toEqual([5, 0, undefined]);
    expect(await namesIn(store, "rings")).toEqual(["a"]);
    expect(await namesIn(store, "")).toContain("top");
    await store.remove("rings/a");
    await store.remove("rings/a");
    expect(await store.get("rings/a")).toBeUndefined();
  });

  it("keeps what it had where putting fails in the middle", async () => {
    const store = await openStore(place());
    await store.put("rings/b", [bytes("whole")]);
    const broken = function* () {
      yield bytes("ha");
      throw new Error("the source broke");
    };
    await failing(Promise.resolve().then(() => store.put("rings/b", broken())));
    expect(new TextDecoder().decode(await store.get("rings/b"))).toBe("whole");
    expect(await namesIn(store, "rings")).toEqual(["b"]);
  });
});

it("leaves a text alone that stands there already", async () => {
  const held = heldBy("texts");
  const store = await openStore({ folder: "texts", module: MEMORY_STORE });
  await keepText(store, "a", "text");
  const before = held.get("a");
  const again = await keepText(store, "a", "text");
  expect(held.get("a")).toBe(before);
  expect(again).toEqual({ path: "a", bytes: 4, sha256: sha256Of("text") });
  await keepText(store, "a", "next");
  expect(held.get("a")).not.toBe(before);
});

it("holds a range's files byte for byte as the disk does, and is verified", async () => {
  const plan = {
    range: 1,
    base: { ...PLAIN, name: "Heron", tolerance: 0.2 },
    vary: [{ path: "profile.width", values: [3, 4, -1] }],
    outputs: ["stl", "report"],
  };
  const folder = tempFolder();
  const makers = { make: makeVariants, end: async () => {} };
  for (const place of [{ folder }, { folder: "whole", store: MEMORY_STORE }]) {
    const range = makeRange(plan, { ...place, makers, jobs: 1 });
    while ((await range.next()).done !== true);
  }
  const held = heldBy("whole");
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) => /\./.test(path));
  for (const path of paths) expect(await (await openStore(folder)).get(path)).toEqual(held.get(path));
  expect(held.size).toBe(paths.length + 1);
  const place = { folder: "whole", module: MEMORY_STORE };
  expect(await verifyRange(place)).toMatchObject({ files: 7, deviations: [] });
  held.set("rings/Heron-3.stl", bytes("other"));
  expect((await verifyRange(place)).deviations).toEqual([{ path: "rings/Heron-3.stl", what: "changed" }]);
});

it("says what is no store, and what a store said", async () => {
  const folder = tempFolder();
  const module = (name: string, text: string) => pathToFileURL(put(folder, name, text)).href;
  const none = failing(openStore({ folder: "a", module: pathToFileURL(join(folder, "none.mjs")).href }));
  expect(await none).toMatchObject({ code: "store-invalid", hint: expect.stringContaining("openStore") });
  const empty = failing(openStore({ folder: "a", module: module("empty.mjs", "export const a = 1;") }));
  expect((await empty).message).toContain("exports no function openStore");
  const half = module("half.mjs", "export const openStore = () => ({ put() {}, get() {} });");
  expect((await failing(openStore({ folder: "a", module: half }))).message).toContain("without has, list, remove");
  const closed = await failing(openStore({ folder: "closed", module: MEMORY_STORE }));
  expect([closed.code, closed.message]).toEqual(["store-failed", expect.stringContaining("closed on Sundays")]);
  const store = await openStore({ folder: "full", module: MEMORY_STORE });
  const full = await failing(Promise.resolve(store.put("refused", [])));
  expect([full.code, full.message]).toEqual(["store-failed", expect.stringContaining("it is full")]);
  mkdirSync(join(folder, "dir"));
  const disk = await openStore(folder);
  expect((await failing(Promise.resolve().then(() => disk.put("dir", [])))).code).toBe("output-failed");
});
