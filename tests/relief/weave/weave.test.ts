// Covers: src/design/pattern/weave.ts, src/relief/weave/arcs.ts, src/relief/weave/rise-along.ts, src/solids/apply-rise.ts

import { readFileSync } from "node:fs";
import { build } from "annulet";
import { describe, expect, it } from "vitest";
import { finish } from "../../../src/base/pausing.js";
import { regionSchema } from "../../../src/design/pattern/region.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { completeArt } from "../../../src/relief/art.js";
import type { FlatBody } from "../../../src/relief/flat-body.js";
import { weaveRegions } from "../../../src/relief/weave/weave.js";
import { applyRise } from "../../../src/solids/apply-rise.js";
import { flatMesh } from "../../../src/solids/flat-mesh.js";
import { collector, failureOf, region, type StripInput, stripOf } from "../../flat/strips.js";

const SINK = 0.1;

/** The bodies of each region, and where they stand in the document. */
function bodies(specs: readonly object[], input: StripInput = {}): FlatBody[][] {
  const strip = stripOf(input);
  const { warn } = collector();
  const drawn = specs.map((spec, i) => {
    const parsed = region({ unit: "mm", height: 0.5, ...spec });
    const path = `pattern.regions[${i}]`;
    return { spec: parsed, path, name: `strand ${i + 1}`, art: completeArt(strip, parsed, path, warn) };
  });
  const woven = finish(weaveRegions(strip, drawn, undefined));
  return drawn.map((one) => [...(woven.get(one) ?? [])]);
}

/** A body flat, lifted. */
function flat(shape: FlatBody) {
  const mesh = flatMesh(shape, SINK);
  return shape.rise === undefined ? mesh : applyRise(mesh, shape.rise);
}

const weave = { lift: 0.3 };
const bar = (path: string, more: object = {}) => ({ path, ribbon: { width: 0.8, weave: { ...weave, ...more } } });

describe("woven bodies", () => {
  it("of two bars: the upper one whole and lifted, the lower one in two pieces that end beneath it", () => {
    const [lower, upper] = bodies([bar("M 3 -2 V 2", { over: "later" }), bar("M 0.5 0 H 5.5", { over: "later" })]);
    expect([lower.length, upper.length]).toEqual([2, 1]);
    // Square prism, and under the bridge: level over half of 0.4 to either side, half a cosine over 0.8 to both.
    const plain = 0.8 * 5 * (0.5 + SINK);
    const lifted = 0.8 * 0.3 * (2 * 0.2 + 0.8);
    expect(signedVolume(flat(upper[0])) / (plain + lifted)).toBeCloseTo(1, 3);
    // Two fifths of the upper bar's width are left out of the lower one.
    const rest = lower.reduce((sum, shape) => sum + signedVolume(flat(shape)), 0);
    expect(rest / (0.8 * (4 - 0.32) * (0.5 + SINK))).toBeCloseTo(1, 4);
    expect(upper[0].height).toBeCloseTo(0.8, 12);
    expect(lower[0].height).toBe(0.5);
    expect(upper[0].period).toBe(6);
  });

  it("follow the lift to the tolerance, upright at their walls", () => {
    const [, [upper]] = bodies([bar("M 3 -2 V 2", { over: "later" }), bar("M 0.5 -0.5 L 5.5 0.7", { over: "later" })]);
    const { positions, triangles } = flat(upper);
    const rise = upper.rise ?? { at: () => Number.NaN };
    let worst = 0;
    for (let i = 0; i < triangles.length; i += 3) {
      const corners = [0, 1, 2].map((k) => positions.slice(3 * triangles[i + k], 3 * triangles[i + k] + 3));
      if (corners.some(([, , h]) => h < 0.4999)) continue;
      const [u, v, h] = [0, 1, 2].map((k) => (corners[0][k] + corners[1][k] + corners[2][k]) / 3);
      worst = Math.max(worst, Math.abs(h - 0.5 - rise.at(u, v)));
    }
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(0.01);
  });

  it("of all sections end beneath what passes over without falling there", () => {
    for (const section of [
      { form: "flat", height: 0.5, round: 0.2 },
      { form: "domed", height: 0.5, wall: 0.2, radius: 0.03 },
      { form: "ridge", height: 0.5, wall: 0.2 },
      { form: "hollow", height: 0.5, dip: 0.1, rim: 0.1 },
      { form: "flat", height: 0.5, draft: 8 },
    ]) {
      const [lower] = bodies([
        { ...bar("M 3 -2 V 2", { over: "later" }), height: undefined, section },
        { ...bar("M 0.5 0 H 5.5", { over: "later" }), height: undefined, section },
      ]);
      for (const shape of lower) {
        const ends = shape.top.flat(2).filter(([, v]) => Math.abs(v) < 0.3);
        expect(Math.max(...ends.map(([, , h]) => h))).toBeCloseTo(shape.height, 2);
        const { positions, triangles } = flat(shape);
        expect(signedVolume({ positions, triangles })).toBeGreaterThan(0);
      }
    }
  });

  it("that go round and pass under nothing are one", () => {
    const [lower, upper] = bodies([
      bar("M 1 -2 V 2", { over: "later" }),
      bar("M 0 0 C 2 0.5 4 -0.5 6 0", { over: "later" }),
    ]);
    expect([lower.length, upper.length]).toEqual([2, 1]);
    expect(upper[0].seam).toBeDefined();
    expect(upper[0].rise).toBeDefined();
  });
});

describe("a weave that cannot be", () => {
  const later = { over: "later" };
  it.each<[string, object[], string, string]>([
    ["woven in two ways", [bar("M 3 -2 V 2"), bar("M 1 0 H 5", later)], "weave-mixed", "[1].ribbon.weave.over"],
    [
      "lower than what it crosses",
      [{ ...bar("M 3 -2 V 2", later), height: 1 }, bar("M 1 0 H 5", later)],
      "weave-too-low",
      "[1].ribbon.weave.lift",
    ],
    [
      "nearly along another",
      [bar("M 1 -0.2 H 5", later), bar("M 1 -0.4 L 5 0", later)],
      "weave-too-flat",
      "[0].ribbon.weave",
    ],
    [
      "too near to the next crossing",
      [bar("M 1 -2 V 2 M 1.6 -2 V 2"), bar("M 0.2 0 H 5.8")],
      "weave-too-tight",
      "[1].ribbon.weave.lift",
    ],
    ["a curl", [bar("M 0.5 0 H 4 V 2 H 2.5 V -2")], "weave-curl", "[0].ribbon.weave"],
    ["rounder than it is wide", [{ ...bar("M 1 0 H 5"), round: 0.45 }], "round-too-large", "[0].round"],
  ])("is refused: %s", (_, specs, code, path) => {
    const error = failureOf(() => bodies(specs));
    expect([error.code, error.path]).toEqual([code, `pattern.regions${path}`]);
    expect(error.hint).toBeTruthy();
  });

  it.each([
    [{ ribbon: { width: 1, side: "inside", weave } }, "ribbon.side"],
    [{ ribbon: { width: 1, to: 0.5, weave } }, "ribbon.weave"],
    [{ ribbon: { width: 1, weave: { lift: 0 } } }, "ribbon.weave.lift"],
    [{ ribbon: { width: 1, weave }, beads: { diameter: 0.3 } }, "beads"],
    [{ ribbon: { width: 1, weave }, mode: "sunk", height: undefined, depth: 0.2 }, "mode"],
  ])("is refused in the document: %o", (spec, path) => {
    const { error } = regionSchema.safeParse({ path: "M 0 0 H 1", height: 0.5, ...spec });
    expect(error?.issues.map((issue) => issue.path.join("."))).toContain(path);
  });
});

describe("the order by turns", () => {
  const WIDE = 6;

  /** The height of the highest of some bodies at a place, as their meshes have it; −∞ where there is none. */
  function heightAt(shapes: readonly FlatBody[], u: number, v: number): number {
    let most = Number.NEGATIVE_INFINITY;
    for (const { positions, triangles } of shapes.map(flat)) {
      const [us, vs, hs] = [0, 1, 2].map((k) => (vertex: number) => positions[3 * vertex + k]);
      for (let i = 0; i < triangles.length; i += 3) {
        const [a, b, c] = triangles.subarray(i, i + 3);
        const twice = (us(b) - us(a)) * (vs(c) - vs(a)) - (us(c) - us(a)) * (vs(b) - vs(a));
        // Of those that face up.
        if (twice <= 1e-9) continue;
        for (const round of [-2, -1, 0, 1, 2]) {
          const [x, y] = [u + round * WIDE - us(a), v - vs(a)];
          const s = (x * (vs(c) - vs(a)) - (us(c) - us(a)) * y) / twice;
          const t = ((us(b) - us(a)) * y - x * (vs(b) - vs(a))) / twice;
          if (s >= 0 && t >= 0 && s + t <= 1) most = Math.max(most, hs(a) + s * (hs(b) - hs(a)) + t * (hs(c) - hs(a)));
        }
      }
    }
    return most;
  }

  const along = bar("M 0 0 H 6");
  const across = bar("M 4.5 -2 V 2 M 1.5 -2 V 2");

  it("begins at the crossing nearest to the left border with the later region above", () => {
    for (const list of [
      [along, across],
      [across, along],
    ]) {
      const [earlier, later] = bodies(list, { tileWidth: WIDE });
      expect(heightAt(later, 1.51, 0.01)).toBeCloseTo(0.8, 3);
      expect(heightAt(earlier, 1.51, 0.01)).toBeLessThanOrEqual(0.5);
      expect(heightAt(earlier, 4.51, 0.01)).toBeCloseTo(0.8, 3);
      expect(heightAt(later, 4.51, 0.01)).toBeLessThanOrEqual(0.5);
    }
  });

  it("of one region has the line above that stands at the smaller angle from the band's direction", () => {
    const [own] = bodies([bar("M 0 -1 L 6 1 M 0 1 L 6 -1")], { tileWidth: WIDE });
    // Beside the crossing, where neither line lies over the other, the bridge still comes down.
    const [rising, falling] = [heightAt(own, 3.85, 0.283), heightAt(own, 3.85, -0.283)];
    expect(falling).toBeCloseTo(0.5, 3);
    expect(rising).toBeGreaterThan(0.53);
  });
});

describe("woven rings", () => {
  const read = (name: string) =>
    JSON.parse(readFileSync(new URL(`../../../examples/${name}`, import.meta.url), "utf8")) as {
      tolerance?: number;
      pattern: { cover?: number; regions: { ribbon: { width: number; weave?: object } }[] };
    };

  it.each(["withy-plait.json", "eddy-knot.json"])(
    "%s has no handle but the finger's, also where it stops",
    async (name) => {
      const document = { ...read(name), tolerance: 0.03 };
      const ring = await build(document);
      expect(ring.report).toMatchObject({ closed: true, components: 1, genus: 1 });
      const part = await build({ ...document, pattern: { ...document.pattern, cover: 200 } });
      expect(part.report).toMatchObject({ closed: true, components: 1, genus: 1 });
      // Bridges add metal to the same lines unwoven; each at most its lift over both widths and its runs.
      const unwoven = structuredClone(document);
      delete unwoven.pattern.regions[0].ribbon.weave;
      const plain = await build({ ...unwoven, pattern: { ...unwoven.pattern, cover: 200 } });
      expect(part.report.volume).toBeGreaterThan(plain.report.volume);
      expect(part.report.volume).toBeLessThan(1.05 * plain.report.volume);
    },
  );
});
