/**
 * The manifest of a range: every file with its digest. Its bytes follow from the plan and what was made alone: no times, no order
 * of work, however many processes or machines made it.
 */
import { createHash } from "node:crypto";
import { canonicalText } from "../../base/canonical.js";
import { AnnuletError } from "../../base/errors.js";
import { VERSION } from "../../base/version.js";
import type { Part } from "../expand/part.js";
import type { RecordedFile } from "../records/record.js";

/** What makes manifests. */
export const TOOL = `annulet ${VERSION}`;

/** Version of manifests. */
export const MANIFEST_VERSION = 1;

export interface ManifestVariant {
  readonly name: string;
  readonly key: string;
  /** SHA-256 of the canonical design. */
  readonly design: string;
  readonly files: readonly RecordedFile[];
}

/** What is not there, and why. */
export interface ManifestGap {
  readonly name: string;
  /** The filter or span that leaves it out, or the code of what is wrong with it. */
  readonly why: string;
}

export interface Manifest {
  readonly manifest: typeof MANIFEST_VERSION;
  readonly tool: string;
  /** Digest of the plan with its base and tables. */
  readonly plan: string;
  /** Variants of the whole plan. */
  readonly count: number;
  /** Which part; null for the whole. */
  readonly part: Part | null;
  readonly variants: readonly ManifestVariant[];
  readonly leftOut: readonly ManifestGap[];
  readonly failed: readonly ManifestGap[];
  /** The tables of all variants. */
  readonly tables: readonly RecordedFile[];
  /** Digest of all above. */
  readonly sha256: string;
}

export type ManifestContent = Pick<Manifest, "plan" | "count" | "part" | "variants" | "leftOut" | "failed" | "tables">;

/** In the order of names, sealed with its own digest. */
export function makeManifest({ plan, count, part, variants, leftOut, failed, tables }: ManifestContent): Manifest {
  const content = {
    manifest: MANIFEST_VERSION,
    tool: TOOL,
    plan,
    count,
    part,
    variants: byName(variants),
    leftOut: byName(leftOut),
    failed: byName(failed),
    tables: tables.toSorted((a, b) => compare(a.path, b.path)),
  } as const;
  return { ...content, sha256: sealOf(content) };
}

export function manifestText(manifest: Manifest): string {
  return `${JSON.stringify(manifest, null, 1)}\n`;
}

/**
 * @param name of the file, for errors
 * @throws AnnuletError `manifest-damaged` where it is none, or was changed since it was written
 */
export function readManifest(text: string, name: string): Manifest {
  const value = parse(text);
  if (!isManifest(value)) throw damaged(name, "is no manifest of a range");
  const { sha256: seal, ...content } = value;
  if (sealOf(content) !== seal) throw damaged(name, "was changed since it was written");
  return value;
}

/**
 * The parts of one range as the whole.
 *
 * @throws AnnuletError `parts-differ` where they are of other plans or versions, or one is missing or there twice
 */
export function mergeManifests(parts: readonly Manifest[], tables: readonly RecordedFile[]): Manifest {
  const [first] = parts;
  if (first === undefined) throw apart("there is no manifest of a part", []);
  const { plan, count, tool, part } = first;
  if (part === null || parts.some((one) => one.plan !== plan || one.tool !== tool || one.part?.of !== part.of)) {
    throw apart("the parts are not of one plan, one version and one division", parts);
  }
  const missing = Array.from({ length: part.of }, (_, i) => i + 1).filter(
    (number) => parts.filter((one) => one.part?.part === number).length !== 1,
  );
  if (missing.length > 0) throw apart(`part ${missing.join(", ")} of ${part.of} is missing, or there twice`, parts);
  return makeManifest({
    plan,
    count,
    part: null,
    tables,
    variants: parts.flatMap((one) => one.variants),
    leftOut: parts.flatMap((one) => one.leftOut),
    failed: parts.flatMap((one) => one.failed),
  });
}

function sealOf(content: Omit<Manifest, "sha256">): string {
  return createHash("sha256").update(canonicalText(content)).digest("hex");
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isManifest(value: unknown): value is Manifest {
  const { manifest, plan, variants, leftOut, failed, tables, sha256: seal } = Object(value) as Partial<Manifest>;
  const lists = [variants, leftOut, failed, tables].every((list) => Array.isArray(list));
  return manifest === MANIFEST_VERSION && typeof plan === "string" && typeof seal === "string" && lists;
}

function byName<Named extends { readonly name: string }>(list: readonly Named[]): readonly Named[] {
  return list.toSorted((a, b) => compare(a.name, b.name));
}

/** By code units, so that no language of a machine changes the order. */
function compare(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

function damaged(name: string, what: string): AnnuletError {
  return new AnnuletError({
    code: "manifest-damaged",
    message: `${name} ${what}`,
    value: name,
    hint: "look at what happened to it; take it away and run the range again to have it written anew",
  });
}

function apart(message: string, parts: readonly Manifest[]): AnnuletError {
  const value = parts.map(({ part }) => (part === null ? "whole" : `${part.part}/${part.of}`));
  return new AnnuletError({
    code: "parts-differ",
    message,
    value,
    hint: "make the missing parts, or look where they are from",
  });
}
