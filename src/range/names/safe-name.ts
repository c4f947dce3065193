/**
 * Names that every file system takes alike: Windows, macOS, Linux, and the stores that speak as S3 does.
 *
 * What is forbidden: signs and reserved names of Windows ("Naming Files, Paths, and Namespaces", Microsoft; from memory), a dot
 * first, which hides a file, a dash first, which programs take for an option, and letters beyond ASCII, which file systems
 * write in two ways.
 */
import { AnnuletError } from "../../base/errors.js";

/** Most letters of a name: file systems take 255 bytes, and endings and those of temporary files follow. */
const LONGEST = 150;

/** Devices of Windows, with any ending. */
const RESERVED = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)/i;

const SAFE = /^[A-Za-z0-9_][A-Za-z0-9_. -]*$/;

const ALLOWED = `letters A to Z, digits, . _ - and spaces, at most ${LONGEST}, with no dot, dash or space at the ends; not con, prn, aux, nul, com1, lpt1 …`;

/** Why a name is none for a file; undefined where it is one everywhere. */
export function whyUnsafe(name: string): string | undefined {
  if (name.length > LONGEST) return `has ${name.length} letters`;
  if (RESERVED.test(name)) return "is a device on Windows";
  if (!SAFE.test(name)) return "has signs that not every file system takes";
  return /[. -]$/.test(name) ? "ends with a sign that not every file system keeps" : undefined;
}

/** @throws AnnuletError `name-unsafe` */
export function requireSafe(name: string): string {
  const why = whyUnsafe(name);
  if (why === undefined) return name;
  const message = `the name ${JSON.stringify(name)} ${why}`;
  throw new AnnuletError({ code: "name-unsafe", message, path: "name", value: name, allowed: ALLOWED });
}

/** What stays as it is: most values. */
const PLAIN = /^[A-Za-z0-9](?:[A-Za-z0-9._]*[A-Za-z0-9])?$/;

/** What a value is called in a name: `7½` is `7-1-2`, `Ångström` is `Angstrom`, `-0.5` is `minus0.5`. */
export function inName(value: string): string {
  if (PLAIN.test(value)) return value;
  const plain = value
    .replaceAll(/[¼½¾]/g, " $&")
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .replace(/^-(?=[\d.])/, "minus");
  const joined = plain.replaceAll(/[^A-Za-z0-9._]+/g, "-").replaceAll(/^[-.]+|[-.]+$/g, "");
  return joined === "" ? "none" : joined;
}
