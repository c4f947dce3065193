/**
 * One question of a ring, by its name.
 */
import { AnnuletError } from "../base/errors.js";
import { toBuffers } from "../output/files/buffers.js";
import { formatForFile } from "../output/files/catalogue.js";
import { encodeMesh } from "../output/files/format.js";
import { fileOptionsOf } from "../ring/made-file.js";
import type { Ring } from "../ring/open-ring.js";
import { ASKER_AT, type BuffersAsking, type Extra, type FileAsking, type Question } from "./messages.js";

const EXTRAS: Readonly<Record<Extra, (ring: Ring, ...given: never[]) => Promise<unknown>>> = {
  buffers: async (ring, { crease, ...asking }: BuffersAsking) => toBuffers(await ring.solid(asking), { crease }),
  file: async (ring, name: string, asking: FileAsking) => {
    const format = formatForFile(name);
    const made = await ring.make(asking);
    return encodeMesh(format, made.mesh, fileOptionsOf(made, format));
  },
};

/** Answers that are made for each question alone: nobody remembers their arrays. */
const FRESH: ReadonlySet<Question | Extra> = new Set(["buffers", "file"]);

/** Whether the arrays of an answer may be handed over without a copy. */
export const isFreshAnswer = (name: Question | Extra): boolean => FRESH.has(name);

/** @throws AnnuletError `question-unknown`; as the question itself */
export async function answerQuestion(ring: Ring, name: Question | Extra, given: readonly unknown[]): Promise<unknown> {
  if (!Object.hasOwn(ASKER_AT, name)) throw questionUnknown(name);
  if (Object.hasOwn(EXTRAS, name)) return EXTRAS[name as Extra](ring, ...(given as never[]));
  const ask = ring[name as Question] as (...given: readonly unknown[]) => Promise<unknown>;
  return name === "design" ? ring.design() : ask.call(ring, ...given);
}

function questionUnknown(name: unknown): AnnuletError {
  return new AnnuletError({
    code: "question-unknown",
    message: `a ring in a worker cannot be asked for ${String(name)}`,
    value: name,
    allowed: Object.keys(ASKER_AT).join(", "),
    hint: "page and worker must be of the same version of annulet",
  });
}
