/**
 * Versions of the design document: which one this tool reads, and the way up from earlier ones.
 */
import type { Problem } from "../base/errors.js";
import type { PlainObject } from "./plain.js";

/** The version that documents are written in now. */
export const DESIGN_VERSION = 1;

/**
 * Turns a document of one version into the next, without changing its input. It may meet anything, since validation
 * follows: what it does not understand it leaves as it is.
 */
export type Upgrade = (document: PlainObject) => PlainObject;

/** The first leads from version 1 to 2, and so on; none yet. */
export const UPGRADES: readonly Upgrade[] = [];

/** A document brought up to the newest version, or what is wrong with its version. */
export interface Upgraded {
  /** In the newest version; as it came where there is a problem. */
  readonly document: PlainObject;
  readonly problem?: Problem;
  /** Whether the rest can be judged: not in a later version's document. */
  readonly readable: boolean;
}

/** Checks `annulet` and applies the upgrades between that version and the newest, which is one more than they are. */
export function upgradeDocument(document: PlainObject, upgrades: readonly Upgrade[] = UPGRADES): Upgraded {
  const newest = upgrades.length + 1;
  const version = Object.hasOwn(document, "annulet") ? document.annulet : undefined;
  const allowed = newest === 1 ? "1" : `a whole number from 1 to ${newest}`;
  const problem = { code: "document-version", path: "annulet", value: version, allowed };
  if (version === undefined) {
    return {
      document: { ...document, annulet: newest },
      problem: {
        ...problem,
        message: "the document does not say which version it is written in",
        hint: `add "annulet": ${newest}`,
      },
      readable: true,
    };
  }
  if (typeof version === "number" && Number.isInteger(version) && version > newest) {
    return {
      document,
      problem: {
        ...problem,
        message: `the document is written in version ${version}; this tool reads ${newest === 1 ? "version 1" : `versions 1 to ${newest}`}`,
        hint: "take a later version of the tool",
      },
      readable: false,
    };
  }
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return {
      document: { ...document, annulet: newest },
      problem: { ...problem, message: "there is no such version of the document", hint: `write "annulet": ${newest}` },
      readable: true,
    };
  }
  const upgraded = upgrades.slice(version - 1).reduce((older, upgrade) => upgrade(older), document);
  return { document: { ...upgraded, annulet: newest }, readable: true };
}
