import { renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { stampOf, waitForChange } from "../../src/cli/wait-for-change.js";
import { put, tempFolder } from "./support.js";

it.each([
  ["is written again", (folder: string) => put(folder, "a.json", "longer than before")],
  ["is replaced by another", (folder: string) => renameSync(put(folder, "b.json", "one"), join(folder, "a.json"))],
  ["goes", (folder: string) => rmSync(join(folder, "a.json"))],
])("a file that %s is seen", async (_, change) => {
  const folder = tempFolder();
  const paths = [put(folder, "a.json", "one"), join(folder, "none.svg")];
  const before = stampOf(paths);
  const seen = waitForChange(paths, before);
  change(folder);
  await seen;
  expect(stampOf(paths)).not.toBe(before);
});

it("a change that came before the waiting is seen too, and the signal ends it", async () => {
  const folder = tempFolder();
  const paths = [put(folder, "a.json", "one")];
  const before = stampOf(paths);
  put(folder, "a.json", "another");
  await waitForChange(paths, before);
  const stopper = new AbortController();
  const waiting = waitForChange(paths, stampOf(paths), stopper.signal);
  stopper.abort();
  await expect(waiting).rejects.toMatchObject({ name: "AbortError" });
});
