// Across: random rings that come again
/**
 * Rings made of one unit and its images, held against the same rings made in one union.
 *
 * How many designs: environment ANNULET_FUZZ, default 40; from which seed: ANNULET_SEED.
 */
import { AnnuletError } from "annulet";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gateRing } from "../../src/judge/ring.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { SEED } from "../band/profile/specs.js";
import { farthest } from "../support/farthest.js";
import { COARSE } from "./designs.js";
import { roadDesign } from "./road-designs.js";
import { failureOn, partsOf, unite, uniteWhole } from "./roads.js";

const DESIGNS = Number(process.env.ANNULET_FUZZ ?? 40);
const START = Number(process.env.ANNULET_SEED ?? SEED);

/** Every so manyth ring that is made of units is made whole too. */
const COMPARED = 4;

/**
 * Volumes may differ by this share, and surfaces at their triangles' corners by so many mm: what tidying may change of
 * either ring, which takes out edges up to 2 µm long.
 */
const SAME_VOLUME = 1e-5;
const SAME_SURFACE = 2e-3;

/** Units from which the whole ring is made instead, in a hundred; a few more where there are few rings. */
const MOST_BACK = 0.01;
const A_FEW = 2;

/** What no design may come to: the program's fault, not the design's. */
const FAULTS = ["kernel-failed", "triangulation-failed", "seam-mismatch", "border-tangled", "not-closed"];

/** Rings of a road, those of them whose first sector gave none, and those made whole after all. */
const counted = () => ({ rings: 0, first: 0, back: 0 });

describe("a random ring that comes again", () => {
  it("is closed, made of one unit, and the ring that one union of everything makes", { timeout: 1e7 }, async () => {
    const roads = { mirror: counted(), turn: counted() };
    const taken: Record<string, number> = {};
    const refused: Record<string, number> = {};
    const [wrong, slow]: string[][] = [[], []];
    const most = { compared: 0, surface: 0, volume: 0 };
    for (const [i, document] of fc.sample(roadDesign, { seed: START, numRuns: DESIGNS }).entries()) {
      const design = `design ${i} of seed ${START}: ${JSON.stringify(document)}`;
      try {
        const parts = await partsOf(document);
        const ring = await unite(parts);
        gateRing(ring.mesh, ring.check, { genus: 1, balls: [], tolerance: COARSE, warn: () => {} });
        taken[ring.road] = (taken[ring.road] ?? 0) + 1;
        if (parts.symmetry === undefined) continue;
        const road = roads[parts.symmetry.mirrored ? "mirror" : "turn"];
        road.rings++;
        if (/did not close|failed/.test(ring.roadReason)) {
          road.first++;
          if (ring.road === "whole") road.back++;
          const reason = await failureOn(parts, parts.symmetry.sectors[0]);
          slow.push(`${ring.road} (${ring.roadReason}): ${reason}; ${design}`);
        }
        if (ring.road === "whole" || road.rings % COMPARED !== 0) continue;
        const whole = await uniteWhole(parts);
        const volume = Math.abs(signedVolume(ring.mesh) / signedVolume(whole.mesh) - 1);
        const surface = Math.max(farthest(ring.mesh, whole.mesh, 1), farthest(whole.mesh, ring.mesh, 1));
        most.compared++;
        most.volume = Math.max(most.volume, volume);
        most.surface = Math.max(most.surface, surface);
        if (volume < SAME_VOLUME && surface < SAME_SURFACE && ring.check.genus === whole.check.genus) continue;
        const genus = `genus ${ring.check.genus} and ${whole.check.genus}`;
        wrong.push(`${ring.road} and whole: ${genus}, volumes by ${volume}, surfaces by ${surface} mm; ${design}`);
      } catch (error) {
        if (!(error instanceof AnnuletError)) throw error;
        refused[error.code] = (refused[error.code] ?? 0) + 1;
        if (FAULTS.includes(error.code)) wrong.push(`${error.code}: ${error.message}; ${design}`);
      }
    }
    const share = ({ rings, first, back }: ReturnType<typeof counted>) =>
      `${back} of ${rings} made whole, ${first} not on their first sector`;
    console.info(
      [
        ...slow,
        `mirror: ${share(roads.mirror)}; turn: ${share(roads.turn)}`,
        `roads ${JSON.stringify(taken)}, refused ${JSON.stringify(refused)}, differences ${JSON.stringify(most)}`,
      ].join("\n"),
    );
    expect(wrong).toEqual([]);
    for (const { rings, back } of Object.values(roads)) {
      expect(rings).toBeGreaterThan(DESIGNS / 10);
      expect(back).toBeLessThan(A_FEW + MOST_BACK * rings);
    }
    expect(most.compared).toBeGreaterThan(0);
  });
});
