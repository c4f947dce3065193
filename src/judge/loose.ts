/**
 * Rings in pieces: closed parts that touch nothing, whether by what was drawn or by a road's fault.
 */
import { BoxTree, boxOf } from "../mesh/box-tree.js";
import type { Mesh } from "../mesh/mesh.js";
import { vertexShells } from "../mesh/shells.js";
import { surelyApart } from "../mesh/triangles-apart.js";
import type { SolidCheck } from "./gate.js";

/** Whether all that is wrong with a mesh is that it is in several pieces, each of them sound. */
export function isInPieces({
  faults,
  float32,
  components,
  voids,
}: Pick<SolidCheck, "faults" | "components" | "voids"> & {
  readonly float32: Pick<SolidCheck["float32"], "faults">;
}): boolean {
  return components > 1 && voids === 0 && [...faults, ...float32.faults].every(({ code }) => code === "components");
}

/** Triangles of pieces beside the largest that are looked at: of more it is not said that they lie clear. Chosen. */
const MOST_LOOKED_AT = 50_000;

/**
 * Whether every piece beside the one with the most triangles surely lies so far from it, mm. Pieces that lie nearer may be one
 * with it on another road, where rounding falls otherwise.
 */
export function liesClear(mesh: Mesh, gap: number): boolean {
  const { of, count } = vertexShells(mesh);
  const sizes = new Uint32Array(count);
  for (const shell of of) sizes[shell]++;
  const largest = sizes.indexOf(sizes.reduce((most, size) => Math.max(most, size), 0));
  const all = Array.from(of.keys());
  const loose = all.filter((t) => of[t] !== largest);
  if (loose.length > MOST_LOOKED_AT) return false;
  const main = new BoxTree(mesh, Uint32Array.from(all.filter((t) => of[t] === largest)));
  const box = new Float64Array(BOX);
  for (const t of loose) {
    boxOf(mesh, t, box);
    for (let k = 0; k < BOX; k++) box[k] += k < BOX / 2 ? -gap : gap;
    let near = false;
    main.around(box, (other) => {
      near ||= !surelyApart(mesh, t, mesh, other, gap);
    });
    if (near) return false;
  }
  return true;
}

/** Numbers of a box: its least corner, then its greatest. */
const BOX = 6;
