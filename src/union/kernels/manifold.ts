/**
 * The default kernel: manifold-3d (WebAssembly).
 *
 * Its results come in float32. WASM objects are not garbage: every one is deleted, also when an operation throws.
 */
import type { Manifold, ManifoldToplevel } from "manifold-3d";
import { AnnuletError } from "../../base/errors.js";
import { mendWasm, type WasmStart, wasmStart } from "../../base/wasm-places.js";
import { Work } from "../../base/work.js";
import type { Mesh } from "../../mesh/mesh.js";
import { KeptSums } from "./kept-sums.js";
import type { Kernel } from "./kernel.js";

/**
 * The boolean kernel that is used unless another is asked for: manifold-3d, in WebAssembly.
 *
 * @example
 * const { report } = await build(document, { kernel: manifoldKernel, detail: "draft" }); // the default
 */
export const manifoldKernel: Kernel = {
  name: "manifold",
  union: (parts, signal, onPart) => unite(parts, signal, onPart),
  subtract: (body, tool, signal) => run([body, tool], ([a, b], own) => own(a.subtract(b)), signal),
  cut: (body, { normal: [x, y, z], offset }, signal) => {
    return run([body], ([solid], own) => own(solid.trimByPlane([-x, -y, -z], -offset)), signal);
  },
};

let loading: Promise<ManifoldToplevel> | undefined;

/** Loads the library once a process; a failed load is tried again. */
function load(): Promise<ManifoldToplevel> {
  loading ??= start().catch((error) => {
    loading = undefined;
    throw new AnnuletError(
      {
        code: "kernel-unavailable",
        message: "the manifold kernel could not be loaded: WebAssembly is missing or its file was not found",
        hint: `${mendWasm("manifold")}; or take the bvh kernel, which is plain JavaScript`,
      },
      { cause: error },
    );
  });
  return loading;
}

async function start(): Promise<ManifoldToplevel> {
  if (typeof WebAssembly === "undefined") throw new Error("there is no WebAssembly here");
  const { default: loadManifold } = await import("manifold-3d");
  const wasm = await (loadManifold as (how: WasmStart) => Promise<ManifoldToplevel>)(wasmStart("manifold"));
  wasm.setup();
  return wasm;
}

/** Takes note of an object that is to be deleted. */
type Own = (solid: Manifold) => Manifold;

async function run(
  parts: readonly Mesh[],
  operate: (solids: readonly Manifold[], own: Own) => Manifold,
  signal?: AbortSignal,
): Promise<Mesh> {
  const wasm = await load();
  const pace = new Work(undefined, signal);
  const owned: Manifold[] = [];
  const own: Own = (solid) => {
    owned.push(solid);
    return solid;
  };
  try {
    const solids: Manifold[] = [];
    for (const part of parts) {
      solids.push(own(toManifold(wasm, part)));
      await pace.mayRest();
    }
    const result = operate(solids, own);
    requireSuccess(result);
    await pace.mayRest();
    return fromManifold(result);
  } finally {
    for (const solid of owned) solid.delete();
  }
}

/** Triangles of sums that are kept: some 200 bytes each. Chosen. */
const MOST_KEPT = 200_000;

const kept = new KeptSums<Manifold>(MOST_KEPT);

/**
 * One after the other, giving way between: all at once takes as long, and cannot be stopped. Goes on from the sum of the
 * first parts where they were united before.
 */
async function unite(parts: readonly Mesh[], signal?: AbortSignal, onPart?: () => void): Promise<Mesh> {
  const wasm = await load();
  const known = kept.take(parts);
  const sums: Manifold[] = known === undefined ? [] : [known.solid];
  const others: Manifold[] = [];
  const first = known?.count ?? 1;
  try {
    // All before the sums: triangles come out in the order in which their parts came in.
    if (known === undefined) sums.push(toManifold(wasm, parts[0]));
    const pace = new Work(undefined, signal);
    for (const part of parts.slice(first)) {
      others.push(toManifold(wasm, part));
      await pace.mayRest();
    }
    for (const [i, other] of others.entries()) {
      if (i > 0) {
        await pace.rest();
      }
      const sum = sums[sums.length - 1].add(other);
      sums.push(sum);
      // The library puts the work off until something is asked of the result.
      requireSuccess(sum);
      onPart?.();
    }
    await pace.rest();
    return fromManifold(sums[sums.length - 1]);
  } finally {
    for (const solid of others) solid.delete();
    sums.forEach((sum, i) => {
      const count = first + i;
      if (sum.status() === "NoError") kept.keep(parts.slice(0, count), sum, sum.numTri());
      else sum.delete();
    });
  }
}

function toManifold(wasm: ManifoldToplevel, mesh: Mesh): Manifold {
  const input = new wasm.Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(mesh.positions),
    triVerts: mesh.triangles.slice(),
  });
  try {
    const solid = new wasm.Manifold(input);
    requireSuccess(solid);
    return solid;
  } catch (error) {
    throw error instanceof AnnuletError ? error : kernelFailed(String(error), error);
  }
}

function fromManifold(solid: Manifold): Mesh {
  const { numProp, vertProperties, triVerts } = solid.getMesh();
  if (numProp !== 3) throw kernelFailed(`vertices came with ${numProp} properties`);
  return { positions: Float64Array.from(vertProperties), triangles: Uint32Array.from(triVerts) };
}

function requireSuccess(solid: Manifold): void {
  const status = solid.status();
  if (status !== "NoError") throw kernelFailed(String(status));
}

function kernelFailed(why: string, cause?: unknown): AnnuletError {
  return new AnnuletError(
    {
      code: "kernel-failed",
      message: `the manifold kernel refused a part: ${why}`,
      hint: "this is a fault in annulet's parts, not in the design: please report it with the design",
    },
    { cause },
  );
}
