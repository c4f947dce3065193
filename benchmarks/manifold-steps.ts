/**
 * The reference for rings of any steps: the whole ring by manifold-3d itself, all that is added at one time united at once.
 * Bodies, and classes of beads that do not touch, are there before the timing.
 */
import type { Manifold, ManifoldToplevel } from "manifold-3d";
import type { Mesh } from "../src/mesh/mesh.js";
import type { Step } from "../src/mesh/step.js";
import { groupDisjoint } from "../src/union/groups.js";
import { wasm } from "./manifold-union.js";

/** A step with the bodies of the whole ring. */
export interface MadeStep extends Pick<Step, "op" | "keepClear"> {
  readonly made: readonly Mesh[];
}

export function makeSteps(steps: readonly Step[]): MadeStep[] {
  return steps.map(({ op, keepClear, small, bodies }) => ({
    op,
    keepClear,
    made: small ? groupDisjoint(bodies()) : bodies(),
  }));
}

/** The ring's mesh, as a caller gets it. */
export function manifoldSteps(steps: readonly MadeStep[]): Mesh {
  const solids = new Solids(wasm);
  try {
    let added: Manifold[] = [];
    for (const { op, keepClear, made } of steps) {
      if (made.length === 0) continue;
      const bodies = made.map((body) => solids.take(body));
      const cleared =
        keepClear === undefined ? bodies : [solids.own(solids.unite(bodies).subtract(solids.take(keepClear)))];
      if (op === "add") added.push(...cleared);
      else added = [solids.own(solids.unite(added).subtract(solids.unite(cleared)))];
    }
    // The library works when the result is read, not before.
    const { vertProperties, triVerts } = solids.unite(added).getMesh();
    return { positions: Float64Array.from(vertProperties), triangles: triVerts };
  } finally {
    solids.delete();
  }
}

/** The library's solids, which have to be deleted one by one. */
class Solids {
  readonly #library: ManifoldToplevel;
  readonly #owned: Manifold[] = [];

  constructor(library: ManifoldToplevel) {
    this.#library = library;
  }

  own(solid: Manifold): Manifold {
    this.#owned.push(solid);
    return solid;
  }

  take({ positions, triangles }: Mesh): Manifold {
    const { Mesh, Manifold } = this.#library;
    return this.own(
      new Manifold(new Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles })),
    );
  }

  unite(solids: readonly Manifold[]): Manifold {
    return solids.length === 1 ? solids[0] : this.own(this.#library.Manifold.union([...solids]));
  }

  delete(): void {
    for (const solid of this.#owned) solid.delete();
  }
}
