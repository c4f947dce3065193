/**
 * Every option of a question about a ring: what it may be. Each function takes some of them (`questions.ts`).
 */
import { z } from "zod";
import { nearest } from "../../base/errors/nearest.js";
import type { FileSource } from "../../base/files.js";
import { isWasmPlace, type WasmPlace, type WasmPlaces } from "../../base/wasm-places.js";
import type { PieceTime } from "../../casting/piece.js";
import { functionField, isBytes, signalField } from "../../design/option-fields.js";
import { PRINT_RANGES, PRINT_STANCES, type PrintSettings } from "../../design/print-settings.js";
import { ruleSetSchema } from "../../design/rule-set-schema.js";
import type { TilePart, TileQuestion } from "../../output/drawing/drawn-tile.js";
import { LONGEST_SIDE, pictureSchema } from "../../output/picture/picture-schema.js";
import { type Detail, detailLevels } from "../../solids/detail.js";
import { KERNEL_NAMES, kernelNamed, missingInKernel } from "../../union/kernels/catalogue.js";
import type { Kernel } from "../../union/kernels/kernel.js";
import type { Asker, OnStage } from "../asker.js";
import { FIT_FIELDS } from "./fit-fields.js";

/** Most beads that may be asked for. Chosen: a hundred times the default, far above any ring. */
const MOST_BEADS = 2_000_000;

const [TILE, ...OTHER_PARTS] = ["tile", "medallion", "ornament"] as const satisfies readonly TilePart[];

const DETAILS = Object.keys(detailLevels) as [Detail, ...Detail[]];

const print: z.ZodType<Partial<PrintSettings>> = z.strictObject({
  stance: z.enum(PRINT_STANCES).optional().describe("how it lies in a printer; default the design's"),
  tilt: degreesIn(PRINT_RANGES.tilt).optional().describe("of a tilted ring, degrees, 0 to 90"),
  layer: degreesIn(PRINT_RANGES.layer).optional().describe("thickness of a layer, mm, 0.001 to 1"),
  support: degreesIn(PRINT_RANGES.support)
    .optional()
    .describe("from which lean on an underside is steep, degrees, 0 to 89"),
});

/** The stage that draws says which lanes, parts and numbers of tiles a design has. */
const TILE_FIELDS = {
  part: z
    .enum([TILE, ...OTHER_PARTS])
    .optional()
    .describe("what is shown; default the tile"),
  lane: z.string().optional().describe("name of the lane; default the first"),
  tiles: z.number().optional().describe("tiles side by side, a whole number; default one cycle"),
} as const;

const tile: z.ZodType<TileQuestion> = z.strictObject(TILE_FIELDS);

const point = z.tuple([z.number(), z.number(), z.number()]);

/** The longest place in a document that is looked up, letters. Chosen: far above any there is. */
const LONGEST_PLACE = 1000;

const PIECES = ["master", "cast", "finished"] as const satisfies readonly PieceTime[];

const place = z.unknown().transform(placeFrom).optional();

const wasm: z.ZodType<WasmPlaces> = z.strictObject({ manifold: place, harfbuzz: place });

export const FIELDS = {
  ...FIT_FIELDS,
  signal: signalField.optional(),
  onProgress: functionField<NonNullable<Asker["onProgress"]>>("is told how far the work has come").optional(),
  onStage: functionField<OnStage>("is told of each stage that works").optional(),
  files: z.unknown().transform(filesFrom).optional(),
  kernel: z.unknown().transform(kernelFrom).optional(),
  wasm: wasm.optional(),
  maxBeads: z
    .int()
    .min(0)
    .max(MOST_BEADS)
    .optional()
    .describe(`most beads that are built, whole, 0 to ${MOST_BEADS}; default 20 000`),
  decimate: z.number().min(0).optional().describe("how far the surface may lie from what was built, mm; default 0"),
  detail: z.enum(DETAILS).optional().describe("draft: coarser, for looking at a design while it changes; default full"),
  piece: z.enum(PIECES).optional().describe("which piece the mesh is; default master"),
  print: print.optional(),
  rules: z.union([z.string(), ruleSetSchema]).optional().describe("a rule set by name, or your own"),
  geometry: z.boolean().optional().describe("whether buffers for a viewer come with it; default false"),
  tile: tile.optional(),
  picture: pictureSchema.optional(),
  tool: z.string().max(200).optional().describe("program and version for the sheet's foot; default annulet"),
  pictureWidth: z
    .int()
    .min(0)
    .max(LONGEST_SIDE)
    .optional()
    .describe(`width of each picture, pixels, 0 to ${LONGEST_SIDE}; 0 leaves them out; default 640`),
  ...TILE_FIELDS,
  point: point.describe("on the ring's surface, mm"),
  normal: point
    .refine((normal) => normal.some((part) => part !== 0), { params: { allowed: "a length above 0" } })
    .describe("of the face there, away from the metal"),
  path: z.string().max(LONGEST_PLACE).describe("a place in the document, as errors name it: pattern.regions[2]"),
  names: z.array(z.string()).optional().describe("of what stands there; not asked for"),
} as const;

function degreesIn([least, most]: readonly [number, number]) {
  return z.number().min(least).max(most);
}

/** A file of WebAssembly. */
function placeFrom(given: unknown, context: z.RefinementCtx): WasmPlace {
  if (isWasmPlace(given)) return given;
  const allowed = "the file's address, as text or URL, or its bytes, as Uint8Array or ArrayBuffer";
  context.addIssue({ code: "custom", message: "names no file", params: { allowed } });
  return z.NEVER;
}

/** A kernel, or the built-in one of a name. */
function kernelFrom(given: unknown, context: z.RefinementCtx): Kernel {
  const named = typeof given === "string" ? kernelNamed(given) : undefined;
  if (named !== undefined) return named;
  const missing = missingInKernel(given);
  if (missing.length === 0) return given as Kernel;
  const names = KERNEL_NAMES.map((name) => JSON.stringify(name)).join(", ");
  const message =
    typeof given === "string"
      ? `there is no kernel ${JSON.stringify(given)}`
      : `is no kernel: ${missing.join(", ")} is missing`;
  const allowed = `${names}, or an object with name, union, subtract and cut`;
  context.addIssue({ code: "custom", message, params: { allowed, hint: nearest(given, KERNEL_NAMES) } });
  return z.NEVER;
}

/** Files by their names, or what finds one. */
function filesFrom(given: unknown, context: z.RefinementCtx): FileSource {
  if (typeof given === "function") return given as FileSource;
  const allowed = "an object of names with text or bytes (Uint8Array), or a function that gives one";
  if (typeof given !== "object" || given === null || Array.isArray(given) || isBytes(given)) {
    context.addIssue({ code: "custom", message: "are no files", params: { allowed } });
    return z.NEVER;
  }
  for (const [name, content] of Object.entries(given)) {
    if (content === undefined || typeof content === "string" || isBytes(content)) continue;
    context.addIssue({ code: "custom", path: [name], message: "is no text and no bytes", params: { allowed } });
  }
  return given as FileSource;
}
