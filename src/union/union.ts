/**
 * Uniting a ring: the roads, and which was taken.
 *
 * One symmetry unit is made and repeated where there is one, else the whole ring; what stands at one place is worked at
 * the end. A road whose result does not pass the caller's check, or is not what was meant, gives way to the next one, and a
 * kernel that has none left to the fallback; the result says so.
 */

import { AnnuletError } from "../base/errors.js";
import { isBeyond } from "../base/limits.js";
import type { RoundSymmetry, Sector } from "../base/math/round.js";
import { Work } from "../base/work.js";
import { type Mesh, triangleCount } from "../mesh/mesh.js";
import { vertexShells } from "../mesh/shells.js";
import type { Step } from "../mesh/step.js";
import { type TurnPart, turnRound } from "../mesh/turn-round.js";
import { type Turned, turnedImages, usesAll } from "../mesh/turned.js";
import { usedVertices } from "../mesh/used-vertices.js";
import type { Kernel } from "./kernels/kernel.js";
import { stoppable } from "./kernels/stoppable.js";
import { isKernelFailure, tellFailures } from "./kernels/tell-failures.js";
import { partCoincident } from "./part-coincident.js";
import { partsFor, unitePartly } from "./parted.js";
import { placeOnUnits } from "./place-on-units.js";
import { dropSpecks, type Hollow } from "./specks.js";
import { makingBodies, takeSteps } from "./take-steps.js";
import { tidyingMesh } from "./tidy-mesh.js";
import { makeUnit } from "./unit.js";
import { withoutFallback } from "./without-fallback.js";

/** A ring before it is one. */
export interface RingParts {
  /** In the order of work. The first one adds the band. */
  readonly steps: readonly Step[];
  /** How it comes again; undefined where it does not. */
  readonly symmetry?: RoundSymmetry | undefined;
  /** A place near an angle round the axis at which the ring may be cut. Default: it is never parted. */
  readonly cutNear?: ((angle: number) => number) | undefined;
}

/**
 * How the parts became one: `plain` is a band alone; `mirror` repeats half a unit and its mirror image, `turn` a whole
 * unit, or half of one and its image under a half turn; `whole` is one union of everything.
 */
export type Road = "plain" | "mirror" | "turn" | "whole";

export interface UnionOptions<Check extends { readonly closed: boolean }, Proof extends Agreement = Agreement> {
  readonly kernel: Kernel;
  /** Takes over where the kernel's result does not pass. */
  readonly fallback: Kernel;
  /** Whether a mesh is a sound solid. `turned`: the units of which it was seen to be made. */
  readonly check: (mesh: Mesh, made: Made, turned?: Turned) => Check | Promise<Check>;
  /** Whether a sound solid is the one that was meant. Default: not asked. */
  readonly prove?: ((mesh: Mesh, check: Check, made: Made, turned?: Turned) => Proof) | undefined;
  /** Whether what is wrong with a mesh is what was meant, so that no other road would make a sound one. Default: it never is. */
  readonly isMeant?: ((mesh: Mesh, check: Check, made: Made) => boolean) | undefined;
  readonly signal?: AbortSignal | undefined;
  /** Counts the triangles of the ring before a unit is repeated, and hears of steps. Default: no limit is held. */
  readonly work?: Pick<Work, "requireTriangles" | "expect" | "step"> | undefined;
}

/** How a mesh was made. */
export interface Made {
  /** Of how many turned images of a unit; 1 where of none. */
  readonly units: number;
}

/** Whether a solid is the one that was meant. */
export interface Agreement {
  readonly agrees: boolean;
}

export interface UnionResult<Check = unknown, Proof = Agreement> {
  readonly mesh: Mesh;
  /** What was found of it. */
  readonly check: Check;
  /** Whether it is what was meant, and by what; undefined where that was not asked or it is not sound. */
  readonly proof: Proof | undefined;
  /** Name of the kernel whose result it is; none where nothing had to be united. */
  readonly kernel: string;
  readonly road: Road;
  /** Why this road, in a few words. */
  readonly roadReason: string;
  /** Name of a kernel whose result was not accepted. */
  readonly rejected?: string;
  /** What that kernel failed with, where it gave no result. */
  readonly failure?: AnnuletError;
  /** Sealed hollows that were filled. */
  readonly hollows: readonly Hollow[];
  /** The unit of which the mesh was seen to be made, with its turned images; undefined where it is not. */
  readonly turned: Turned | undefined;
}

/** Unites the parts. The result is the last one tried, also where none was accepted: the caller's gate decides. */
export async function uniteRing<Check extends { readonly closed: boolean }, Proof extends Agreement = Agreement>(
  parts: RingParts,
  { kernel, fallback, check, prove, isMeant, signal, work }: UnionOptions<Check, Proof>,
): Promise<UnionResult<Check, Proof>> {
  signal?.throwIfAborted();
  const proofOf = (mesh: Mesh, found: Check, units: number, turned?: Turned) =>
    found.closed ? prove?.(mesh, found, { units }, turned) : undefined;
  if (parts.symmetry === undefined && parts.steps.length === 1) {
    const [band] = parts.steps[0].bodies();
    const found = await check(band, { units: 1 });
    return {
      mesh: band,
      check: found,
      proof: proofOf(band, found, 1),
      kernel: "none",
      road: "plain",
      roadReason: "a band alone",
      hollows: [],
      turned: undefined,
    };
  }
  const kernels = kernel === fallback ? [kernel] : [kernel, fallback];
  const pace = new Work(undefined, signal, () => work?.step());
  const roads = roadsOf(parts, work, pace);
  work?.expect(2 * parts.steps.length + STEPS_AFTER);
  const failed: string[] = [];
  let failure: AnnuletError | undefined;
  for (const by of kernels) {
    for (const [i, { road, reason, unite, applies }] of roads.entries()) {
      if (applies !== undefined && !(await applies())) continue;
      const isLast = by === fallback && i === roads.length - 1;
      const run = async () => {
        const united = await unite(stoppable(tellFailures(by), signal, () => work?.step()));
        await pace.rest();
        work?.step();
        return settle(united, check, work, pace);
      };
      const { result, error } = await attempt(run, signal);
      if (error !== undefined && (isLast || isBeyond(error))) {
        throw withFailure(by === kernel ? error : withoutFallback(error, kernel, fallback), failure);
      }
      const proof = result && proofOf(result.mesh, result.check, result.units, result.turned);
      work?.step();
      if (result !== undefined && (isLast || isEnough(result, proof, isMeant))) {
        const roadReason = [reason, ...failed].join("; ");
        const replaced = { rejected: kernel.name, ...(failure === undefined ? {} : { failure }) };
        const { mesh, check: found, hollows, turned } = result;
        const rejected = by === kernel ? {} : replaced;
        return { mesh, check: found, proof, hollows, turned, kernel: by.name, road, roadReason, ...rejected };
      }
      if (by === kernel && isKernelFailure(error)) failure ??= error;
      failed.push(`${road} by ${by.name} ${howFailed(error, proof)}`);
    }
  }
  throw new Error("a ring has at least one road");
}

/** Whether a road's result is the ring, or shows that there is none. */
function isEnough<Check extends { readonly closed: boolean }>(
  { mesh, check, units }: { readonly mesh: Mesh; readonly check: Check; readonly units: number },
  proof: Agreement | undefined,
  isMeant: UnionOptions<Check>["isMeant"],
): boolean {
  return check.closed ? proof?.agrees !== false : isMeant?.(mesh, check, { units }) === true;
}

function howFailed(error: unknown, proof: Agreement | undefined): string {
  if (isKernelFailure(error)) return "failed";
  return proof === undefined ? "did not close" : "was not what was drawn";
}

/** The last road's error, with what the caller's own kernel failed with before the fallback did. */
function withFailure(error: unknown, failure: AnnuletError | undefined): unknown {
  if (failure === undefined || !(error instanceof AnnuletError) || isBeyond(error)) return error;
  return new AnnuletError([...error.problems, ...failure.problems], { cause: failure.cause });
}

interface PossibleRoad {
  readonly road: Road;
  readonly reason: string;
  /** Whether it is worth taking. Default: always. */
  readonly applies?: () => Promise<boolean>;
  readonly unite: (by: Kernel) => Promise<United>;
}

interface United {
  readonly mesh: Mesh;
  /** Whether it has been tidied. */
  readonly tidy: boolean;
  /** Of how many turned images of a unit it is made. */
  readonly units: number;
  /** Whether that it hangs together is known already. */
  readonly onePiece: boolean;
}

/** Steps that are told once the kernel is done, beside two for each step of the ring: the unit, its images, what is tidied, what is checked, the proof. */
const STEPS_AFTER = 5;

/** What comes whole from a kernel. */
const WORKED = { tidy: false, units: 1, onePiece: false } as const;

/** The roads that lead to a ring, the shortest first. */
function roadsOf(parts: RingParts, work: UnionOptions<{ closed: boolean }>["work"], pace: Work): PossibleRoad[] {
  const { steps, symmetry } = parts;
  const first = steps.findIndex(({ scope }, i) => scope === "place" && i > 0);
  const [alike, placed] = first === -1 ? [steps, []] : [steps.slice(0, first), steps.slice(first)];
  // What comes again cannot be worked on a unit once something stands at one place of it.
  const inOrder = placed.every(({ scope }) => scope === "place");
  const none = symmetry === undefined ? "nothing comes again round the ring" : "no unit closed";
  const reason = inOrder ? none : "something comes again after what stands at one place";
  const whole: PossibleRoad = {
    road: "whole",
    reason,
    unite: async (by) => {
      const onto = await takeSteps(by, alike, { pace });
      return { mesh: await takeSteps(by, placed, { onto, pace }), ...WORKED };
    },
  };
  const last = [...partedRoads(parts, reason, work, pace), whole];
  if (symmetry === undefined || !inOrder) return last;
  return [...symmetry.sectors.map((sector) => unitRoad([alike, placed], symmetry, sector, work, pace)), ...last];
}

/** A ring whose bodies have more triangles is worked in parts: a kernel takes a fifth of a second for as many (measured). */
const MOST_AT_ONCE = 40_000;

/** All of it, sector by sector, where it is large and may be cut. */
function partedRoads(
  { steps, cutNear }: RingParts,
  reason: string,
  work: UnionOptions<{ closed: boolean }>["work"],
  pace: Work,
): PossibleRoad[] {
  if (cutNear === undefined) return [];
  let triangles = 0;
  return [
    {
      road: "whole",
      reason: `${reason}; united in parts`,
      applies: async () => {
        triangles = 0;
        for (const step of steps.slice(1)) {
          const bodies = await pace.through(makingBodies(step));
          triangles += bodies.reduce((sum, body) => sum + triangleCount(body), 0);
        }
        return triangles > MOST_AT_ONCE;
      },
      unite: async (by) => {
        const count = partsFor(triangles);
        work?.expect(2 * count * steps.length + STEPS_AFTER);
        const how = { count, cutNear, pace, onStep: work && (() => work.step()) };
        return { mesh: await unitePartly(by, steps, how), ...WORKED };
      },
    },
  ];
}

/** One unit made of the steps that come again, repeated; then the others on the few units that they touch. */
function unitRoad(
  [alike, placed]: readonly [readonly Step[], readonly Step[]],
  symmetry: RoundSymmetry,
  sector: Sector,
  work: UnionOptions<{ closed: boolean }>["work"],
  pace: Work,
): PossibleRoad {
  const { mirrored, halfTurned, units } = symmetry;
  const onStep = work && (() => work.step());
  const mirrors = (mirrored ? 1 : 0) + (sector.upper === true ? 1 : 0);
  const share = halfTurned ? "half of " : ["", "half of ", "a quarter of "][mirrors];
  const ofRound = units === 1 ? "the ring" : `one of ${units} alike units`;
  return {
    road: mirrors > 0 ? "mirror" : "turn",
    reason: `${share}${ofRound}${mirrors > 0 ? ", mirrored" : halfTurned ? ", turned over" : ""}`,
    unite: async (by) => {
      const united = await takeSteps(by, alike, { sector, onStep, pace });
      work?.step();
      const part = await pace.through(makeUnit(united, sector, symmetry));
      work?.step();
      await pace.rest();
      work?.requireTriangles(units * triangleCount(part.mesh), undefined);
      if (placed.length === 0) return { mesh: turnRound(part, units), tidy: true, units, onePiece: isOnePiece(part) };
      const few = await placeOnUnits(by, { part, units, from: sector.from }, placed, pace);
      if (few !== undefined) return { ...WORKED, mesh: few, tidy: true };
      return { mesh: await takeSteps(by, placed, { onto: turnRound(part, units), pace }), ...WORKED };
    },
  };
}

/** Whether a unit hangs together, and with the next one: then all of them do. */
function isOnePiece({ mesh, follows }: TurnPart): boolean {
  const used = new Uint8Array(follows.length);
  for (const vertex of mesh.triangles) used[vertex] = 1;
  const meets = follows.some((start, vertex) => start !== -1 && used[vertex] === 1 && used[start] === 1);
  return meets && vertexShells(mesh).count === 1;
}

/** Drops specks and tidies; where the result does not pass, parts points that single precision makes one. */
async function settle<Check extends { readonly closed: boolean }>(
  united: United,
  check: UnionOptions<Check>["check"],
  work: UnionOptions<Check>["work"],
  pace: Work,
) {
  const { units } = united;
  const { mesh: solid, hollows } = united.onePiece ? { mesh: united.mesh, hollows: [] } : dropSpecks(united.mesh);
  await pace.mayRest();
  const seen = united.tidy ? turnedImages(solid, units) : undefined;
  const whole = seen !== undefined && usesAll(seen);
  const tidied = whole ? solid : usedVertices(united.tidy ? solid : await pace.through(tidyingMesh(solid)));
  const turned = whole ? seen : turnedImages(tidied, units);
  work?.step();
  await pace.rest();
  const found = await check(tidied, { units }, turned);
  work?.step();
  await pace.rest();
  if (found.closed) return { mesh: tidied, check: found, hollows, units, turned };
  const mesh = partCoincident(united.tidy ? await pace.through(tidyingMesh(solid)) : tidied);
  return { mesh, check: await check(mesh, { units: 1 }), hollows, units: 1, turned: undefined };
}

/** A road on which something is thrown has failed like one whose result is not accepted, where another is left. */
async function attempt<Result>(
  run: () => Promise<Result>,
  signal: AbortSignal | undefined,
): Promise<{ readonly result?: Result; readonly error?: unknown }> {
  signal?.throwIfAborted();
  try {
    const result = await run();
    signal?.throwIfAborted();
    return { result };
  } catch (error) {
    signal?.throwIfAborted();
    return { error: error ?? new Error("nothing was said") };
  }
}
