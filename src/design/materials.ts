/**
 * The parts of the document that say what the ring is weighed in and what that costs.
 */
import { z } from "zod";
import { AnnuletError, type Problem } from "../base/errors.js";
import type { Alloy } from "../measure/alloys/alloy.js";
import { alloys } from "../measure/alloys/catalogue.js";
import { type NamedMaterial, nearestMaterial } from "../measure/alloys/nearest-material.js";
import { ownAlloy, PURE_METALS } from "../measure/alloys/own.js";
import { WEIGHT_DEFAULTS } from "../measure/weights/weight-table.js";

/** Most materials of its own a document may have; a chosen limit. */
const MAX_OWN = 50;

/** Densities that a material may have, g/cm³: from light resins to above the heaviest metal, 22.65. */
const DENSITY = { min: 0.5, max: 23 } as const;

const density = z.number().min(DENSITY.min).max(DENSITY.max);

const massShare = z.number().min(0).max(1).optional().describe("share of the mass, 0 to 1; default 0");

const ownAlloySchema = z.strictObject({
  symbol: z
    .string()
    .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, "must be 1 to 40 small letters, digits and hyphens")
    .describe("1 to 40 small letters, digits, hyphens; not built in"),
  name: z.string().min(1).max(100).optional().describe("in tables; default its symbol"),
  density: density.optional().describe(`g/cm³, ${DENSITY.min} to ${DENSITY.max}; give this or a mix`),
  mix: z
    .strictObject(Object.fromEntries(PURE_METALS.map((metal) => [metal, massShare])))
    .optional()
    .describe(`shares that sum to 1; the mixing rule gives the density`),
  range: z.tuple([density, density]).optional().describe("densities of its kind, g/cm³; default none"),
  fineness: z.number().min(0).max(1000).optional().describe("parts of precious metal in 1000; default not said"),
  kind: z
    .enum(["gold", "silver", "platinum", "palladium", "copper alloy", "pattern", "other"])
    .optional()
    .describe("metal it is hallmarked as; pattern: burns out; default other"),
  source: z.string().min(1).max(300).optional().describe("where its figures come from; default the design"),
});

export const ownAlloysSchema = z
  .array(ownAlloySchema)
  .max(MAX_OWN)
  .describe(`materials of your own, at most ${MAX_OWN}, for material, casting.pattern and prices; default none`);

export const costingSchema = z.strictObject({
  sprue: z
    .number()
    .min(0)
    .max(500)
    .default(WEIGHT_DEFAULTS.sprue)
    .describe("% of the casting's weight, 0 to 500; default 10"),
  button: z.number().min(0).max(10_000).default(WEIGHT_DEFAULTS.button).describe("metal left in the cup, g; default 0"),
  prices: z
    .record(z.string(), z.number().min(0).max(1e6))
    .default({})
    .describe("price of a gram by material; default none"),
  currency: z.string().min(1).max(20).optional().describe("what prices are in; default not said"),
});

/** Every material that a document may name: the built-in ones, then its own. */
export function materialsOf({ alloys: own }: { readonly alloys: z.output<typeof ownAlloysSchema> }): readonly Alloy[] {
  return [...alloys, ...own.map((alloy, i) => ownAlloy(alloy, `alloys[${i}]`))];
}

/** Complains of materials that are not there, and of the document's own that are none; whatever else is wrong. */
export const materialsRule = z.check(checkMaterials);
materialsRule._zod.def.when = () => true;

function checkMaterials({ value, issues }: z.core.ParsePayload): void {
  const own = listOf(fieldOf(value, "alloys"));
  const complain: Complain = (path, message, params) => {
    issues.push({ code: "custom", input: value, path, message, params });
  };
  own.forEach((alloy, i) => {
    checkOwn(alloy, i, complain);
  });
  const materials = [...alloys, ...own.flatMap(namedOwn)];
  const known = materials.map(({ symbol }) => symbol);
  const named: readonly (readonly string[])[] = [
    ["material"],
    ["casting", "pattern"],
    ...Object.keys(objectOf(fieldOf(fieldOf(value, "costing"), "prices"))).map((key) => ["costing", "prices", key]),
  ];
  for (const path of named) {
    const symbol = path.length === 3 ? path[2] : path.reduce(fieldOf, value);
    if (typeof symbol !== "string" || known.includes(symbol)) continue;
    const message = `there is no material ${JSON.stringify(symbol)}`;
    const meant = nearestMaterial(symbol, materials);
    const hint = meant === undefined ? undefined : `did you mean ${JSON.stringify(meant)}?`;
    complain([...path], message, { allowed: known.join(", "), hint });
  }
}

type Complain = (
  path: (string | number)[],
  message: string,
  params: Partial<Pick<Problem, "allowed" | "hint">>,
) => void;

function checkOwn(alloy: unknown, i: number, complain: Complain): void {
  const parsed = ownAlloySchema.safeParse(alloy);
  if (!parsed.success) return;
  try {
    ownAlloy(parsed.data, "alloy");
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    const [{ message, path = "alloy", allowed, hint }] = error.problems;
    complain(["alloys", i, ...path.split(".").slice(1)], message, { allowed, hint });
  }
}

/** What can be named of one of the document's own, whatever else is wrong with it. */
function namedOwn(alloy: unknown): NamedMaterial[] {
  const { symbol, name = symbol, fineness } = objectOf(alloy);
  if (typeof symbol !== "string" || typeof name !== "string") return [];
  return [{ symbol, name, kind: "other", fineness: typeof fineness === "number" ? fineness : undefined }];
}

function fieldOf(value: unknown, key: string): unknown {
  return objectOf(value)[key];
}

function objectOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
