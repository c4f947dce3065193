/**
 * Keeps what a kernel has united so far, part by part, for the next union that begins with the same parts: after a change
 * of a ring most of its parts are the same, and those before the first that is not need not be united again.
 *
 * A solid that is kept belongs to nobody else: who takes it owns it until it is kept again, so that it is never deleted
 * in use. Parts are compared by being the same meshes, which must not change.
 */
import type { Mesh } from "../../mesh/mesh.js";

/** What a library holds outside the reach of the garbage collector. */
export interface Deletable {
  delete(): void;
}

/** What was made of the first parts of a list. */
export interface Sum<Solid> {
  /** How many parts. */
  readonly count: number;
  readonly solid: Solid;
}

interface Kept<Solid> {
  readonly solid: Solid;
  readonly triangles: number;
}

export class KeptSums<Solid extends Deletable> {
  /** The one kept longest ago first. */
  readonly #kept = new Map<string, Kept<Solid>>();
  readonly #most: number;
  readonly #names = new WeakMap<Mesh, number>();
  #count = 0;
  #triangles = 0;

  /** @param most triangles that are kept in all; the oldest solids are deleted for newer ones */
  constructor(most: number) {
    this.#most = most;
  }

  /** Solids that are kept, and triangles in them. */
  get size(): { readonly solids: number; readonly triangles: number } {
    return { solids: this.#kept.size, triangles: this.#triangles };
  }

  /** Takes out the sum of as many first parts as there is one of; undefined where there is none. */
  take(parts: readonly Mesh[]): Sum<Solid> | undefined {
    const keys = this.#keysOf(parts);
    for (let count = parts.length; count > 0; count--) {
      const found = this.#drop(keys[count - 1]);
      if (found !== undefined) return { count, solid: found.solid };
    }
    return undefined;
  }

  /** Keeps the sum of all these parts, or deletes it where it is too large. */
  keep(parts: readonly Mesh[], solid: Solid, triangles: number): void {
    const key = this.#keysOf(parts)[parts.length - 1];
    this.#drop(key)?.solid.delete();
    if (triangles > this.#most) {
      solid.delete();
      return;
    }
    this.#kept.set(key, { solid, triangles });
    this.#triangles += triangles;
    for (const oldest of this.#kept.keys()) {
      if (this.#triangles <= this.#most) break;
      this.#drop(oldest)?.solid.delete();
    }
  }

  #drop(key: string): Kept<Solid> | undefined {
    const found = this.#kept.get(key);
    if (found === undefined) return undefined;
    this.#kept.delete(key);
    this.#triangles -= found.triangles;
    return found;
  }

  /** A name of the first part, of the first two, and so on. */
  #keysOf(parts: readonly Mesh[]): string[] {
    let key = "";
    return parts.map((part) => {
      key += ` ${this.#nameOf(part)}`;
      return key;
    });
  }

  #nameOf(part: Mesh): number {
    const known = this.#names.get(part);
    if (known !== undefined) return known;
    this.#count++;
    this.#names.set(part, this.#count);
    return this.#count;
  }
}
