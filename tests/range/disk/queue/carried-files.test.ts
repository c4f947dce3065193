import { expect, it } from "vitest";
import { AnnuletError } from "../../../../src/base/errors.js";
import { carriedFiles, FileCarrier } from "../../../../src/range/disk/queue/carried-files.js";
import { sha256Of } from "../../../../src/range/disk/store/keep-file.js";
import { openStore } from "../../../../src/range/disk/store/open-store.js";
import { heldBy, MEMORY_STORE } from "../../../support/memory-store.js";

const reader = (source: unknown) => source as (name: string) => Promise<Uint8Array | undefined>;

it("gives a worker the bytes that the design's name had, once for all that name them", async () => {
  const held = heldBy("carried");
  const store = await openStore({ folder: "carried", module: MEMORY_STORE });
  const files = { "a.svg": "<svg/>", "same.svg": "<svg/>", "b.png": Uint8Array.of(1, 2) };
  const carrier = new FileCarrier(store, files);
  const carried = await carrier.carry({ "a.svg": "", "same.svg": "", "b.png": "", "none.svg": "missing" });
  expect([...held.keys()].sort()).toEqual(
    [sha256Of("<svg/>"), sha256Of(files["b.png"])].map((d) => `files/${d}`).sort(),
  );
  const read = reader(carriedFiles(store, carried));
  expect(await read("b.png")).toEqual(Buffer.from([1, 2]));
  expect(new TextDecoder().decode(await read("same.svg"))).toBe("<svg/>");
  expect(await read("none.svg")).toBeUndefined();
  expect(await read("toString")).toBeUndefined();
  held.set(`files/${carried.digests["a.svg"]}`, Uint8Array.of(0));
  await expect(read("a.svg")).rejects.toMatchObject({ code: "store-failed", message: /was changed/ });
  await carrier.clear();
  expect(held.size).toBe(0);
  await expect(read("a.svg")).rejects.toMatchObject({ code: "store-failed", message: /is not in/ });
});

it("tells what is wrong with a file in the words of where the range was begun", async () => {
  const store = await openStore({ folder: "faults", module: MEMORY_STORE });
  const fault = new AnnuletError({ code: "file-outside-folder", message: "the file ../a lies outside" });
  const carrier = new FileCarrier(store, () => {
    throw fault;
  });
  const carried = JSON.parse(JSON.stringify(await carrier.carry({ "../a": "missing" })));
  await expect(reader(carriedFiles(store, carried))("../a")).rejects.toMatchObject({ problems: fault.problems });
});
