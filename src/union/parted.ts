/**
 * A ring of which nothing comes again, united sector by sector, so that no operation of a kernel is long: each part is cut open
 * at the planes between it and its neighbours, tidied, and they are joined there by index, as units are.
 */
import { after, before } from "../base/math/half-space.js";
import type { Sector } from "../base/math/round.js";
import { AT_A_BREATH, BREATH, type Pausing } from "../base/pausing.js";
import { TURN } from "../base/units.js";
import type { Work } from "../base/work.js";
import { capMesh } from "../mesh/cap.js";
import { type Clipped, clipMesh } from "../mesh/clip.js";
import { concatMeshes, type Mesh } from "../mesh/mesh.js";
import { joiningSeam } from "../mesh/seam.js";
import { vertexShells } from "../mesh/shells.js";
import type { Step } from "../mesh/step.js";
import { turnRound } from "../mesh/turn-round.js";
import type { Kernel } from "./kernels/kernel.js";
import { makingBodies, takeSteps } from "./take-steps.js";
import { tidyingOpen } from "./tidy-mesh.js";
import { openSector } from "./unit.js";

/** Triangles of bodies that a part has about: a kernel takes some 50 ms for an operation on as many (measured). */
const FULL = 12_000;

/** Fewest parts, so that each is less than half the round, and most of them: then ends cost more than parts save (chosen). */
const FEWEST = 4;
const MOST = 32;

/** Into how many parts a ring is parted whose bodies have so many triangles. */
export function partsFor(triangles: number): number {
  return Math.min(MOST, Math.max(FEWEST, Math.ceil(triangles / FULL)));
}

export interface PartedOptions {
  /** How many parts, 3 or more. */
  readonly count: number;
  /** A place near an angle round the axis at which the ring may be cut. */
  readonly cutNear: (angle: number) => number;
  readonly pace: Work;
  /** Is called for each step of each part, so that progress can be told. */
  readonly onStep?: (() => void) | undefined;
}

/**
 * The solid that the steps make.
 *
 * @throws AnnuletError `border-tangled`, `seam-mismatch`, `triangulation-failed` where the parts do not meet
 */
export async function unitePartly(
  by: Kernel,
  steps: readonly Step[],
  { count, cutNear, pace, onStep }: PartedOptions,
): Promise<Mesh> {
  const cuts = Array.from({ length: count }, (_, i) => cutNear((TURN * i) / count));
  const sectors = cuts.map((from, i): Sector => ({ from, to: cuts[i + 1] ?? cuts[0] + TURN }));
  const [band, ...others] = steps;
  const bodies: Mesh[][][] = [];
  for (const step of others) bodies.push(await pace.through(cuttingBodies(step, sectors)));
  const parts: Clipped[] = [];
  for (const [i, sector] of sectors.entries()) {
    const over = [band, ...others.map((step, k) => ({ ...step, bodies: () => bodies[k][i], making: undefined }))];
    const united = await takeSteps(by, over, { sector, onStep, pace });
    parts.push(await pace.through(tidyingOpen(await pace.through(openSector(united, sector)))));
  }
  const marks = new Uint8Array(parts.reduce((sum, part) => sum + part.marks.length, 0));
  let vertices = 0;
  for (const part of parts) {
    marks.set(part.marks, vertices);
    vertices += part.marks.length;
  }
  await pace.mayRest();
  // All ends lie where starts do: no turn is between them.
  const joined = await pace.through(joiningSeam({ mesh: concatMeshes(parts.map(({ mesh }) => mesh)), marks }, 0));
  await pace.mayRest();
  return turnRound(joined, 1);
}

/** What bodies were cut into last: of the same parts a kernel may know the sum. */
const kept = new WeakMap<Mesh, { readonly key: string; readonly parts: readonly Mesh[] }>();

/** A step's bodies, sector by sector: of each what reaches into it. */
function* cuttingBodies(step: Step, sectors: readonly Sector[]): Pausing<Mesh[][]> {
  const bodies = sectors.map((): Mesh[] => []);
  const key = sectors.map(({ from }) => from).join(" ");
  for (const body of yield* makingBodies(step)) {
    const known = kept.get(body);
    const parts = known?.key === key ? known.parts : yield* cuttingToSectors(body, sectors);
    kept.set(body, { key, parts });
    for (const [i, part] of parts.entries()) if (part.triangles.length > 0) bodies[i].push(part);
  }
  return bodies;
}

/** How far bodies go on beyond a sector, radians: a quarter of a millimetre or so on a ring, so that their ends do not matter. */
const BEYOND = 0.03;

/** A shell that reaches into so many sectors at most stays whole in each: only longer ones are cut. */
const FEW_SECTORS = 2;

/** Points this near to the plane of a cut are put on it, mm. */
const ON_CUT = 1e-6;

/**
 * What of a body reaches into each sector: shells as they are, or, where they are long, cut off a little beyond it.
 *
 * @param sectors of the whole round, in order, at most 32 and each less than half of it
 */
export function* cuttingToSectors(mesh: Mesh, sectors: readonly Sector[]): Pausing<Mesh[]> {
  const { of, count } = vertexShells(mesh);
  yield BREATH;
  const reached = yield* sectorsReached(mesh, sectors);
  const ofShell = new Uint32Array(count);
  for (let t = 0; t < of.length; t++) ofShell[of[t]] |= reached[t];
  const isLong = Uint8Array.from(ofShell, (bits) => (countBits(bits) > FEW_SECTORS ? 1 : 0));
  const [whole, cut] = [sectors.map((): number[] => []), sectors.map((): number[] => [])];
  for (let t = 0; t < of.length; t++) {
    if (t % AT_A_BREATH === 0) yield BREATH;
    const long = isLong[of[t]] === 1;
    const bits = long ? reached[t] : ofShell[of[t]];
    for (let i = 0; i < sectors.length; i++) if ((bits >>> i) & 1) (long ? cut : whole)[i].push(t);
  }
  const pick = pickerOf(mesh);
  const parts: Mesh[] = [];
  for (const [i, { from, to }] of sectors.entries()) {
    yield BREATH;
    let long = pick(cut[i]);
    // Beyond the planes of the cuts these are open: what is open there is cut off.
    for (const keep of long.triangles.length === 0 ? [] : [after(from - BEYOND), before(to + BEYOND)]) {
      yield BREATH;
      const { mesh: open, marks } = clipMesh(long, keep, { reach: ON_CUT });
      long = capMesh(open, keep, (vertex) => marks[vertex] === 1);
    }
    parts.push(concatMeshes([pick(whole[i]), long].filter(({ triangles }) => triangles.length > 0)));
  }
  return parts;
}

/** For each triangle a bit for each sector that it reaches into, or nearly so. */
function* sectorsReached({ positions, triangles }: Mesh, sectors: readonly Sector[]): Pausing<Uint32Array> {
  const angles = new Float64Array(positions.length / 3);
  for (let i = 0; i < angles.length; i++) angles[i] = Math.atan2(positions[3 * i + 1], positions[3 * i]);
  yield BREATH;
  const reached = new Uint32Array(triangles.length / 3);
  for (let t = 0; t < reached.length; t++) {
    if (t % AT_A_BREATH === 0) yield BREATH;
    const a = angles[triangles[3 * t]];
    const toB = wrapped(angles[triangles[3 * t + 1]] - a);
    const toC = wrapped(angles[triangles[3 * t + 2]] - a);
    const [low, high] = [a + Math.min(0, toB, toC) - BEYOND, a + Math.max(0, toB, toC) + BEYOND];
    for (const [i, { from, to }] of sectors.entries()) {
      const shift = TURN * Math.ceil((from - high) / TURN);
      if (low + shift <= to) reached[t] |= 1 << i;
    }
  }
  return reached;
}

/** An angle between half a turn back and half a turn on, radians. */
function wrapped(angle: number): number {
  return angle - TURN * Math.round(angle / TURN);
}

function countBits(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count++;
  return count;
}

/** Takes some triangles of a mesh, with their vertices in the order in which they come. */
function pickerOf({ positions, triangles }: Mesh): (among: readonly number[]) => Mesh {
  const slot = new Int32Array(positions.length / 3).fill(-1);
  return (among) => {
    const picked = new Uint32Array(3 * among.length);
    const vertices: number[] = [];
    among.forEach((t, i) => {
      for (let k = 0; k < 3; k++) {
        const vertex = triangles[3 * t + k];
        if (slot[vertex] === -1) slot[vertex] = vertices.push(vertex) - 1;
        picked[3 * i + k] = slot[vertex];
      }
    });
    const own = new Float64Array(3 * vertices.length);
    vertices.forEach((vertex, i) => {
      own.set(positions.subarray(3 * vertex, 3 * vertex + 3), 3 * i);
      slot[vertex] = -1;
    });
    return { positions: own, triangles: picked };
  };
}
