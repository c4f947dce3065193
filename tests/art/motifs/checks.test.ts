// Across: the checks of tests/art/motifs themselves
/** The checks that motifs are held to find what they are for. */
import loadManifold, { type ManifoldToplevel } from "manifold-3d";
import { beforeAll, expect, it } from "vitest";
import { completeArt } from "../../../src/relief/art.js";
import { collector, region, stripOf } from "../../flat/strips.js";
import { bordersOf, FINE, SMOOTH } from "./borders.js";
import { narrowerThan } from "./detail.js";
import type { Completed } from "./motifs.js";

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await loadManifold();
  wasm.setup();
});

function completed(path: string): Completed {
  const strip = stripOf({ tolerance: FINE });
  const { codes, warn } = collector();
  return { strip, region: completeArt(strip, region({ path }), "region", warn).region, codes };
}

it("a step of 0.06 mm and a turn of 45° at the border", () => {
  const step = bordersOf(completed("M 0 -0.1 H 1 V 0.11 L 0 0.1 Z")) ?? [];
  expect(step[1].step).toBeCloseTo(0.06, 4);
  const bent = bordersOf(completed("M 0 -0.1 H 1 V 0.1 L 0.5 0.3 L 0.25 0.1 H 0 Z")) ?? [];
  expect(bent[1].kink).toBeGreaterThan(SMOOTH);
  const mirrored = bordersOf(completed("M 0 -0.1 H 1 V 0.1 L 0.5 0.3 L 0 0.1 Z")) ?? [];
  expect(mirrored[1].kink).toBeLessThan(1e-3);
});

it("a corner's area as the closed form has it, and all of a neck", () => {
  // A right angle loses d² (1 − π/4) at each corner where it is opened by circles of radius d.
  const square = narrowerThan(wasm, completed("M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z"), 0.3);
  expect(square.lines).toHaveLength(4);
  for (const area of square.lines) expect(area).toBeCloseTo(0.15 ** 2 * (1 - Math.PI / 4), 3);
  expect(square.gaps[0] ?? 0).toBeLessThan(1e-6);
  const neck = "M 0.1 -0.2 H 0.4 V -0.02 H 0.6 V -0.2 H 0.9 V 0.2 H 0.6 V 0.02 H 0.4 V 0.2 H 0.1 Z";
  // 1.2 mm long and 0.24 mm wide.
  expect(narrowerThan(wasm, completed(neck), 0.3).lines[0]).toBeGreaterThan(0.2 * 1.2);
});
