/**
 * One symmetry unit of a ring: what of its united bodies lies between the planes that bound it, tidied, and its images.
 */
import { after, before, type HalfSpace } from "../base/math/half-space.js";
import { isHalfTurn, isWholeRound, type RoundSymmetry, type Sector } from "../base/math/round.js";
import type { Pausing } from "../base/pausing.js";
import { type Clipped, clipMesh } from "../mesh/clip.js";
import { buildEdgeTable, nextEdge } from "../mesh/edges.js";
import type { Mesh } from "../mesh/mesh.js";
import { joiningSeam } from "../mesh/seam.js";
import { END, START, type TurnPart } from "../mesh/turn-round.js";
import { MIDDLE, mirrorEnd, mirrorMiddle, turningOver } from "./complete.js";
import { tidyingOpen } from "./tidy-mesh.js";

/** Points this near to a plane of the unit are put on it, mm: a few thousand steps of single precision. */
const ON_PLANE = 5e-4;

/**
 * One unit, to be repeated.
 *
 * @param united the bodies of the sector, united; it goes on beyond the sector's ends
 * @throws AnnuletError `border-tangled`, `seam-mismatch`
 */
export function* makeUnit(united: Mesh, sector: Sector, { mirrored, halfTurned }: RoundSymmetry): Pausing<TurnPart> {
  const open = yield* tidyingOpen(yield* openSector(united, sector));
  yield undefined;
  const whole = sector.upper === true ? mirrorMiddle(open) : open;
  yield undefined;
  if (isWholeRound(sector)) return { mesh: whole.mesh, follows: new Int32Array(whole.marks.length).fill(-1) };
  if (mirrored) return mirrorEnd(whole, sector.to);
  const wide = sector.to - sector.from;
  return halfTurned
    ? yield* joiningSeam(yield* turningOver(whole, sector.to), 2 * wide)
    : yield* joiningSeam(whole, wide);
}

/** What of a mesh lies in a sector, open at its ends. */
export function* openSector(united: Mesh, sector: Sector): Pausing<Clipped> {
  const { from, to, upper = false } = sector;
  const above: HalfSpace = { normal: [0, 0, -1], offset: 0 };
  const round = isWholeRound(sector);
  // A sector of half a turn has one plane for both its ends.
  const half = !round && isHalfTurn(sector);
  const planes: [HalfSpace, number][] = [];
  if (!round) planes.push([after(from), START]);
  if (!round && !half) planes.push([before(to), END]);
  if (upper) planes.push([above, MIDDLE]);
  let open: Clipped = { mesh: united, marks: new Uint8Array(united.positions.length / 3) };
  for (const [plane, bit] of planes) {
    yield undefined;
    open = letGo(clipMesh(open.mesh, plane, { reach: ON_PLANE, marks: open.marks, bit }), plane, bit);
  }
  return half ? markFarEnd(open, from) : open;
}

/** How far a point moves off a plane that it only touches, mm: two hundred steps of single precision. */
const OFF_PLANE = 2e-4;

/** Takes off a plane what touches it in a point alone: its image would hang on it by that point. */
function letGo({ mesh, marks }: Clipped, { normal }: HalfSpace, bit: number): Clipped {
  const onRim = verticesOfRim(mesh, (vertex) => (marks[vertex] & bit) !== 0);
  if (!marks.some((mark, vertex) => (mark & bit) !== 0 && onRim[vertex] === 0)) return { mesh, marks };
  const positions = mesh.positions.slice();
  const kept = marks.map((mark, vertex) => {
    if ((mark & bit) === 0 || onRim[vertex] === 1) return mark;
    for (let k = 0; k < 3; k++) positions[3 * vertex + k] -= OFF_PLANE * normal[k];
    return mark & ~bit;
  });
  return { mesh: { positions, triangles: mesh.triangles }, marks: kept };
}

/** 1 for each vertex of an open edge between two vertices of a plane. All triangles at such an edge have both of them. */
function verticesOfRim({ positions, triangles }: Mesh, onPlane: (vertex: number) => boolean): Uint8Array {
  const beside: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const a = onPlane(triangles[t]);
    const b = onPlane(triangles[t + 1]);
    const c = onPlane(triangles[t + 2]);
    if (a ? b || c : b && c) beside.push(triangles[t], triangles[t + 1], triangles[t + 2]);
  }
  const { opposite } = buildEdgeTable({ positions, triangles: Uint32Array.from(beside) });
  const onRim = new Uint8Array(positions.length / 3);
  for (let h = 0; h < opposite.length; h++) {
    if (opposite[h] !== -1) continue;
    const [a, b] = [beside[h], beside[nextEdge(h)]];
    if (onPlane(a) && onPlane(b)) onRim[a] = onRim[b] = 1;
  }
  return onRim;
}

/** Of what lies on the plane of half a turn, what lies beyond the axis is at the end. */
function markFarEnd({ mesh, marks }: Clipped, from: number): Clipped {
  const [cos, sin] = [Math.cos(from), Math.sin(from)];
  const isFar = (vertex: number) => mesh.positions[3 * vertex] * cos + mesh.positions[3 * vertex + 1] * sin < 0;
  return {
    mesh,
    marks: marks.map((mark, vertex) => ((mark & START) !== 0 && isFar(vertex) ? mark ^ START ^ END : mark)),
  };
}
