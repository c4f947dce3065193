// Covers: src/gems/cuts/*, src/gems/polyhedron.ts, src/gems/bulge.ts, src/gems/step-cut.ts, src/gems/rectangle.ts, src/gems/cannot-close.ts
import { Vector3 } from "three";
import { ConvexHull } from "three/addons/math/ConvexHull.js";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { seeded } from "../../../src/base/math/seeded.js";
import { bulgeOf } from "../../../src/gems/bulge.js";
import { requireCloses } from "../../../src/gems/closes.js";
import type { Cut, StoneSize } from "../../../src/gems/cut.js";
import { cuts, findCut } from "../../../src/gems/cuts/catalogue.js";
import { outlinePoints } from "../../../src/gems/outline.js";
import { type Polyhedron, polyhedronMesh } from "../../../src/gems/polyhedron.js";
import { CUT_NAMES, heightsOf, type Proportions } from "../../../src/gems/stone.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { failureOf } from "../../support/failure-of.js";

const WIDTH = 5;
const TOLERANCE = 0.02;

/** Facets above, below and round the girdle of each cut at its usual proportions; of a cabochon those that do not depend on size. */
const COUNTS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  round: { table: 1, star: 8, bezel: 8, "upper half": 16, "pavilion main": 8, "lower half": 16, culet: 1 },
  oval: { table: 1, star: 8, bezel: 8, "upper half": 16, "pavilion main": 8, "lower half": 16, culet: 1 },
  marquise: { table: 1, star: 8, bezel: 8, "upper half": 16, "pavilion main": 8, "lower half": 16, culet: 1 },
  pear: { table: 1, star: 8, bezel: 8, "upper half": 16, "pavilion main": 8, "lower half": 16, culet: 1 },
  princess: { table: 1, star: 4, "crown side": 8, "upper half": 4, girdle: 4, chevron: 20 },
  "square-step": { table: 1, "crown step": 8, girdle: 4, "pavilion step": 8 },
  emerald: { table: 1, "crown step": 24, girdle: 8, "pavilion step": 24 },
  baguette: { table: 1, "crown step": 4, girdle: 4, "pavilion step": 8 },
  "tapered-baguette": { table: 1, "crown step": 4, girdle: 4, "pavilion step": 8 },
  cabochon: { base: 1 },
};

function sizeFor(cut: Cut, ratio = cut.ratio.usual): StoneSize {
  const size = { length: WIDTH * ratio, width: WIDTH };
  return cut.name === "tapered-baguette" ? { ...size, narrow: 0.7 * WIDTH } : size;
}

/** Everything that must hold of every stone, whatever its proportions. */
function expectStone(cut: Cut, size: StoneSize, proportions: Proportions): Polyhedron {
  const body = cut.facets(size, proportions, TOLERANCE);
  const { unevenness, above } = bulgeOf(body);
  expect(unevenness).toBeLessThan(1e-9);
  expect(above).toBeLessThan(0);
  const mesh = polyhedronMesh(body);
  const { closed, genus } = checkSolid(mesh);
  expect([closed, genus]).toEqual([true, 0]);
  const [min, max] = boxOf(body);
  const heights = heightsOf({ width: size.width, proportions });
  expect(max[0] - min[0]).toBeCloseTo(size.length, 9);
  expect(max[1] - min[1]).toBeCloseTo(size.width, 9);
  expect(max[0] + min[0]).toBeCloseTo(0, 9);
  expect(max[2]).toBeCloseTo(heights.crown, 9);
  expect(min[2]).toBeCloseTo(-heights.girdle - heights.pavilion, 9);
  // Another library's hull of the same corners holds as much: nothing is cut away and nothing folds.
  const hull = hullVolume(body);
  expect(Math.abs(signedVolume(mesh) - hull)).toBeLessThan(1e-9 * hull);
  return body;
}

function boxOf({ points }: Polyhedron): [number[], number[]] {
  const along = (axis: 0 | 1 | 2) => points.map((point) => point[axis]);
  const axes = [0, 1, 2] as const;
  return [axes.map((axis) => Math.min(...along(axis))), axes.map((axis) => Math.max(...along(axis)))];
}

function hullVolume({ points }: Polyhedron): number {
  const hull = new ConvexHull().setFromPoints(points.map(([x, y, z]) => new Vector3(x, y, z)));
  let six = 0;
  for (const face of hull.faces) {
    // A face may have more than three corners: a fan from its first.
    const first = face.edge.head().point;
    for (let edge = face.edge.next; edge.next !== face.edge; edge = edge.next) {
      six += first.dot(new Vector3().crossVectors(edge.head().point, edge.next.head().point));
    }
  }
  return six / 6;
}

describe.each(cuts)("$name", (cut) => {
  it("is a closed convex body of plane facets, as long, wide and deep as asked", () => {
    const body = expectStone(cut, sizeFor(cut), cut.proportions);
    const counted: Record<string, number> = {};
    for (const { name } of body.facets) counted[name] = (counted[name] ?? 0) + 1;
    expect(counted).toMatchObject(COUNTS[cut.name]);
    const named = Object.keys(COUNTS[cut.name]);
    const others = Object.keys(counted).filter((name) => !named.includes(name));
    expect(others.every((name) => name === "girdle" || name === "dome")).toBe(true);
  });

  it.each([cut.ratio.least, cut.ratio.most])("is one at the border of its length : width, %d", (ratio) => {
    expectStone(cut, sizeFor(cut, ratio), cut.proportions);
  });

  it("is one with proportions off by a few percent, and by a hair", () => {
    for (const [draw, by] of [0.05, 0.05, 1e-7].entries()) {
      const shares = Object.entries(cut.proportions).map(([name, share], i) => [
        name,
        share * (1 + by * (2 * seeded(7, draw, i) - 1)),
      ]);
      expectStone(cut, sizeFor(cut), Object.fromEntries(shares));
    }
  });

  it("has the girdle of its outline, within the tolerance", () => {
    const size = sizeFor(cut);
    const fine = outlinePoints(cut.outline(size), 1e-5);
    const { points, facets } = cut.facets(size, cut.proportions, TOLERANCE);
    const rim = new Set(facets.filter(({ name }) => name === "girdle").flatMap(({ ring }) => ring));
    const corners = [...rim].map((i) => points[i]);
    // Every corner lies on the outline, and the outline nowhere farther off than the tolerance.
    for (const [x, y] of corners) expect(distanceToRing(fine, x, y)).toBeLessThan(2e-5);
    const around = corners.filter(([, , z]) => z >= Math.max(...corners.map(([, , height]) => height)) - 0.1);
    const ring = around
      .map(([x, y]) => [x, y] as const)
      .sort((a, b) => Math.atan2(a[1], a[0]) - Math.atan2(b[1], b[0]));
    for (const [x, y] of fine) expect(distanceToRing(ring, x, y)).toBeLessThan(TOLERANCE + 1e-9);
  });
});

function distanceToRing(ring: readonly (readonly [number, number])[], x: number, y: number): number {
  return ring.reduce((least, [ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length];
    const [ux, uy] = [bx - ax, by - ay];
    const t = Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy || 1)));
    return Math.min(least, Math.hypot(x - ax - t * ux, y - ay - t * uy));
  }, Number.POSITIVE_INFINITY);
}

/** Shares far wider than any stone's. */
const WIDE: Readonly<Record<keyof Proportions, readonly [number, number]>> = {
  table: [0.02, 0.94],
  crownHeight: [0.005, 0.6],
  girdle: [0.002, 0.2],
  pavilionDepth: [0.01, 1],
  culet: [0, 0.3],
  star: [0.05, 0.94],
  lowerHalf: [0.05, 0.94],
};

describe("any proportions", () => {
  it("close as they should, or are refused", () => {
    const ends = { closed: 0, refused: 0 };
    for (const [draw, cut] of [...cuts, ...cuts, ...cuts, ...cuts].entries()) {
      const shares = Object.entries(cut.proportions).map(([name, usual], i) => {
        const [least, most] = WIDE[name as keyof Proportions];
        const drawn = least + (most - least) * seeded(11, draw, i);
        return [name, usual === 0 || seeded(12, draw, i) < 0.4 ? usual : drawn];
      });
      const size = sizeFor(cut, cut.ratio.least + (cut.ratio.most - cut.ratio.least) * seeded(13, draw, 0));
      const proportions: Proportions = Object.fromEntries(shares);
      try {
        requireCloses(cut, size, proportions, "proportions");
      } catch (error) {
        if (!(error instanceof AnnuletError)) throw error;
        expect(error.code).toBe("proportions-cannot-close");
        ends.refused++;
        continue;
      }
      expectStone(cut, size, proportions);
      ends.closed++;
    }
    // Both happen, so that neither half of the test stands empty.
    expect(Math.min(ends.closed, ends.refused)).toBeGreaterThan(3);
  });
});

describe("the catalogue of cuts", () => {
  it("has every name, in the order of tables", () => {
    expect(cuts.map(({ name }) => name)).toEqual([...CUT_NAMES]);
  });

  it("names the nearest where a cut is unknown", () => {
    const { code, problems } = failureOf(() => findCut("markise"));
    expect(code).toBe("cut-unknown");
    expect(problems[0].hint).toBe('did you mean "marquise"?');
  });
});

describe("an emerald cut with a culet", () => {
  it("ends in an eight-sided flat", () => {
    const cut = findCut("emerald");
    const body = expectStone(cut, sizeFor(cut), { ...cut.proportions, culet: 0.1 });
    expect(body.facets.filter(({ name }) => name === "culet").map(({ ring }) => ring.length)).toEqual([8]);
  });
});

describe("a princess cut with a culet", () => {
  it("ends in an eight-sided flat, whatever its length", () => {
    const cut = findCut("princess");
    for (const ratio of [1, 1.3]) {
      const body = expectStone(cut, sizeFor(cut, ratio), { ...cut.proportions, culet: 0.05 });
      expect(body.facets.filter(({ name }) => name === "culet").map(({ ring }) => ring.length)).toEqual([8]);
    }
  });
});

describe("a tapered baguette", () => {
  it.each([0.3, 0.6, 1])("closes where its narrow end is %d of the wide one", (share) => {
    const cut = findCut("tapered-baguette");
    expectStone(cut, { length: 1.2 * WIDTH, width: WIDTH, narrow: share * WIDTH }, cut.proportions);
  });
});
