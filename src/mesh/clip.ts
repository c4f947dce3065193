/**
 * Cuts a mesh at a plane and leaves it open there. Points near the plane are put exactly on it, and both triangles of an
 * edge are cut at the same point, so the rim is a clean line in the plane.
 */
import { distanceTo, type HalfSpace } from "../base/math/half-space.js";
import type { Mesh } from "./mesh.js";

export interface Clipped {
  readonly mesh: Mesh;
  /** For each vertex the bits it had, and the plane's bit where it lies on the plane. */
  readonly marks: Uint8Array;
  /** Where each vertex lies in another shape of the mesh; only where that was given. */
  readonly carried?: Float64Array;
}

export interface ClipOptions {
  /** Points at most this far from the plane are put on it, mm. 0 or more. */
  readonly reach: number;
  /** Bits that each vertex of the mesh carries already. Default none. */
  readonly marks?: Uint8Array;
  /** Bit of this plane. Default 1. */
  readonly bit?: number;
  /** Where the vertices lie in another shape of the mesh: it is cut at the same points of its edges. Default none. */
  readonly carried?: Float64Array | undefined;
}

/** The part of a mesh in a half space, open at its plane. What lies in the plane itself is left out. */
export function clipMesh(mesh: Mesh, keep: HalfSpace, options: ClipOptions): Clipped {
  const distance = distances(mesh, keep, options.reach);
  const part = new Part(mesh, keep, distance, options);
  const { triangles } = mesh;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t];
    const b = triangles[t + 1];
    const c = triangles[t + 2];
    const da = distance[a];
    const db = distance[b];
    const dc = distance[c];
    if (!(da < 0 || db < 0 || dc < 0)) continue;
    if (!(da > 0 || db > 0 || dc > 0)) part.whole(a, b, c);
    else part.cut([a, b, c]);
  }
  return part.result();
}

/** Distance of each vertex from the plane, negative inside; 0 for those that are put on it. */
function distances({ positions }: Mesh, keep: HalfSpace, reach: number): Float64Array {
  const distance = new Float64Array(positions.length / 3);
  for (let i = 0; i < distance.length; i++) {
    const d = distanceTo(keep, positions[3 * i], positions[3 * i + 1], positions[3 * i + 2]);
    distance[i] = Math.abs(d) <= reach ? 0 : d;
  }
  return distance;
}

/** Collects the part that is kept. */
class Part {
  readonly #mesh: Mesh;
  readonly #keep: HalfSpace;
  readonly #distance: Float64Array;
  readonly #marks: Uint8Array | undefined;
  readonly #bit: number;
  readonly #carried: Float64Array | undefined;
  /** New number of each old vertex, −1 where it has none yet. */
  readonly #slot: Int32Array;
  /** Vertices on cut edges. */
  readonly #cuts = new Map<number, number>();
  readonly #positions: Float64Array;
  readonly #others: Float64Array;
  readonly #bits: Uint8Array;
  readonly #triangles: Uint32Array;
  #vertices = 0;
  #corners = 0;

  constructor(mesh: Mesh, keep: HalfSpace, distance: Float64Array, { marks, bit = 1, carried }: ClipOptions) {
    [this.#mesh, this.#keep, this.#distance] = [mesh, keep, distance];
    [this.#marks, this.#bit, this.#carried] = [marks, bit, carried];
    this.#slot = new Int32Array(distance.length).fill(-1);
    const { kept, crossed } = countKept(mesh, distance);
    // A cut triangle leaves two at most, and adds two vertices.
    const room = Math.min(distance.length, 3 * kept) + 2 * crossed;
    this.#positions = new Float64Array(3 * room);
    this.#others = new Float64Array(carried === undefined ? 0 : 3 * room);
    this.#bits = new Uint8Array(room);
    this.#triangles = new Uint32Array(3 * (kept + crossed));
  }

  /** Keeps a triangle as it is. */
  whole(a: number, b: number, c: number): void {
    const triangles = this.#triangles;
    triangles[this.#corners++] = this.#vertex(a);
    triangles[this.#corners++] = this.#vertex(b);
    triangles[this.#corners++] = this.#vertex(c);
  }

  /** Keeps what of a triangle lies inside. */
  cut(corner: readonly [number, number, number]): void {
    const distance = this.#distance;
    const inside = corner.filter((i) => distance[i] < 0).length;
    const outside = corner.filter((i) => distance[i] > 0).length;
    // The corner that is alone: with one on the plane the one outside, else the only one on its side.
    const lone = corner.findIndex((i) => (inside === 1 && outside === 2 ? distance[i] < 0 : distance[i] > 0));
    const [a, b, c] = [corner[lone], corner[(lone + 1) % 3], corner[(lone + 2) % 3]];
    if (distance[a] < 0) this.#add(this.#vertex(a), this.#crossing(a, b), this.#crossing(a, c));
    else if (inside === 2) {
      const [p, q] = [this.#crossing(a, b), this.#crossing(a, c)];
      this.#add(p, this.#vertex(b), this.#vertex(c));
      this.#add(p, this.#vertex(c), q);
    } else if (distance[b] === 0) this.#add(this.#vertex(b), this.#vertex(c), this.#crossing(a, c));
    else this.#add(this.#crossing(a, b), this.#vertex(b), this.#vertex(c));
  }

  result(): Clipped {
    return {
      mesh: {
        positions: this.#positions.slice(0, 3 * this.#vertices),
        triangles: this.#triangles.slice(0, this.#corners),
      },
      marks: this.#bits.slice(0, this.#vertices),
      ...(this.#carried === undefined ? {} : { carried: this.#others.slice(0, 3 * this.#vertices) }),
    };
  }

  #add(a: number, b: number, c: number): void {
    this.#triangles[this.#corners++] = a;
    this.#triangles[this.#corners++] = b;
    this.#triangles[this.#corners++] = c;
  }

  #vertex(i: number): number {
    if (this.#slot[i] !== -1) return this.#slot[i];
    const p = this.#mesh.positions;
    const made = this.#place(p[3 * i], p[3 * i + 1], p[3 * i + 2], this.#marks?.[i] ?? 0, this.#distance[i] === 0);
    this.#slot[i] = made;
    const carried = this.#carried;
    if (carried !== undefined) for (let k = 0; k < 3; k++) this.#others[3 * made + k] = carried[3 * i + k];
    return made;
  }

  /** The vertex where an edge meets the plane; it keeps what marks both ends have. */
  #crossing(i: number, j: number): number {
    const [a, b] = i < j ? [i, j] : [j, i];
    const distance = this.#distance;
    const key = a * distance.length + b;
    const known = this.#cuts.get(key);
    if (known !== undefined) return known;
    const t = distance[a] / (distance[a] - distance[b]);
    const at = (p: Float64Array, k: number) => p[3 * a + k] + t * (p[3 * b + k] - p[3 * a + k]);
    const { positions: p } = this.#mesh;
    const bits = (this.#marks?.[a] ?? 0) & (this.#marks?.[b] ?? 0);
    const made = this.#place(at(p, 0), at(p, 1), at(p, 2), bits, true);
    const carried = this.#carried;
    if (carried !== undefined) for (let k = 0; k < 3; k++) this.#others[3 * made + k] = at(carried, k);
    this.#cuts.set(key, made);
    return made;
  }

  #place(x: number, y: number, z: number, bits: number, on: boolean): number {
    const off = on ? distanceTo(this.#keep, x, y, z) : 0;
    const { normal } = this.#keep;
    const at = 3 * this.#vertices;
    this.#positions[at] = x - off * normal[0];
    this.#positions[at + 1] = y - off * normal[1];
    this.#positions[at + 2] = z - off * normal[2];
    this.#bits[this.#vertices] = bits | (on ? this.#bit : 0);
    return this.#vertices++;
  }
}

/** How many triangles have a part inside, and how many of them one outside too. */
function countKept({ triangles }: Mesh, distance: Float64Array): { kept: number; crossed: number } {
  let [kept, crossed] = [0, 0];
  for (let t = 0; t < triangles.length; t += 3) {
    const da = distance[triangles[t]];
    const db = distance[triangles[t + 1]];
    const dc = distance[triangles[t + 2]];
    if (!(da < 0 || db < 0 || dc < 0)) continue;
    kept++;
    if (da > 0 || db > 0 || dc > 0) crossed++;
  }
  return { kept, crossed };
}
