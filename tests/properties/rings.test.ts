// Across: random designs
import { AnnuletError, build } from "annulet";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { SEED } from "../band/profile/specs.js";
import { bodiesOf } from "../support/stages.js";
import { carvedDesign, design } from "./designs.js";

describe("a random design", () => {
  it("becomes a closed ring or an error that says why, of a volume between its band and all its parts", async () => {
    const outcomes: string[] = [];
    await fc.assert(
      fc.asyncProperty(design, async (document) => {
        try {
          const { report, mesh } = await build(document, { maxBeads: 1500 });
          outcomes.push("ring");
          expect(report.closed).toBe(true);
          expect(signedVolume(mesh)).toBeCloseTo(report.volume, 9);
          if (report.genus !== 1) expect(report.warnings.map(({ code }) => code)).toContain("genus-differs");
          const { parts } = bodiesOf(document);
          const band = signedVolume(parts.band);
          const rest = [...parts.reliefs, ...parts.beads].reduce((sum, body) => sum + signedVolume(body), 0);
          // Single precision: 1e-7 of the coordinates on every face.
          expect(report.volume).toBeGreaterThan(band - 1e-3);
          expect(report.volume).toBeLessThan(band + rest + 1e-3);
        } catch (error) {
          if (!(error instanceof AnnuletError)) throw error;
          outcomes.push(error.code);
          expect(error.code).toMatch(/^[a-z0-9-]+$/);
          // A ring that does not close is the program's fault, not the design's.
          expect(["kernel-failed", "triangulation-failed", "seam-mismatch", "not-closed"]).not.toContain(error.code);
        }
      }),
      { seed: SEED, numRuns: 40, endOnFailure: true },
    );
    expect(outcomes.filter((outcome) => outcome === "ring").length).toBeGreaterThan(outcomes.length / 3);
  });
});

describe("a random design with sections, pits and holes", () => {
  it("becomes a closed ring of as many handles as it says, or an error that says why", async () => {
    const outcomes: string[] = [];
    await fc.assert(
      fc.asyncProperty(carvedDesign, async (document) => {
        try {
          const { report } = await build(document, { maxBeads: 1500 });
          outcomes.push("ring");
          expect(report.closed).toBe(true);
          if (report.genus !== report.genusExpected) {
            expect(report.warnings.map(({ code }) => code)).toContain("genus-differs");
          }
          const { parts } = bodiesOf(document);
          const sum = (bodies: readonly Mesh[]) => bodies.reduce((all, body) => all + signedVolume(body), 0);
          const band = signedVolume(parts.band);
          const under = parts.cuts.flatMap((cut) => cut.under);
          expect(report.volume).toBeGreaterThan(band - sum(parts.cuts.flatMap(({ tools }) => tools)) - 1e-3);
          expect(report.volume).toBeLessThan(band + sum([...under, ...parts.reliefs, ...parts.beads]) + 1e-3);
        } catch (error) {
          if (!(error instanceof AnnuletError)) throw error;
          outcomes.push(error.code);
          expect(["kernel-failed", "triangulation-failed", "seam-mismatch", "not-closed"]).not.toContain(error.code);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
    expect(outcomes.filter((outcome) => outcome === "ring").length).toBeGreaterThan(outcomes.length / 3);
  });
});
