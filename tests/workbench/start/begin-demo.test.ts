// Covers: src/workbench/start/start-state.ts
import { gzipSync } from "node:zlib";
import { expect, it, vi } from "vitest";
import { begunWith, nameOfDemo, unlessChanged } from "../../../src/workbench/start/begin-demo.js";
import { GUIDE_STEPS, stepBeside } from "../../../src/workbench/start/start-state.js";

it("unpacks the files that a design names", async () => {
  const packed = { "leaf.svg": gzipSync("<svg/>").toString("base64") };
  const { text, files } = await begunWith({ text: "{}", packed });
  expect(text).toBe("{}");
  expect(new TextDecoder().decode(files?.get("leaf.svg"))).toBe("<svg/>");
});

it("takes no place that the maker has given to another design since the start was shown", async () => {
  const stands = { id: "a", text: "{}" };
  const peek = (name: "id" | "text") => ({ peek: () => stands[name] });
  const begin = vi.fn();
  const bench = { begin, id: peek("id"), document: { text: peek("text") } } as never;
  const demo = Promise.resolve({ text: "demo" });
  await unlessChanged(bench)(demo);
  expect(begin).toHaveBeenCalledOnce();
  const leave = unlessChanged(bench);
  stands.id = "b";
  // Told late that the start was closed: the file that was opened meanwhile stays.
  await leave(demo);
  const changed = unlessChanged(bench)(demo);
  stands.text = '{"a":1}';
  await changed;
  expect(begin).toHaveBeenCalledOnce();
});

it("calls a design by its name without what stands in brackets", () => {
  expect(nameOfDemo('{"name": "Saltmarsh lattice (invented for the demo)"}')).toBe("Saltmarsh lattice");
  expect(nameOfDemo("{}")).toBe("");
});

it("leads through the steps and not beyond", () => {
  expect(stepBeside("size", 1)).toBe("band");
  expect(stepBeside("size", -1)).toBeUndefined();
  expect(stepBeside(GUIDE_STEPS[GUIDE_STEPS.length - 1], 1)).toBeUndefined();
});
