/**
 * What is known of one field of the design document, as plain values.
 */

/** One line about a field inside another. */
export interface FieldLine {
  /** Its key; `*` for any name that the user chooses. */
  readonly name: string;
  readonly description?: string;
  /** What is written there: `number`, `text`, `list of objects` … */
  readonly kind: string;
  /** Whether it has to be there. */
  readonly required: boolean;
  /** What holds where it is left out; a field without one has none. */
  readonly default?: unknown;
}

/** One of the ways in which a value can be given. */
export interface FormReference {
  /** `channel`, or for objects without a name the fields that they must have, `{diameter}`. */
  readonly name: string;
  readonly description?: string;
  readonly fields: readonly FieldLine[];
}

/** What is known of one field. */
export interface FieldReference {
  /** `profile.outside.rail`; the whole document's is empty. */
  readonly path: string;
  /** The forms of the part around it that have this field; missing where there is but one form. */
  readonly of?: readonly string[];
  readonly description?: string;
  readonly kind: string;
  /** mm, degrees, % …; missing for counts, ratios and texts. */
  readonly unit?: string;
  /** Allowed numbers, lengths of texts, or numbers of entries, in words. */
  readonly range?: string;
  /** Allowed words, numbers and switches. */
  readonly choices?: readonly unknown[];
  readonly required: boolean;
  readonly default?: unknown;
  /** Values that the schema gives as examples. */
  readonly examples?: readonly unknown[];
  /** What an object, or each entry of a list of objects, consists of; empty where it has several forms, and for plain values. */
  readonly fields: readonly FieldLine[];
  /** The forms of an object that can be given in more than one way; empty for all else. */
  readonly forms: readonly FormReference[];
}
