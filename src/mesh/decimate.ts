/**
 * Takes vertices out of a closed mesh whose surface stays where it was, within a stated deviation.
 *
 * A vertex goes by collapsing one of its edges to the other end, so no vertex moves and none is new. Each triangle keeps
 * a bound on how far it may lie from the mesh as it was: the largest of the triangles it replaces plus the shift of the
 * step (`fan.ts`), in both directions; a step that would exceed the deviation is not taken. An edge is collapsed only
 * when its ends have no neighbours in common but the two its triangles give them, each of which keeps three others (the
 * link condition: Dey, Edelsbrunner, Guha, Nekhayev, Topology preserving edge contraction, 1999; from memory), so the
 * surface keeps its shells and handles. Sharp edges are taken out along themselves only, and corners stay.
 */
import { AnnuletError } from "../base/errors.js";
import { numberAbove0, type OptionRules, requireOptions, SIGNAL } from "../base/options.js";
import { pause } from "../base/pause.js";
import { buildEdgeTable, nextEdge, previousEdge } from "./edges.js";
import { Fan, MOST_SPOKES } from "./fan.js";
import type { Mesh } from "./mesh.js";
import { requireSound } from "./sound.js";

/** How much may be taken out. */
export interface DecimateOptions {
  /** How far the surface may lie from what it was, anywhere and in both directions, mm. Above 0. */
  readonly deviation: number;
  readonly signal?: AbortSignal | undefined;
}

/** A mesh with fewer triangles. */
export interface Decimated {
  /** Its vertices are vertices of the mesh given, in their order. */
  readonly mesh: Mesh;
  /** No place of either surface is farther from the other than this, mm; at most the deviation asked for. */
  readonly bound: number;
}

/** Edges at which the surface turns by more than this, radians, are sharp: 30°. */
const SHARP = Math.cos(Math.PI / 6);

/**
 * Shares of the deviation up to which steps are taken, one pass or more for each: what costs nothing goes first, so that it
 * is not in the way of what costs much.
 */
const LEVELS = [0.02, 0.1, 0.4, 1] as const;

/** A level ends once a pass takes out less than this share of the vertices left. */
const LEAST_GAIN = 0.01;

/** New triangles are no lower than this, mm, or than the lowest they replace: a hundred steps of float32 on a ring. */
const LEAST_HEIGHT = 1e-4;

/** Vertices looked at between two pauses: some ten milliseconds of work. */
const BATCH = 4096;

const RULES: OptionRules<DecimateOptions> = { deviation: { ...numberAbove0("mm"), needed: true }, signal: SIGNAL };

/**
 * Takes out the triangles that a surface does not need: what is left lies within `deviation` mm of it, everywhere and in both
 * directions.
 *
 * @param mesh closed, as the gate asks
 * @throws AnnuletError as `requireOptions`; `mesh-malformed`, `mesh-open` where an edge has not two triangles
 *
 * @example
 * const { mesh } = await build(document);
 * const fewer = await decimate(mesh, { deviation: 0.005 });
 * console.log(fewer.mesh.triangles.length / 3);
 */
export async function decimate(mesh: Mesh, options: DecimateOptions): Promise<Decimated> {
  requireOptions(options, RULES);
  const { deviation, signal } = options;
  requireSound(mesh);
  const { opposite, open, crowded } = buildEdgeTable(mesh);
  if (open.length + crowded.length > 0) {
    throw new AnnuletError({
      code: "mesh-open",
      message: `${open.length + crowded.length} edges of the mesh are not between two triangles`,
      hint: "ask the gate about it first",
    });
  }
  const work = new Decimation(mesh, opposite);
  const vertices = mesh.positions.length / 3;
  for (const level of LEVELS) {
    for (let gain = 1; gain > LEAST_GAIN; ) {
      const before = work.vertices;
      for (let from = 0; from < vertices; from += BATCH) {
        work.run(from, from + BATCH, level * deviation);
        await pause();
        signal?.throwIfAborted();
      }
      gain = 1 - work.vertices / before;
    }
  }
  return work.result();
}

class Decimation {
  /** Vertices left. */
  vertices = 0;
  readonly #positions: Float64Array;
  readonly #triangles: Uint32Array;
  readonly #opposite: Int32Array;
  /** A directed edge that leaves each vertex; −1 where the vertex is gone. */
  readonly #leaving: Int32Array;
  readonly #isGone: Uint8Array;
  /** For each triangle how far it may lie from the mesh as it was, mm. */
  readonly #shift: Float64Array;
  /** For each vertex the level up to which its surroundings have been looked at as they are, mm. */
  readonly #seen: Float64Array;
  readonly #fan: Fan;
  /** The directed edges that leave the vertex at hand, in the order of its fan. */
  readonly #spokes = new Int32Array(MOST_SPOKES);

  constructor({ positions, triangles }: Mesh, opposite: Int32Array) {
    this.#positions = positions.slice();
    this.#triangles = triangles.slice();
    this.#opposite = opposite;
    this.#isGone = new Uint8Array(triangles.length / 3);
    this.#shift = new Float64Array(triangles.length / 3);
    this.#leaving = new Int32Array(positions.length / 3).fill(-1);
    this.#seen = new Float64Array(positions.length / 3);
    this.#fan = new Fan(positions);
    for (let h = 0; h < triangles.length; h++) this.#leaving[triangles[h]] = h;
    for (let v = 0; v < this.#leaving.length; v++) if (this.#leaving[v] !== -1) this.vertices++;
  }

  /** Looks at some vertices and takes out those whose triangles then lie within `most` mm of the mesh as it was. */
  run(from: number, to: number, most: number): void {
    for (let v = from; v < Math.min(to, this.#leaving.length); v++) {
      if (this.#leaving[v] === -1 || this.#seen[v] >= most) continue;
      this.#seen[v] = most;
      const best = this.#lookAt(v, most);
      if (best === undefined) continue;
      this.#markAround();
      this.#collapse(best.spoke, best.shift);
    }
  }

  /** The mesh of what is left. */
  result(): Decimated {
    const slot = new Int32Array(this.#leaving.length).fill(-1);
    const positions = new Float64Array(3 * this.vertices);
    let vertices = 0;
    for (let v = 0; v < slot.length; v++) {
      if (this.#leaving[v] === -1) continue;
      for (let k = 0; k < 3; k++) positions[3 * vertices + k] = this.#positions[3 * v + k];
      slot[v] = vertices++;
    }
    const triangles = new Uint32Array(this.#triangles.length);
    let [length, bound] = [0, 0];
    for (let t = 0; t < this.#isGone.length; t++) {
      if (this.#isGone[t] === 1) continue;
      for (let k = 0; k < 3; k++) triangles[length++] = slot[this.#triangles[3 * t + k]];
      bound = Math.max(bound, this.#shift[t]);
    }
    return { mesh: { positions, triangles: triangles.slice(0, length) }, bound };
  }

  /** The edge to collapse away from a vertex, and the bound for its triangles then; undefined where none may go. */
  #lookAt(vertex: number, most: number): { spoke: number; shift: number } | undefined {
    const fan = this.#fan;
    if (!this.#fillFan(vertex) || !fan.flatten(vertex)) return undefined;
    let before = 0;
    for (let i = 0; i < fan.spokes; i++) before = Math.max(before, this.#shift[triangleOf(this.#spokes[i])]);
    let sharp = 0;
    for (let i = 0; i < fan.spokes; i++) if (fan.turnsAt(i, SHARP)) sharp++;
    if (sharp !== 0 && sharp !== 2) return undefined;
    const least = Math.min(LEAST_HEIGHT, fan.lowest);
    let best: { spoke: number; shift: number } | undefined;
    let left = most - before;
    for (let i = 0; i < fan.spokes; i++) {
      if (sharp === 2 && !fan.turnsAt(i, SHARP)) continue;
      const shift = fan.shiftTo(i, left, least);
      if (shift > left || (best !== undefined && before + shift >= best.shift) || !this.#mayCollapse(vertex, i))
        continue;
      best = { spoke: this.#spokes[i], shift: before + shift };
      left = shift;
    }
    return best;
  }

  /** Lists the edges that leave a vertex and the rim they lead to. False where they are too many or too few. */
  #fillFan(vertex: number): boolean {
    const fan = this.#fan;
    const first = this.#leaving[vertex];
    let spokes = 0;
    let h = first;
    do {
      if (spokes === MOST_SPOKES) return false;
      this.#spokes[spokes] = h;
      fan.rim[spokes++] = this.#triangles[nextEdge(h)];
      h = this.#opposite[previousEdge(h)];
    } while (h !== first);
    fan.spokes = spokes;
    return spokes > 2;
  }

  /** The link condition for the edge along a spoke of the fan at hand. */
  #mayCollapse(vertex: number, spoke: number): boolean {
    const { rim, spokes } = this.#fan;
    const left = rim[(spoke + 1) % spokes];
    const right = rim[(spoke + spokes - 1) % spokes];
    if (this.#isTip(left) || this.#isTip(right)) return false;
    const back = this.#opposite[this.#spokes[spoke]];
    for (let h = this.#opposite[previousEdge(back)]; h !== back; h = this.#opposite[previousEdge(h)]) {
      const neighbour = this.#triangles[nextEdge(h)];
      if (neighbour === left || neighbour === right || neighbour === vertex) continue;
      for (let i = 0; i < spokes; i++) if (rim[i] === neighbour) return false;
    }
    return true;
  }

  /** Whether only three triangles meet at a vertex: it would be left with two. */
  #isTip(vertex: number): boolean {
    const first = this.#leaving[vertex];
    let h = first;
    for (let i = 0; i < 3; i++) h = this.#opposite[previousEdge(h)];
    return h === first;
  }

  /** The rim of the fan at hand changes: its vertices are to be looked at again. */
  #markAround(): void {
    for (let i = 0; i < this.#fan.spokes; i++) this.#seen[this.#fan.rim[i]] = 0;
  }

  /** Moves the start of an edge to its end; its two triangles go, and the others of the fan get the bound `shift`. */
  #collapse(edge: number, shift: number): void {
    const back = this.#opposite[edge];
    const from = this.#triangles[edge];
    const to = this.#triangles[back];
    for (let i = 0; i < this.#fan.spokes; i++) {
      this.#triangles[this.#spokes[i]] = to;
      this.#shift[triangleOf(this.#spokes[i])] = shift;
    }
    for (const side of [edge, back]) {
      const [outer, inner] = [this.#opposite[nextEdge(side)], this.#opposite[previousEdge(side)]];
      this.#opposite[outer] = inner;
      this.#opposite[inner] = outer;
      this.#leaving[this.#triangles[outer]] = outer;
      this.#leaving[this.#triangles[inner]] = inner;
      this.#isGone[triangleOf(side)] = 1;
    }
    this.#leaving[from] = -1;
    this.vertices--;
  }
}

function triangleOf(h: number): number {
  return Math.floor(h / 3);
}
