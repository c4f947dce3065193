import { afterEach, describe, expect, it, vi } from "vitest";
import { isWasmPlace, mendWasm } from "../../src/base/wasm-places.js";

// What was told counts for the process: nothing told is how others find it.
afterEach(() => {
  vi.resetModules();
  vi.unstubAllGlobals();
});

/** The module as a process has it that was told nothing. */
const fresh = () => {
  vi.resetModules();
  return import("../../src/base/wasm-places.js");
};

describe("where WebAssembly is", () => {
  it("is beside the library until told otherwise, for each library apart", async () => {
    const { tellWasm: tell, wasmStart: start } = await fresh();
    expect(start("manifold")).toEqual({});
    tell({ harfbuzz: "https://example.test/h.wasm" });
    expect(start("manifold")).toEqual({});
    expect(start("harfbuzz").locateFile?.()).toBe("https://example.test/h.wasm");
    tell({});
    tell();
    expect(start("harfbuzz").locateFile?.()).toBe("https://example.test/h.wasm");
    tell({ harfbuzz: new URL("https://example.test/other.wasm") });
    expect(start("harfbuzz").locateFile?.()).toBe("https://example.test/other.wasm");
  });

  it("may be bytes, which are copied", async () => {
    const { tellWasm: tell, wasmStart: start } = await fresh();
    const bytes = Uint8Array.of(0, 97, 115, 109);
    tell({ manifold: bytes });
    bytes[0] = 9;
    expect([...(start("manifold").wasmBinary ?? [])]).toEqual([0, 97, 115, 109]);
    tell({ manifold: Uint8Array.of(1, 2).buffer });
    expect([...(start("manifold").wasmBinary ?? [])]).toEqual([1, 2]);
  });

  it.each([[""], [7], [null], [[]], [{ href: "x" }], [undefined]])("is not %j", (place) => {
    expect(isWasmPlace(place)).toBe(false);
  });

  it.each([["a.wasm"], [new URL("https://example.test/a.wasm")], [Uint8Array.of(1)], [new ArrayBuffer(1)]])(
    "is %j",
    (place) => {
      expect(isWasmPlace(place)).toBe(true);
    },
  );

  it("has a remedy that names the file, or says that there is no WebAssembly", () => {
    expect(mendWasm("harfbuzz")).toMatch(/annulet\/harfbuzz\.wasm.*wasm: \{ harfbuzz/);
    vi.stubGlobal("WebAssembly", undefined);
    expect(mendWasm("harfbuzz")).toMatch(/switched off/);
  });
});
