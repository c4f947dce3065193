/**
 * The bodies that steps of some names are made of.
 */
import type { Sector } from "../src/base/math/round.js";
import type { Mesh } from "../src/mesh/mesh.js";
import type { Parts } from "../src/solids/parts.js";

export function bodiesOf({ steps }: Parts, names: readonly string[], sector?: Sector): Mesh[] {
  return steps.filter(({ name }) => names.includes(name)).flatMap(({ bodies }) => bodies(sector));
}
