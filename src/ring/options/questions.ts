/**
 * The options of each function that is asked about a ring, read from what its caller passed. What comes of it is a copy,
 * taken before anything waits, so a caller's options may change afterwards.
 */
import { z } from "zod";
import { AnnuletError } from "../../base/errors.js";
import { readOptions } from "../../design/read-options.js";
import { FIELDS } from "./fields.js";

const { signal, onProgress, onStage, warn, files, kernel, wasm, maxBeads, decimate, limits } = FIELDS;
const { detail, piece, print, rules, geometry, tool, pictureWidth, part, lane, tiles } = FIELDS;
const { point, normal, path, names } = FIELDS;

const SETUP = { files, kernel, wasm, maxBeads, decimate, limits };

const ASKER = { signal, onProgress };

const ASKING = { ...ASKER, detail };

const PIECE = { ...ASKING, piece };

/** By the function or the ring's question that takes them. */
const schemas = {
  setup: z.strictObject({ ...SETUP, onStage }),
  asker: z.strictObject(ASKER),
  asking: z.strictObject(ASKING),
  piece: z.strictObject(PIECE),
  print: z.strictObject({ ...PIECE, print }),
  rules: z.strictObject({ ...ASKING, rules }),
  sheet: z.strictObject({ ...ASKING, tool, pictureWidth }),
  build: z.strictObject({ ...SETUP, ...PIECE, print, geometry }),
  check: z.strictObject({ ...SETUP, ...ASKING, rules }),
  benchSheet: z.strictObject({ ...SETUP, ...ASKING, tool, pictureWidth }),
  beads: z.strictObject({ files, wasm, maxBeads, limits, warn }),
  tile: z.strictObject({ files, wasm, maxBeads, limits, part, lane, tiles }),
  surfacePlace: z.strictObject({ point, normal }),
  part: z.strictObject({ path, names }),
} as const;

/** The options of a question, checked. */
export type Checked<Question extends keyof typeof schemas> = z.output<(typeof schemas)[Question]>;

/**
 * @throws AnnuletError with everything that is wrong: `option-unknown` with the nearest name, `option-invalid`
 */
export function readQuestion<Question extends keyof typeof schemas>(
  question: Question,
  given: unknown,
): Checked<Question> {
  return readOptions(schemas[question] as unknown as z.ZodType<Checked<Question>>, given);
}

/** What is shown of a tile. */
export function readTileQuestion(given: unknown): z.output<typeof FIELDS.tile> {
  return readOptions(FIELDS.tile.unwrap(), given);
}

/** How a picture is taken. */
export function readPicture(given: unknown): z.output<typeof FIELDS.picture> {
  return readOptions(FIELDS.picture.unwrap(), given);
}

/** What a ring is opened with, checked; or what was wrong with it, which every question tells. */
export type EngineSetup = Outcome<Checked<"setup">>;

/** What comes of reading, or what is wrong. */
export type Outcome<Value> = { readonly value: Value } | { readonly error: AnnuletError };

/** Keeps what is wrong, to be told later. */
export function outcomeOf<Value>(read: () => Value): Outcome<Value> {
  try {
    return { value: read() };
  } catch (error) {
    if (error instanceof AnnuletError) return { error };
    throw error;
  }
}

/** @throws what was wrong */
export function orThrow<Value>(outcome: Outcome<Value>): Value {
  if ("error" in outcome) throw outcome.error;
  return outcome.value;
}
