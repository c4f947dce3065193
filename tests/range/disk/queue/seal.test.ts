import { createHmac } from "node:crypto";
import { expect, it } from "vitest";
import { dropKey, newKey, readKey, requireKey, seal, unseal } from "../../../../src/range/disk/queue/seal.js";
import { folderStore } from "../../../../src/range/disk/store/folder-store.js";
import { tempFolder } from "../../../cli/support.js";

const KEY = "ab".repeat(32);

it("opens for its own key, job and text alone", () => {
  const sealed = seal("made", KEY, "run-1");
  expect(sealed.seal).toBe(createHmac("sha256", KEY).update("run-1\nmade").digest("hex"));
  expect(unseal(sealed, KEY, "run-1")).toBe("made");
  expect(unseal(sealed, "cd".repeat(32), "run-1")).toBeUndefined();
  expect(unseal(sealed, KEY, "run-2")).toBeUndefined();
  expect(unseal({ ...sealed, text: "mads" }, KEY, "run-1")).toBeUndefined();
  for (const other of ["", "zz", sealed.seal.slice(2), `${sealed.seal}00`]) {
    expect(unseal({ ...sealed, seal: other }, KEY, "run-1")).toBeUndefined();
  }
});

it("has a new key for each run, and leaves another's", async () => {
  const store = folderStore(tempFolder());
  expect(await readKey(store)).toBeUndefined();
  const first = await newKey(store);
  await requireKey(store, first.key);
  const second = await newKey(store);
  expect(second.key).not.toBe(first.key);
  expect(second.place).toBe(first.place);
  await expect(requireKey(store, first.key)).rejects.toMatchObject({ code: "queue-taken-over" });
  await dropKey(store, first.key);
  expect(await readKey(store)).toEqual(second);
  await dropKey(store, second.key);
  expect(await readKey(store)).toBeUndefined();
  expect((await newKey(store)).place).not.toBe(first.place);
  await store.put("queue.key", [new TextEncoder().encode("../x y")]);
  expect(await readKey(store)).toBeUndefined();
});
