/**
 * Sets of yes-or-no unknowns of which pairs are known to be alike or unlike: union-find with parity
 * (R. E. Tarjan, "Efficiency of a good but not linear set union algorithm", 1975, with a sign kept on each link).
 */
export class ParitySets {
  readonly #parent: number[];
  /** Whether an unknown differs from its parent. */
  readonly #differs: boolean[];

  constructor(count: number) {
    this.#parent = Array.from({ length: count }, (_, i) => i);
    this.#differs = new Array<boolean>(count).fill(false);
  }

  /** States that two unknowns are unlike, or alike. False where that contradicts what was stated before. */
  relate(a: number, b: number, unlike: boolean): boolean {
    const [ra, rb] = [this.#find(a), this.#find(b)];
    const across = ra.differs !== rb.differs;
    if (ra.root === rb.root) return across === unlike;
    // The smaller number stays the root, so that the answer does not hang on the order of the statements.
    const [low, high] = ra.root < rb.root ? [ra.root, rb.root] : [rb.root, ra.root];
    this.#parent[high] = low;
    this.#differs[high] = across !== unlike;
    return true;
  }

  /** The smallest unknown that hangs together with one, and whether the two are unlike. */
  rootOf(a: number): { readonly root: number; readonly differs: boolean } {
    return this.#find(a);
  }

  #find(a: number): { readonly root: number; readonly differs: boolean } {
    let [root, differs] = [a, false];
    while (this.#parent[root] !== root) {
      if (this.#differs[root]) differs = !differs;
      root = this.#parent[root];
    }
    return { root, differs };
  }
}
