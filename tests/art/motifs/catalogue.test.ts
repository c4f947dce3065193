// Covers: src/art/motifs/*
/** What every motif of the catalogue keeps, over the whole range of its parameters. */

import fc from "fast-check";
import loadManifold, { type ManifoldToplevel } from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import { LEAST_DETAIL } from "../../../src/art/motifs/motif.js";
import type { MotifEntry } from "../../../src/design/motifs/list.js";
import { clipWithin, type GridRegion } from "../../../src/flat/polygons.js";
import { areaOf, differenceArea, SEED } from "../../flat/strips.js";
import { bordersOf, FINE, SMOOTH } from "./borders.js";
import { narrowerThan } from "./detail.js";
import { aspectsOf, type Completed, complete, entries, parametersOf, TILE } from "./motifs.js";

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await loadManifold();
  wasm.setup();
});

/** The part of a region in tile 0. */
function inTile({ strip, region }: Completed): GridRegion {
  const { tile } = strip.grid;
  return clipWithin(region, { left: 0, right: tile, low: -strip.halfSeat, high: strip.halfSeat }, 0);
}

/** Rounding to the grid of nanometres along outlines of some hundred mm, mm². */
const ROUNDING = 1e-3;

describe.each(entries)("%s", (_, motif) => {
  const settings = fc.record({
    parameters: parametersOf(motif),
    aspect: aspectsOf(motif),
    rows: fc.constantFrom(1, 2),
  });

  it("is whole as it is drawn: translations alone complete it to what its frieze group does", () => {
    fc.assert(
      fc.property(settings, ({ parameters, aspect, rows }) => {
        const grouped = complete(motif, parameters, { aspect, rows });
        const plain = complete(motif, parameters, { aspect, rows, symmetry: "p1" });
        expect(differenceArea(grouped.strip, inTile(grouped), inTile(plain))).toBeLessThan(ROUNDING);
        expect([...grouped.codes, ...plain.codes]).toEqual([]);
      }),
      { seed: SEED, numRuns: 12 },
    );
  });

  it("meets itself at the tile's borders, without a step, and turns there only as a mirror turns it", () => {
    fc.assert(
      fc.property(settings, ({ parameters, aspect, rows }) => {
        const borders = bordersOf(complete(motif, parameters, { aspect, rows, tolerance: FINE }));
        fc.pre(borders !== undefined);
        for (const { step, kink } of borders ?? []) {
          expect(step).toBeLessThan(5e-3);
          expect(kink).toBeLessThan(SMOOTH);
        }
      }),
      { seed: SEED, numRuns: 12 },
    );
  });

  it(`has no line and no gap narrower than ${(LEAST_DETAIL * TILE).toFixed(1)} mm in a tile of ${TILE} mm, corners apart`, () => {
    // Opening by circles of radius d takes d² (cot(α/2) − (π − α)/2) off a corner of angle α: 3 d² at 26°. Of a neck or a
    // gap that is too narrow it takes all.
    const least = LEAST_DETAIL * TILE;
    const most = 3 * (least / 2) ** 2;
    fc.assert(
      fc.property(settings, ({ parameters, aspect, rows }) => {
        // The offset's own circles are polygons: a thousandth of the width is theirs.
        const narrow = narrowerThan(wasm, complete(motif, parameters, { aspect, rows }), least * 0.999);
        expect(narrow.lines[0] ?? 0).toBeLessThan(most);
        expect(narrow.gaps[0] ?? 0).toBeLessThan(most);
        const { whole, shrunk, grown } = narrow.outlines;
        expect([shrunk, grown]).toEqual([whole, whole]);
      }),
      { seed: SEED, numRuns: 12 },
    );
  });
});

describe("the catalogue", () => {
  it("has no two motifs of one name, nor of one region", () => {
    expect(entries.length).toBeGreaterThanOrEqual(15);
    expect(new Set(entries.map(([name]) => name)).size).toBe(entries.length);
    const alike = entries.flatMap(([name, motif], i) =>
      entries
        .slice(i + 1)
        .filter(([, other]) => likeness(motif, other) > 0.8)
        .map(([other]) => [name, other]),
    );
    expect(alike).toEqual([]);
  });
});

/** Area that two motifs share over the area that either covers, in tiles for which both are made; 0 where none are. */
function likeness(motif: MotifEntry, other: MotifEntry): number {
  const least = Math.max(motif.aspect.least, other.aspect.least);
  const most = Math.min(motif.aspect.most, other.aspect.most);
  if (least > most) return 0;
  const [a, b] = [motif, other].map((one) => complete(one, {}, { aspect: (least + most) / 2 }));
  const both = areaOf(a.strip, inTile(a)) + areaOf(b.strip, inTile(b));
  const apart = differenceArea(a.strip, inTile(a), inTile(b));
  return (both - apart) / (both + apart);
}
