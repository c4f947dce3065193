/**
 * Places in a disc, as even as may be however many there are.
 */
import { TURN } from "../../../base/units.js";

/**
 * Steps of two numbers at once by which places fill a square evenly, also those of every nth place alone (M. Roberts, The
 * Unreasonable Effectiveness of Quasirandom Sequences: powers of the plastic number). Multiples of one number for both would all
 * lie on one spiral.
 */
const EVEN_STEPS = [0.7548776662466927, 0.5698402909980532] as const;

/** The place number k in the unit disc, as even as all of them together. */
export function inDisc(k: number): readonly [x: number, y: number] {
  const [share, turn] = EVEN_STEPS.map((step) => (k + 1 / 2) * step);
  const far = Math.sqrt(share - Math.floor(share));
  return [far * Math.cos(TURN * turn), far * Math.sin(TURN * turn)];
}
