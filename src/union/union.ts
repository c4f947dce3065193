/**
 * Uniting a ring's parts: the roads, and which was taken.
 *
 * For now there is one road, the whole ring at once; faster ones by symmetry units come in beside it and give the same
 * result. A kernel whose result does not pass the caller's check is replaced by the fallback, and the result says so.
 */
import type { Mesh } from "../mesh/mesh.js";
import { groupDisjoint } from "./groups.js";
import type { Kernel } from "./kernels/kernel.js";
import { dropSpecks } from "./specks.js";
import { tidyMesh } from "./tidy.js";

/** Everything a ring is made of, before it is one. */
export interface RingParts {
  readonly band: Mesh;
  /** Raised bodies; they may touch and cross. */
  readonly reliefs: readonly Mesh[];
  /** Many small bodies. */
  readonly beads: readonly Mesh[];
}

/** How the parts became one: `plain` is a band alone, `whole-ring` one union of everything. */
export type Road = "plain" | "whole-ring";

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
}

/** Unites the parts. The result is the last one tried, also where none was accepted: the caller's gate decides. */
export async function uniteRing(parts: RingParts, options: UnionOptions): Promise<UnionResult> {
  const { kernel, fallback, accept, signal } = options;
  const bodies = [parts.band, ...parts.reliefs, ...groupDisjoint(parts.beads)];
  if (bodies.length === 1) return { mesh: parts.band, kernel: "none", road: "plain" };
  const unite = async (by: Kernel) => {
    signal?.throwIfAborted();
    return tidyMesh(dropSpecks(await by.union(bodies)));
  };
  const first = await attempt(() => unite(kernel), kernel !== fallback);
  if (first !== undefined && (kernel === fallback || accept(first))) {
    return { mesh: first, kernel: kernel.name, road: "whole-ring" };
  }
  return { mesh: await unite(fallback), kernel: fallback.name, road: "whole-ring", rejected: kernel.name };
}

/** A kernel that throws has failed like one whose result is not accepted, where another can take over. */
async function attempt(unite: () => Promise<Mesh>, canFallBack: boolean): Promise<Mesh | undefined> {
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
