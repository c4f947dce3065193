/**
 * What a ring is made of, and its union by a kernel: what is cut out comes first, in its order, each cut through the band
 * and the raised bodies under it; then the rest is united.
 */
import type { Mesh } from "../mesh/mesh.js";
import { groupDisjoint } from "./groups.js";
import type { Kernel } from "./kernels/kernel.js";

/** Everything a ring, or a stretch of one, is made of. */
export interface RingBodies {
  readonly band: Mesh;
  /** What is cut out, in order. Default nothing. */
  readonly cuts?: readonly RingCut[];
  /** Raised bodies that stay whole; they may touch and cross. */
  readonly reliefs: readonly Mesh[];
  /** Many small bodies. */
  readonly beads: readonly Mesh[];
  /** A body that reliefs and cuts keep clear of: it is taken from each of them before. Default none. */
  readonly clear?: Mesh | undefined;
}

/** Bodies to be cut out of the ring as it is by then. */
export interface RingCut {
  /** Raised bodies that are united with the ring before. */
  readonly under: readonly Mesh[];
  /** They may touch and cross. */
  readonly tools: readonly Mesh[];
}

/** What is cut out of a ring when all else stands, and what is then laid on. */
export interface RingFinish {
  readonly tools: readonly Mesh[];
  readonly raised: readonly Mesh[];
}

/** The bodies as one. */
export async function uniteBodies(by: Kernel, bodies: RingBodies): Promise<Mesh> {
  const { band, cuts = [], reliefs, beads, clear } = bodies;
  let ring = band;
  for (const { under, tools } of cuts) {
    ring = await uniteAll(by, [ring, ...(await clearOf(by, under, clear))]);
    ring = await subtractAll(by, ring, await clearOf(by, tools, clear));
  }
  return uniteAll(by, [ring, ...(await clearOf(by, reliefs, clear)), ...groupDisjoint(beads)]);
}

/** The ring with its finish. */
export async function finishRing(by: Kernel, ring: Mesh, { tools, raised }: RingFinish): Promise<Mesh> {
  return uniteAll(by, [await subtractAll(by, ring, tools), ...raised]);
}

/** What is left of bodies without what is to be kept clear. */
async function clearOf(by: Kernel, bodies: readonly Mesh[], clear: Mesh | undefined): Promise<readonly Mesh[]> {
  if (clear === undefined || bodies.length === 0) return bodies;
  const left = await by.subtract(await uniteAll(by, bodies), clear);
  return left.triangles.length === 0 ? [] : [left];
}

async function subtractAll(by: Kernel, ring: Mesh, tools: readonly Mesh[]): Promise<Mesh> {
  return tools.length === 0 ? ring : by.subtract(ring, await uniteAll(by, tools));
}

/** One body needs no union. */
function uniteAll(by: Kernel, bodies: readonly Mesh[]): Promise<Mesh> {
  return bodies.length === 1 ? Promise.resolve(bodies[0]) : by.union(bodies);
}
