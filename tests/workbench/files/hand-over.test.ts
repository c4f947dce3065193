import { expect, it, onTestFinished, vi } from "vitest";
import { handOver } from "../../../src/workbench/files/hand-over.js";

it("clicks a link to the bytes, with their name", async () => {
  vi.useFakeTimers();
  onTestFinished(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });
  const clicked: { href: string; download: string }[] = [];
  vi.stubGlobal("document", {
    createElement: () => {
      const link = { href: "", download: "", click: () => clicked.push({ ...link }) };
      return link;
    },
  });
  handOver("ring.stl", Uint8Array.of(1, 2, 3));
  expect(clicked).toMatchObject([{ href: expect.stringMatching(/^blob:/), download: "ring.stl" }]);
  vi.runAllTimers();
});
