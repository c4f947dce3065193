/**
 * The shaping engine: loaded when the first font is opened, once a process.
 */
import type * as Engine from "harfbuzzjs";
import { AnnuletError } from "../../base/errors.js";
import { mendWasm, type WasmStart, wasmStart } from "../../base/wasm-places.js";

/** As annulet's build changes it, so that it starts where it is told to. As it comes, it starts by itself. */
interface Startable {
  readonly startEngine?: (how: WasmStart) => Promise<void>;
}

let loading: Promise<typeof Engine> | undefined;

/**
 * The engine; a failed load is tried again.
 *
 * @throws AnnuletError `text-engine-unavailable`
 */
export function loadEngine(): Promise<typeof Engine> {
  loading ??= start().catch((error) => {
    loading = undefined;
    throw new AnnuletError(
      {
        code: "text-engine-unavailable",
        message: "lettering needs WebAssembly, and the library that sets it could not be loaded",
        hint: `${mendWasm("harfbuzz")}; or leave lettering and texts out of the design`,
      },
      { cause: error },
    );
  });
  return loading;
}

async function start(): Promise<typeof Engine> {
  if (typeof WebAssembly === "undefined") throw new Error("there is no WebAssembly here");
  const engine: typeof Engine & Startable = await import("harfbuzzjs");
  await engine.startEngine?.(wasmStart("harfbuzz"));
  return engine;
}
