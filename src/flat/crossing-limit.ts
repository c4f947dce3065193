/**
 * Bounds one operation of the polygon library: its time grows with the crossings of edges, of which n edges can have n².
 * The library tells nobody of them, so the one place where it takes a crossing down is listened to, and so is the one where it
 * goes on to the next height: there the time is looked at, and whoever works learns that it goes on.
 */
import { Clipper64 } from "clipper2-ts";
import { checkTime } from "../base/clock.js";
import { AnnuletError } from "../base/errors.js";

/**
 * Most crossings of one operation. Chosen: the richest example has 19 000 in one (measured), and so many take about a second
 * of CPU.
 */
const MOST_CROSSINGS = 500_000;

/** Crossings between two looks at the time: some milliseconds. */
const LOOK_EACH = 4096;

/** Heights at which the sweep halts between two looks at the time: some milliseconds. */
const LOOK_EACH_HEIGHT = 512;

interface Sweep {
  addNewIntersectNode(...edges: unknown[]): void;
  doTopOfScanbeam(...height: unknown[]): void;
}

const sweep = Clipper64.prototype as unknown as Sweep;
const { addNewIntersectNode: takeDown, doTopOfScanbeam: goUp } = sweep;

/** The operation at hand; undefined where none of ours is worked. */
let operation: { crossings: number; heights: number; stop?: { readonly reason: unknown } } | undefined;

// On the prototype, since the library makes sweeps of its own where it offsets. Other users of it count nothing.
sweep.addNewIntersectNode = function (this: Sweep, ...edges: unknown[]): void {
  if (operation !== undefined && ++operation.crossings % LOOK_EACH === 0) look(operation);
  takeDown.apply(this, edges);
};

sweep.doTopOfScanbeam = function (this: Sweep, ...height: unknown[]): void {
  if (operation !== undefined && ++operation.heights % LOOK_EACH_HEIGHT === 0) look(operation);
  goUp.apply(this, height);
};

/** The library catches what is thrown inside it and gives nothing, so it is kept for `limitCrossings`. */
function look(own: NonNullable<typeof operation>): void {
  try {
    if (own.crossings > MOST_CROSSINGS) throw tooTangled();
    checkTime();
  } catch (reason) {
    own.stop = { reason };
    throw reason;
  }
}

/**
 * Runs one operation of the library.
 *
 * @throws AnnuletError `art-too-tangled`, without a place; what `checkTime` throws
 */
export function limitCrossings<Result>(run: () => Result): Result {
  checkTime();
  const own: NonNullable<typeof operation> = { crossings: 0, heights: 0 };
  operation = own;
  try {
    const result = run();
    if (own.stop === undefined) return result;
  } finally {
    operation = undefined;
  }
  throw own.stop.reason;
}

function tooTangled(): AnnuletError {
  return new AnnuletError({
    code: "art-too-tangled",
    message: "what is drawn is too tangled to be worked: its lines, or what is drawn about them, lie across each other",
    allowed: `at most ${MOST_CROSSINGS} crossings at a time`,
    hint: "draw it more simply, or make ribbons, offsets and rounded edges narrower",
  });
}
