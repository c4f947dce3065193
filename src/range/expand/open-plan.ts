/**
 * A plan made ready: its base design, its axes and its names; each variant is made when it is asked for.
 */
import { canonicalText } from "../../base/canonical.js";
import { AnnuletError, type Problem } from "../../base/errors.js";
import { type FileSource, loadFile } from "../../base/files.js";
import { pause } from "../../base/pause.js";
import { sha256 } from "../../base/sha256.js";
import { changePlain, type DocumentChange } from "../../design/change-document.js";
import type { Plain, PlainObject } from "../../design/plain.js";
import { isPlainObject } from "../../design/plain.js";
import { readText } from "../../design/text.js";
import { axesOf } from "../axes/axes-of.js";
import type { Axis } from "../axes/axis.js";
import { putTogether, type Together } from "../axes/together.js";
import { type NameVariant, readTemplate } from "../names/name-template.js";
import { distinctNames } from "../names/require-distinct.js";
import type { Plan } from "../plan/plan-schema.js";
import { readPlan } from "../plan/read-plan.js";

/** One ring of a range. */
export interface Variant {
  /** From 1, in the plan's order. */
  readonly number: number;
  /** Safe as a file's name, and of no other variant. */
  readonly name: string;
  /** What varies, as tables tell it: axis → value. */
  readonly shown: Readonly<Record<string, string>>;
  /** The design. Whether it is sound is not known yet. */
  readonly document: PlainObject;
}

/** One whose values have no place in the design. */
export interface FaultyVariant extends Omit<Variant, "document"> {
  readonly kind: "fault";
  readonly problems: readonly Problem[];
}

/** What a base design without a name is called. */
const NAMELESS = "ring";

export class OpenPlan {
  readonly plan: Plan;
  /** Names of all axes, in order. */
  readonly axisNames: readonly string[];
  /** How many variants there are, those that may be left out among them. */
  readonly count: number;
  /** The base design's name. */
  readonly title: string;
  /** SHA-256 of all that the variants follow from: the plan, the base design, the tables. */
  readonly digest: string;
  readonly #base: PlainObject;
  readonly #axes: readonly Axis[];
  readonly #together: Together;
  readonly #name: NameVariant;

  /** @param tables what the plan's files hold, for its digest */
  constructor(plan: Plan, base: PlainObject, axes: readonly Axis[], tables: readonly string[]) {
    this.plan = plan;
    this.digest = sha256(canonicalText([plan, base, tables]));
    this.axisNames = axes.flatMap(({ names }) => names);
    this.#base = base;
    this.#axes = axes;
    this.#together = putTogether(plan.together, axes);
    this.count = this.#together.count;
    this.#name = readTemplate(plan.name, axes);
    this.title = typeof base.name === "string" ? base.name : NAMELESS;
  }

  /** @param number from 1 */
  nameOf(number: number): string {
    return this.#named(number).name;
  }

  /** The variant of a number, from 1. @throws AnnuletError `change-invalid` where a value has no place in the design */
  variant(number: number): Variant {
    const { values, name, shown } = this.#named(number);
    const changes = values.flatMap((value) => value.changes);
    const own: DocumentChange[] = changes.some(({ path }) => path === "name") ? [] : [{ path: "name", value: name }];
    return { number, name, shown, document: changePlain(this.#base, [...changes, ...own]) };
  }

  /** The variant of a number, or what is wrong with it. */
  tryVariant(number: number): Variant | FaultyVariant {
    try {
      return this.variant(number);
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
      const { name, shown } = this.#named(number);
      return { number, name, shown, kind: "fault", problems: error.problems };
    }
  }

  /** All variants, each when its turn comes. */
  *variants(): Generator<Variant, void, void> {
    for (let number = 1; number <= this.count; number++) yield this.variant(number);
  }

  #named(number: number) {
    const places = this.#together.at(number - 1);
    const values = this.#axes.map((axis, i) => axis.at(places[i]));
    const shown: Record<string, string> = Object.assign({}, ...values.map((value) => value.shown));
    return { values, shown, name: this.#name({ base: this.title, number, count: this.count, shown }) };
  }
}

/**
 * Opens a plan: everything that is wrong with it is told before anything is made of it.
 *
 * @param source JSON text, or the plan itself
 * @param files the base design and the tables that the plan names
 * @throws AnnuletError as `readPlan` and `axesOf`; `too-many-variants` with their number; `name-unsafe`, `names-alike`;
 *   `change-invalid` where an axis has no place in the base; the signal's reason
 */
export async function openPlan(source: unknown, files: FileSource, signal?: AbortSignal): Promise<OpenPlan> {
  const plan = readPlan(source);
  const base = await baseOf(plan.base, files);
  const tables: string[] = [];
  const axes = await axesOf(plan.vary, files, tables);
  for (const [i, axis] of axes.entries()) requirePlace(base, axis, `vary[${i}]`);
  const open = new OpenPlan(plan, base, axes, tables);
  for (const _ of distinctNames(open.count, (number) => open.nameOf(number))) {
    await pause();
    signal?.throwIfAborted();
  }
  return open;
}

async function baseOf(base: Plan["base"], files: FileSource): Promise<PlainObject> {
  if (typeof base !== "string") return base as PlainObject;
  const hint = "put the design beside the plan, or into the plan itself";
  return loadFile({ name: base, where: "base", kind: "design", hint }, files, (content) => {
    const { data, problems } = readText(typeof content === "string" ? content : new TextDecoder().decode(content));
    if (problems.length > 0) throw new AnnuletError(problems);
    return requireObject(data);
  });
}

function requireObject(data: Plain): PlainObject {
  if (isPlainObject(data)) return data;
  throw new AnnuletError({
    code: "value-invalid",
    message: "a design is an object",
    path: "base",
    allowed: "an object",
  });
}

/** Tries an axis alone, so that one that fits nowhere is told once and not with each variant. */
function requirePlace(base: PlainObject, axis: Axis, path: string): void {
  try {
    changePlain(base, axis.at(0).changes);
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    throw new AnnuletError(
      error.problems.map((problem) => ({ ...problem, path })),
      { cause: error },
    );
  }
}
