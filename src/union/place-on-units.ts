/**
 * What stands at one place of a ring of alike units: its steps are worked on the few units that they touch, and these are
 * joined to the rest again.
 */
import { after, before, type HalfSpace } from "../base/math/half-space.js";
import { TURN } from "../base/units.js";
import type { Work } from "../base/work.js";
import { capMesh } from "../mesh/cap.js";
import type { Clipped } from "../mesh/clip.js";
import { concatMeshes, type Mesh } from "../mesh/mesh.js";
import { joinSeam } from "../mesh/seam.js";
import type { Step } from "../mesh/step.js";
import { END, START, type TurnPart, turnChain } from "../mesh/turn-round.js";
import type { Kernel } from "./kernels/kernel.js";
import { takeSteps } from "./take-steps.js";
import { tidyingOpen } from "./tidy-mesh.js";
import { openSector } from "./unit.js";

/** Units of a ring: the first begins at an angle, radians. */
export interface RingUnits {
  readonly part: TurnPart;
  readonly units: number;
  readonly from: number;
}

/** More of the round than this is not worth parting; and the ends of what is parted must lie within half a turn. */
const MOST_SHARE = 0.49;

/** Room kept between a body and the end of the units that are worked, radians. */
const ROOM = TURN / 360;

/**
 * The ring with what stands at one place.
 *
 * @param steps all of the scope `place`
 * @returns undefined where they touch too much of the round
 * @throws AnnuletError `border-tangled`, `seam-mismatch`, `triangulation-failed`
 */
export async function placeOnUnits(
  by: Kernel,
  ring: RingUnits,
  steps: readonly Step[],
  work: Pick<Work, "through">,
): Promise<Mesh | undefined> {
  const { part, units, from } = ring;
  const { first, count } = touchedUnits(
    steps.flatMap(({ bodies }) => bodies()),
    ring,
  );
  if (count / units > MOST_SHARE) return undefined;
  const step = TURN / units;
  const sector = { from: from + first * step, to: from + (first + count) * step };
  const closed = closeEnds(turnChain(part, units, first, count), sector);
  const solid = await takeSteps(by, steps, { onto: closed });
  const worked = await work.through(tidyingOpen(await work.through(openSector(solid, sector))));
  const rest = turnChain(part, units, first + count, units - count);
  return joinRound(worked, rest);
}

/** The fewest neighbouring units that hold all bodies. */
function touchedUnits(bodies: readonly Mesh[], { units, from }: RingUnits): { first: number; count: number } {
  const touched = new Uint8Array(units);
  const unitAt = (angle: number) => Math.floor(((angle - TURN * Math.floor(angle / TURN)) / TURN) * units) % units;
  for (const { positions } of bodies) {
    for (let i = 0; i < positions.length; i += 3) {
      const angle = Math.atan2(positions[i + 1], positions[i]) - from;
      touched[unitAt(angle - ROOM)] = 1;
      touched[unitAt(angle + ROOM)] = 1;
    }
  }
  // The widest gap between units that are touched is left out.
  let best = { first: 0, count: units };
  for (let first = 0; first < units; first++) {
    if (touched[first] === 0 || touched[(first + units - 1) % units] === 1) continue;
    let count = units;
    while (touched[(first + count - 1) % units] === 0) count--;
    if (count < best.count) best = { first, count };
  }
  return best;
}

/** A chain closed by flat faces at both its ends. */
function closeEnds({ mesh, marks }: Clipped, { from, to }: { readonly from: number; readonly to: number }): Mesh {
  const planes: [HalfSpace, number][] = [
    [after(from), START],
    [before(to), END],
  ];
  return planes.reduce((open, [plane, bit]) => capMesh(open, plane, (vertex) => (marks[vertex] & bit) !== 0), mesh);
}

/** Two chains that go on in each other, as one ring. */
function joinRound(a: Clipped, b: Clipped): Mesh {
  const both = concatMeshes([a.mesh, b.mesh]);
  const marksOf = (ofA: number, ofB: number) => {
    const marks = new Uint8Array(a.marks.length + b.marks.length);
    marks.set(a.marks.map((mark) => mark & ofA));
    marks.set(
      b.marks.map((mark) => mark & ofB),
      a.marks.length,
    );
    return marks;
  };
  const first = join({ mesh: both, marks: marksOf(END, START) });
  const marks = new Uint8Array(first.positions.length / 3);
  marks.set(marksOf(START, END));
  return join({ mesh: first, marks });
}

/** Makes the points at an end those of the start that it meets. */
function join(open: Clipped): Mesh {
  const { mesh, follows } = joinSeam(open, 0);
  return { positions: mesh.positions, triangles: mesh.triangles.map((v) => (follows[v] === -1 ? v : follows[v])) };
}
