/**
 * Whether a shape has a lattice in it, whose copies are cut off at the tile's upper and lower edge.
 */
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";

/**
 * Looks through the shape and the named ones that it is made of.
 *
 * @param named the pattern's named shapes; default none
 */
export function hasLattice(spec: ShapeSpec, named: { readonly [name: string]: ShapeSpec } = {}): boolean {
  const waiting: unknown[] = [spec];
  const met = new Set<unknown>();
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (typeof node !== "object" || node === null || met.has(node)) continue;
    met.add(node);
    if ("lattice" in node) return true;
    if ("shape" in node && typeof node.shape === "string" && Object.hasOwn(named, node.shape)) {
      waiting.push(named[node.shape]);
    }
    waiting.push(...Object.values(node));
  }
  return false;
}
