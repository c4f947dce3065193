import { signal } from "@preact/signals";
import { expect, it } from "vitest";
import { MARKS, markTimes } from "../../../src/workbench/engine/marks.js";
import { DesignDocument } from "../../../src/workbench/state/document.js";

it("marks a change and what belongs to it, once each", () => {
  const document = new DesignDocument("{}");
  const buffers = signal<unknown>(undefined);
  const end = markTimes({ document, answers: { of: { buffers } } } as never);
  const count = (name: string) => performance.getEntriesByName(name).length;
  expect(count(MARKS.change)).toBe(1);
  document.set(["name"], "a");
  buffers.value = { text: "{}", detail: "draft" };
  expect([count(MARKS.change), count(MARKS.draft)]).toEqual([1, 0]);
  buffers.value = { text: document.text.value, detail: "draft" };
  buffers.value = { text: document.text.value, detail: "full" };
  expect([count(MARKS.draft), count(MARKS.full)]).toEqual([1, 1]);
  end();
  for (const name of Object.values(MARKS)) performance.clearMarks(name);
});
