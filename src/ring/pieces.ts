/**
 * The designs of the two pieces: the finished one, and the casting before it is finished.
 */
import { type CastingAllowance, castingAllowance, takesOff } from "../casting/allowances/allowance.js";
import { asCast } from "../casting/as-cast.js";
import type { Design } from "../design/schema.js";
import { FixedDesign } from "./fixed-design.js";
import type { Piece } from "./plan.js";

export class Pieces {
  readonly #finished: FixedDesign;
  readonly #allowance: CastingAllowance;
  #cast: FixedDesign | undefined;

  constructor(design: Design) {
    this.#finished = new FixedDesign({ ...design, lift: 0 });
    this.#allowance = castingAllowance(design.casting);
  }

  /** Which piece the casting is: the finished one where finishing takes nothing off. */
  get casting(): Piece {
    return takesOff(this.#allowance.finishing) ? "cast" : "finished";
  }

  /** @throws AnnuletError `finishing-too-deep` */
  of(piece: Piece): FixedDesign {
    if (piece === "finished") return this.#finished;
    const { finishing } = this.#allowance;
    this.#cast ??= new FixedDesign({ ...asCast(this.#finished.value, finishing), lift: finishing.relief });
    return this.#cast;
  }
}
