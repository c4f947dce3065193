// Across: documents changed at random
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { AnnuletError, build } from "annulet";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SEED } from "../band/profile/specs.js";
import { fullDesign } from "../design/documents.js";

/** Documents to change: each uses other parts of the schema. */
const bases: readonly unknown[] = [
  fullDesign,
  ...["saltmarsh-lattice", "sluice-resizable", "groyne-knife"].map((name) =>
    JSON.parse(readFileSync(fileURLToPath(new URL(`../../examples/${name}.json`, import.meta.url)), "utf8")),
  ),
];

type Place = readonly (string | number)[];

/** Places of all values in a document, but the tolerance's, which only sets how long a build takes. */
function placesOf(value: unknown, at: Place = []): Place[] {
  if (at[0] === "tolerance") return [];
  if (typeof value !== "object" || value === null) return [at];
  const own = Object.entries(value).flatMap(([key, inner]) =>
    placesOf(inner, [...at, Array.isArray(value) ? Number(key) : key]),
  );
  return at.length === 0 ? own : [at, ...own];
}

function changeAt(value: unknown, place: Place, change: (old: unknown) => unknown): unknown {
  if (place.length === 0) return change(value);
  const copy: Record<string | number, unknown> | unknown[] = Array.isArray(value)
    ? [...value]
    : { ...(value as Record<string, unknown>) };
  const [key, ...rest] = place;
  const changed = changeAt(Reflect.get(copy, key), rest, change);
  if (changed === REMOVED && !Array.isArray(copy)) Reflect.deleteProperty(copy, key);
  else Reflect.set(copy, key, changed === REMOVED ? null : changed);
  return copy;
}

const REMOVED = Symbol("removed");

const factor = fc.constantFrom(-1, 0, 0.1, 0.5, 0.9, 1.1, 1.5, 2, 10);

/** A change of one value: numbers mostly stay numbers and texts stay texts, so that many changes get past the schema. */
const change = fc.oneof(
  { arbitrary: factor.map((by) => (old: unknown) => (typeof old === "number" ? old * by : old)), weight: 8 },
  {
    arbitrary: fc.tuple(fc.nat(), fc.constantFrom("", "0", ".", "-", "M", "Z", " ", "e9", "A 1")).map(
      ([at, text]) =>
        (old: unknown) =>
          typeof old === "string"
            ? old.slice(0, at % (old.length + 1)) + text + old.slice((at % (old.length + 1)) + 1)
            : old,
    ),
    weight: 3,
  },
  { arbitrary: fc.constant((): unknown => REMOVED), weight: 1 },
  {
    arbitrary: fc.oneof(fc.anything(), fc.constantFrom(null, "auto", 1e300, -0, 1e-12, [])).map((value) => () => value),
    weight: 1,
  },
);

const mutated = fc
  .tuple(fc.constantFrom(...bases), fc.array(fc.tuple(fc.nat(), change), { minLength: 1, maxLength: 3 }))
  .map(([base, changes]) => {
    const coarse = { ...(base as object), tolerance: 0.1 };
    return changes.reduce<unknown>((document, [pick, how]) => {
      const places = placesOf(document);
      return changeAt(document, places[pick % places.length], how);
    }, coarse);
  });

describe("a changed document", () => {
  it("is a closed ring or an AnnuletError with a name, a message and, mostly, a place", async () => {
    const outcomes: string[] = [];
    await fc.assert(
      fc.asyncProperty(mutated, async (document) => {
        const result = await build(document, { maxBeads: 600 }).catch((error: unknown) => error);
        if (!(result instanceof Error)) {
          outcomes.push("ring");
          expect(result).toMatchObject({ report: { closed: true } });
          return;
        }
        expect(result).toBeInstanceOf(AnnuletError);
        const { problems } = result as AnnuletError;
        outcomes.push(problems[0].code);
        for (const { code, message } of problems) {
          expect(code).toMatch(/^[a-z0-9-]+$/);
          expect(message).not.toBe("");
          expect(message).not.toMatch(/NaN|\[object/);
        }
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(new Set(outcomes).size).toBeGreaterThan(4);
    expect(outcomes).toContain("ring");
  });
});
