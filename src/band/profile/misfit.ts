/**
 * Why sizes cannot be drawn together. Internal to the profile: `explainMisfit` turns it into an AnnuletError.
 */

/** Thrown while a profile is laid out. */
export class Misfit extends Error {
  /** Stable name of the kind of problem. */
  readonly code: string;
  /** The fields to blame, the likeliest first, without the leading `profile.`, e.g. `outside.edge`. */
  readonly fields: readonly string[];

  constructor(code: string, message: string, fields: readonly string[]) {
    super(message);
    this.code = code;
    this.fields = fields;
  }
}
