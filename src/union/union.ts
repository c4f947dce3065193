/**
 * Uniting a ring's parts: the roads, and which was taken.
 *
 * What is cut out comes first, in its order: each cut goes through the band and the raised bodies under it. Then the rest
 * is united, the whole ring at once, and marks are cut out of it and laid on. A kernel whose result does not pass the caller's check is replaced by the fallback,
 * and the result says so.
 */
import type { Mesh } from "../mesh/mesh.js";
import { groupDisjoint } from "./groups.js";
import type { Kernel } from "./kernels/kernel.js";
import { stoppable } from "./kernels/stoppable.js";
import { partCoincident } from "./part-coincident.js";
import { dropSpecks, type Hollow } from "./specks.js";
import { tidyMesh } from "./tidy.js";

/** Everything a ring is made of, before it is one. */
export interface RingParts {
  readonly band: Mesh;
  /** What is cut out, in order. Default nothing. */
  readonly cuts?: readonly RingCut[];
  /** Raised bodies that stay whole; they may touch and cross. */
  readonly reliefs: readonly Mesh[];
  /** Many small bodies. */
  readonly beads: readonly Mesh[];
  /** A body that reliefs and cuts keep clear of: it is taken from each of them before. Default none. */
  readonly clear?: Mesh | undefined;
  /** What is cut out of all this, and what is then laid on. Default nothing. */
  readonly finish?: { readonly tools: readonly Mesh[]; readonly raised: readonly Mesh[] } | undefined;
}

/** Bodies to be cut out of the ring as it is by then. */
export interface RingCut {
  /** Raised bodies that are united with the ring before. */
  readonly under: readonly Mesh[];
  /** They may touch and cross. */
  readonly tools: readonly Mesh[];
}

/** How the parts became one: `plain` is a band alone, `whole-ring` one union of everything, `carved-ring` cuts first. */
export type Road = "plain" | "whole-ring" | "carved-ring";

export interface UnionOptions {
  readonly kernel: Kernel;
  /** Takes over where the kernel's result does not pass. */
  readonly fallback: Kernel;
  /** Whether a mesh is a sound solid. */
  readonly accept: (mesh: Mesh) => boolean;
  readonly signal?: AbortSignal;
}

export interface UnionResult {
  readonly mesh: Mesh;
  /** Name of the kernel whose result it is; none where nothing had to be united. */
  readonly kernel: string;
  readonly road: Road;
  /** Name of a kernel whose result was not accepted. */
  readonly rejected?: string;
  /** Sealed hollows that were filled. */
  readonly hollows: readonly Hollow[];
}

/** Unites the parts. The result is the last one tried, also where none was accepted: the caller's gate decides. */
export async function uniteRing(parts: RingParts, options: UnionOptions): Promise<UnionResult> {
  const { kernel, fallback, accept, signal } = options;
  const { cuts = [], finish = NO_FINISH } = parts;
  const beads = groupDisjoint(parts.beads);
  const carved = cuts.length + finish.tools.length > 0;
  if (!carved && parts.reliefs.length + beads.length + finish.raised.length === 0) {
    return { mesh: parts.band, kernel: "none", road: "plain", hollows: [] };
  }
  const road = carved ? "carved-ring" : "whole-ring";
  const unite = async (by: Kernel) => {
    signal?.throwIfAborted();
    let ring = parts.band;
    const clear = (bodies: readonly Mesh[]) => clearOf(by, bodies, parts.clear);
    const steps: RingCut[] = [];
    for (const { under, tools } of cuts) steps.push({ under: await clear(under), tools: await clear(tools) });
    steps.push({ under: [...(await clear(parts.reliefs)), ...beads], tools: finish.tools });
    for (const { under, tools } of steps) {
      ring = await uniteAll(by, [ring, ...under]);
      if (tools.length > 0) ring = await by.subtract(ring, await uniteAll(by, tools));
      signal?.throwIfAborted();
    }
    const { mesh, hollows } = dropSpecks(await uniteAll(by, [ring, ...finish.raised]));
    return { mesh: partCoincident(tidyMesh(mesh)), hollows };
  };
  const first = await attempt(() => unite(stoppable(kernel, signal)), kernel !== fallback);
  if (first !== undefined && (kernel === fallback || accept(first.mesh)))
    return { ...first, kernel: kernel.name, road };
  return { ...(await unite(stoppable(fallback, signal))), kernel: fallback.name, road, rejected: kernel.name };
}

const NO_FINISH: NonNullable<RingParts["finish"]> = { tools: [], raised: [] };

/** What is left of bodies without what is to be kept clear. */
async function clearOf(kernel: Kernel, bodies: readonly Mesh[], clear: Mesh | undefined): Promise<readonly Mesh[]> {
  if (clear === undefined || bodies.length === 0) return bodies;
  const left = await kernel.subtract(await uniteAll(kernel, bodies), clear);
  return left.triangles.length === 0 ? [] : [left];
}

/** One body needs no union. */
function uniteAll(kernel: Kernel, bodies: readonly Mesh[]): Promise<Mesh> {
  return bodies.length === 1 ? Promise.resolve(bodies[0]) : kernel.union(bodies);
}

/** A kernel that throws has failed like one whose result is not accepted, where another can take over. */
async function attempt<Result>(unite: () => Promise<Result>, canFallBack: boolean): Promise<Result | undefined> {
  try {
    return await unite();
  } catch (error) {
    if (canFallBack && !isAbort(error)) return undefined;
    throw error;
  }
}

function isAbort(error: unknown): boolean {
  return error instanceof Error && error.name === "AbortError";
}
