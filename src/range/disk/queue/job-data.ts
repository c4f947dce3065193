/**
 * What travels through the queue: tasks as workers get them, and their answers. Both are read as anything from strangers is.
 */
import { z } from "zod";
import type { Problem } from "../../../base/errors.js";
import { VERSION } from "../../../base/version.js";
import type { PlainObject } from "../../../design/plain.js";
import { LARGEST_GROUP } from "../../expand/part.js";
import { whyUnsafe } from "../../names/safe-name.js";
import { planSchema } from "../../plan/plan-schema.js";
import type { MakeAnswer, MakeTask, TaskVariant } from "../make-variant.js";
import type { CarriedFiles } from "./carried-files.js";
import type { Sealed } from "./seal.js";

/** A job as it stands on the queue. */
export interface JobData extends Sealed {
  /** What the store calls the range. */
  readonly range: string;
  /** Which of that name: see `RunKey`. */
  readonly place: string;
}

/** A task without its place, which each worker knows by itself. */
export type QueuedTask = Omit<MakeTask, "place" | "run" | "designFiles"> & { readonly carried: CarriedFiles };

/** What a worker answers: of each variant, or what became of the process that made them. */
export type QueuedAnswer =
  | { readonly answers: readonly MakeAnswer[] }
  | { readonly problems: readonly [Problem, ...Problem[]] };

/** Most letters of a task. Chosen: art that stands in a design, in as many materials as are made together. */
const LONGEST = 16_000_000;

const safeName = z.string().refine((name) => whyUnsafe(name) === undefined);
const digest = z.string().regex(/^[0-9a-f]{64}$/);
const plain = z.record(z.string(), z.unknown());
const problem = z.looseObject({ code: z.string(), message: z.string() });

const jobSchema = z.strictObject({ range: safeName, place: digest, text: z.string().max(LONGEST), seal: digest });

const taskSchema = z.strictObject({
  version: z.literal(VERSION),
  making: planSchema.pick({ outputs: true, piece: true, pictureWidth: true }),
  limits: z.strictObject({
    seconds: z.number().positive(),
    triangles: z.number().positive().optional(),
    corners: z.number().positive().optional(),
  }),
  shared: plain,
  variants: z
    .array(
      z.strictObject({
        number: z.int().min(1),
        name: safeName,
        source: digest,
        files: z.record(z.string(), z.union([digest, z.literal("missing")])),
        own: plain,
      }),
    )
    .min(1)
    .max(LARGEST_GROUP),
  carried: z.strictObject({
    digests: z.record(z.string(), digest),
    faults: z.record(z.string(), z.array(problem).min(1)),
  }),
});

const answerSchema = z.union([
  z.strictObject({
    answers: z.array(
      z.union([
        z.strictObject({ number: z.int(), kind: z.enum(["made", "kept"]), record: plain }),
        z.strictObject({ number: z.int(), kind: z.literal("failed"), problems: z.array(problem).min(1) }),
      ]),
    ),
  }),
  z.strictObject({ problems: z.array(problem).min(1) }),
]);

/** A job's data; undefined where it is none. */
export function readJob(data: unknown): JobData | undefined {
  return jobSchema.safeParse(data).data;
}

/** What the variants' designs have in common is written once. */
export function taskText({ making, limits, variants, carried }: QueuedTask): string {
  const [{ document: first }] = variants;
  const texts = variants.map(({ document }) => valuesAsText(document));
  const isShared = (key: string) => texts.every((text) => text.get(key) === texts[0].get(key));
  const shared = pick(first, isShared);
  return JSON.stringify({
    version: VERSION,
    making,
    limits,
    shared,
    variants: variants.map(({ document, ...variant }) => ({
      ...variant,
      own: pick(document, (key) => !isShared(key)),
    })),
    carried,
  });
}

/** The task of a text that was sealed; undefined where it is none, of another version for instance. */
export function readTask(text: string): QueuedTask | undefined {
  const { data } = taskSchema.safeParse(parsed(text));
  if (data === undefined) return undefined;
  const { making, limits, shared, variants, carried } = data;
  return {
    making,
    limits,
    carried: carried as CarriedFiles,
    variants: variants.map(({ own, ...variant }): TaskVariant => {
      return { ...variant, document: { ...shared, ...own } as PlainObject };
    }),
  };
}

export function answerText(answer: QueuedAnswer): string {
  return JSON.stringify(answer);
}

/** The answer of a text that was sealed, to variants of these numbers; undefined where it is none. */
export function readAnswer(text: string, numbers: readonly number[]): QueuedAnswer | undefined {
  const { data } = answerSchema.safeParse(parsed(text));
  if (data === undefined) return undefined;
  if ("answers" in data && data.answers.map(({ number }) => number).join() !== numbers.join()) return undefined;
  // What is in a record its worker has written, whose seal was looked at.
  return data as unknown as QueuedAnswer;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function valuesAsText(document: PlainObject): ReadonlyMap<string, string> {
  return new Map(Object.entries(document).map(([key, value]) => [key, JSON.stringify(value)]));
}

function pick(document: PlainObject, isWanted: (key: string) => boolean): PlainObject {
  return Object.fromEntries(Object.entries(document).filter(([key]) => isWanted(key)));
}
