// Across: documents and options from strangers
import { AnnuletError, build, checkDesign, fitDesign, flatTile, openRing, planBeads } from "annulet";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SEED } from "../band/profile/specs.js";
import { hostileDocument, hostileOptions } from "./hostile.js";

/** Together five thousand. Most are refused at once; all take some fifteen seconds of CPU. */
const DOCUMENTS = 200;
const OPTIONS = 4800;

/** Narrow, so that what is dear is refused. */
const LIMITS = { seconds: 20, triangles: 20_000, corners: 20_000 };

const MOST_BEADS = 300;

/** Codes of errors that are faults of ours, whatever the document. */
const FAULTS = ["internal", "kernel-failed", "triangulation-failed", "seam-mismatch", "mesh-malformed"];

const outcomeOf = (run: () => unknown): Promise<unknown> =>
  Promise.resolve()
    .then(run)
    .catch((error: unknown) => error);

function expectTold(error: unknown): void {
  if (!(error instanceof AnnuletError)) throw error;
  expect(error.code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  expect(FAULTS).not.toContain(error.code);
  const again = AnnuletError.from(JSON.parse(JSON.stringify(error)));
  expect(again.message).toBe(error.message);
  expect(structuredClone(error.toJSON())).toEqual(again.toJSON());
}

describe("a document from a stranger", () => {
  it("is a ring within the limits, or an AnnuletError", async () => {
    const seen = { rings: 0, refused: 0, codes: new Set<string>() };
    await fc.assert(
      fc.asyncProperty(hostileDocument, async (document) => {
        const outcome = await outcomeOf(() =>
          build(document, { limits: LIMITS, maxBeads: MOST_BEADS, detail: "draft" }),
        );
        if (outcome instanceof Error || !("report" in Object(outcome))) {
          expectTold(outcome);
          seen.refused++;
          seen.codes.add((outcome as AnnuletError).code);
          return;
        }
        const { report } = outcome as Awaited<ReturnType<typeof build>>;
        seen.rings++;
        expect(report.closed).toBe(true);
        expect(report.triangles).toBeLessThanOrEqual(LIMITS.triangles);
      }),
      { seed: SEED, numRuns: DOCUMENTS },
    );
    // It would say nothing if all were refused, or for one reason.
    expect(seen.rings).toBeGreaterThan(DOCUMENTS / 50);
    expect(seen.codes.size).toBeGreaterThan(10);
  });
});

describe("options from a stranger", () => {
  const document = {
    annulet: 1,
    size: { diameter: 15 },
    tolerance: 0.2,
    profile: { width: 4, thickness: 1.6, outside: { form: "flat", edge: 0 } },
    pattern: {},
  };
  const ring = openRing(document);
  const functions: Readonly<Record<string, (options: never) => unknown>> = {
    build: (options) => build(document, options),
    checkDesign: (options) => checkDesign(document, options),
    fitDesign: (options) => fitDesign(document, options),
    flatTile: (options) => flatTile(document, options),
    planBeads: (options) => planBeads(document, options),
    openRing: (options) => openRing(document, options).fit(),
    change: (options) => ring.change(document, options).size(),
    solid: (options) => ring.solid(options),
    tile: (options) => ring.tile(options),
    report: (options) => ring.report(options),
  };

  it("are taken, or refused by an AnnuletError", async () => {
    const names = fc.constantFrom(...Object.keys(functions));
    let taken = 0;
    await fc.assert(
      fc.asyncProperty(names, hostileOptions, async (name, options) => {
        const outcome = await outcomeOf(() => functions[name](options as never));
        if (!(outcome instanceof Error)) taken++;
        // A signal's reason goes on as it is.
        else if (outcome.message !== "stopped") expectTold(outcome);
      }),
      { seed: SEED, numRuns: OPTIONS },
    );
    expect(taken).toBeGreaterThan(0);
    expect(taken).toBeLessThan(OPTIONS / 10);
  });
});
