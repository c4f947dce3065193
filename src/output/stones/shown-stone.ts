/**
 * A stone as pictures and files show it: its body, its place and its look.
 */
import type { HalfSpace } from "../../base/math/half-space.js";
import { type GemLook, gemLookOf } from "../../gems/gem-look.js";
import { facetPlane, polyhedronMesh } from "../../gems/polyhedron.js";
import type { Stone } from "../../gems/stone.js";
import { stoneFacets } from "../../gems/stone-mesh.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Frame } from "../../stones/frame.js";
import type { PlacedStones } from "../../stones/place-stones.js";

/** One stone where it stands; equal stones share one body. */
export interface ShownStone {
  readonly body: StoneBody;
  readonly frame: Frame;
  /** Name of its group, and its number on the setter's map. */
  readonly group: string;
  readonly number: number;
}

/** A stone's body in its own coordinates, mm. */
export interface StoneBody {
  readonly mesh: Mesh;
  /** Its facets' planes: the body is what lies within all of them. */
  readonly planes: readonly HalfSpace[];
  /** Of the way across, mm. */
  readonly width: number;
  /** Whether its facets stand for a round surface: a cabochon. */
  readonly round: boolean;
  readonly gem: { readonly name: string; readonly look: GemLook };
}

/** What is shown of the stones of a ring, in the order of their numbers. */
export function shownStones({ stones, groups, gems }: PlacedStones): readonly ShownStone[] {
  const bodies = new Map<string, StoneBody>();
  return stones.map(({ stone, group, number, at, out, along }): ShownStone => {
    const key = JSON.stringify(stone);
    const body = bodies.get(key) ?? bodyOf(stone, gems.get(stone.gem)?.name ?? stone.gem);
    bodies.set(key, body);
    return { body, frame: { at, out, along }, group: groups[group].name, number };
  });
}

function bodyOf(stone: Stone, name: string): StoneBody {
  const facets = stoneFacets(stone);
  return {
    mesh: polyhedronMesh(facets),
    planes: facets.facets.map((facet) => facetPlane(facets, facet)),
    width: stone.width,
    round: stone.cut === "cabochon",
    gem: { name, look: gemLookOf(stone.gem) },
  };
}
