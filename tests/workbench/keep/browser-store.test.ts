import { expect, it } from "vitest";
import { browserStore } from "../../../src/workbench/keep/browser-store.js";

it("rejects where there is no storage, and does not throw before it is asked", async () => {
  const store = browserStore();
  const design = { id: "a", name: "a", text: "{}", at: 0, revision: "1", files: [] };
  await expect(store.list()).rejects.toThrow();
  await expect(store.get("a")).rejects.toThrow();
  await expect(store.put(design, undefined)).rejects.toThrow();
  await expect(store.part("file", "a")).rejects.toThrow();
  await expect(store.putPart("file", "a", 1)).rejects.toThrow();
  await expect(store.remove(design)).rejects.toThrow();
});
