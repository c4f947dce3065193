import { expect, it, vi } from "vitest";
import { canCompile } from "../../../src/workbench/engine/can-compile.js";

it("knows whether WebAssembly may be compiled", () => {
  expect(canCompile()).toBe(true);
  vi.stubGlobal("WebAssembly", undefined);
  expect(canCompile()).toBe(false);
  vi.stubGlobal("WebAssembly", {
    Module: class {
      constructor() {
        throw new Error("refused by the page's policy");
      }
    },
  });
  expect(canCompile()).toBe(false);
  vi.unstubAllGlobals();
});
