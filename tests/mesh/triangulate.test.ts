import { deviation } from "earcut";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PlanePoint, triangulatePolygon } from "../../src/mesh/triangulate.js";
import { failureOf, SEED } from "../band/profile/specs.js";

type Ring = readonly PlanePoint[];

/** Shoelace formula; positive for counter-clockwise. */
function shoelace(ring: Ring): number {
  return ring.reduce((sum, [x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

/** Signed areas of the triangles. */
function areas(points: Ring, triangles: readonly number[]): number[] {
  return Array.from({ length: triangles.length / 3 }, (_, t) =>
    shoelace([points[triangles[3 * t]], points[triangles[3 * t + 1]], points[triangles[3 * t + 2]]]),
  );
}

/** Edges used by no partner, as "a b"; each directed edge may occur once only. */
function looseEdges(triangles: readonly number[]): string[] {
  const edges = new Set<string>();
  triangles.forEach((a, i) => {
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1];
    const edge = `${a} ${b}`;
    if (edges.has(edge)) throw new Error(`edge ${edge} occurs twice`);
    edges.add(edge);
  });
  return [...edges].filter((edge) => !edges.has(edge.split(" ").reverse().join(" "))).sort();
}

function borderEdges(rings: readonly Ring[]): string[] {
  let start = 0;
  return rings
    .flatMap((ring) => {
      const first = start;
      start += ring.length;
      return ring.map((_, i) => `${first + i} ${first + ((i + 1) % ring.length)}`);
    })
    .sort();
}

function expectCover(rings: readonly Ring[]): void {
  const points = rings.flat();
  const triangles = triangulatePolygon(rings);
  expect(looseEdges(triangles)).toEqual(borderEdges(rings));
  const pieces = areas(points, triangles);
  expect(Math.min(...pieces)).toBeGreaterThan(0);
  const area = rings.reduce((sum, ring) => sum + shoelace(ring), 0);
  expect(pieces.reduce((sum, piece) => sum + piece, 0)).toBeCloseTo(area, 6);
  const holes = rings.slice(1).map((_, i) => rings.slice(0, i + 1).reduce((sum, ring) => sum + ring.length, 0));
  const flat = points.flat();
  expect(deviation(flat, holes, 2, triangles)).toBeLessThan(1e-9);
}

/** A star about a point on an integer grid; each side may carry vertices exactly on it. */
function star(x: number, y: number, radii: readonly number[], onSides: number): Ring {
  const corners = radii.map((radius, i): PlanePoint => {
    const angle = (2 * Math.PI * i) / radii.length;
    const grid = 12 * (onSides + 1);
    return [
      x + grid * Math.round((radius * Math.cos(angle)) / grid),
      y + grid * Math.round((radius * Math.sin(angle)) / grid),
    ];
  });
  return corners.flatMap(([ax, ay], i): PlanePoint[] => {
    const [bx, by] = corners[(i + 1) % corners.length];
    return Array.from({ length: onSides + 1 }, (_, k) => [
      ax + ((bx - ax) * k) / (onSides + 1),
      ay + ((by - ay) * k) / (onSides + 1),
    ]);
  });
}

const radius = fc.integer({ min: 7000, max: 10_000 });
const outer = fc
  .tuple(fc.array(radius, { minLength: 5, maxLength: 24 }), fc.integer({ min: 0, max: 3 }))
  .map(([radii, onSides]) => star(0, 0, radii, onSides));

/** Holes about the corners of a square, apart from each other and from the border. */
const hole = (x: number, y: number) =>
  fc
    .tuple(
      fc.array(fc.integer({ min: 300, max: 1000 }), { minLength: 3, maxLength: 9 }),
      fc.integer({ min: 0, max: 3 }),
    )
    .map(([radii, onSides]) => [...star(x, y, radii, onSides)].reverse());

const holes = fc.tuple(hole(-2000, -2000), hole(2000, -2000), hole(2000, 2000), hole(-2000, 2000));
const holed = fc
  .tuple(outer, holes, fc.integer({ min: 0, max: 4 }))
  .map(([border, all, count]) => [border, ...all.slice(0, count)]);

describe("triangulating polygons", () => {
  it("covers random polygons with holes and vertices on straight sides, conforming, with no flat triangle", () => {
    fc.assert(fc.property(holed, expectCover), { seed: SEED, numRuns: 300 });
  });

  it("covers a comb of collinear points along both sides of a strip", () => {
    const count = 40;
    const low = Array.from({ length: count }, (_, i): PlanePoint => [i, 0]);
    const high = Array.from({ length: count }, (_, i): PlanePoint => [count - 1 - i, 1]);
    expectCover([[...low, ...high]]);
  });

  it("covers a plate with a hole and more points along its sides than there are rounds", () => {
    // Next to a hole earcut leaves out points in a line: one side of one triangle then carries all of a row.
    const count = 400;
    const low = Array.from({ length: count }, (_, i): PlanePoint => [i, 0]);
    const high = Array.from({ length: count }, (_, i): PlanePoint => [count - 1 - i, 40]);
    const window: Ring = [
      [200, 10],
      [200, 20],
      [210, 20],
      [210, 10],
    ];
    expectCover([[...low, ...high], window]);
  });

  it("covers a square whose hole shares lines with its sides' vertices", () => {
    const square: Ring = [0, 1, 2, 3].flatMap((side): PlanePoint[] =>
      [0, 1, 2, 3].map((k) => {
        const [x, y] = [k - 2, -2];
        return [
          [x, y],
          [-y, x],
          [-x, -y],
          [y, -x],
        ][side] as [number, number];
      }),
    );
    const inner: Ring = [
      [-1, -1],
      [-1, 1],
      [1, 1],
      [1, -1],
    ];
    expectCover([square, inner]);
  });

  it("carries further coordinates along untouched", () => {
    const ring: PlanePoint[] = [
      [0, 0, 5],
      [1, 0, 6],
      [0, 1, 7],
    ];
    expect(triangulatePolygon([ring])).toHaveLength(3);
  });

  it.each<[string, readonly Ring[]]>([
    [
      "a hole that crosses the border",
      [
        [
          [0, 0],
          [4, 0],
          [4, 4],
          [0, 4],
        ],
        [
          [3, 1],
          [3, 3],
          [6, 3],
          [6, 1],
        ],
      ],
    ],
    [
      "a bow tie",
      [
        [
          [0, 0],
          [2, 2],
          [2, 0],
          [0, 2],
        ],
      ],
    ],
    [
      "a hole outside",
      [
        [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
        [
          [5, 0],
          [5, 1],
          [6, 1],
          [6, 0],
        ],
      ],
    ],
    [
      "holes that cross each other",
      [
        [
          [0, 0],
          [9, 0],
          [9, 9],
          [0, 9],
        ],
        [
          [2, 2],
          [2, 5],
          [5, 5],
          [5, 2],
        ],
        [
          [4, 4],
          [4, 7],
          [7, 7],
          [7, 4],
        ],
      ],
    ],
  ])("refuses %s", (_, rings) => {
    expect(failureOf(() => triangulatePolygon(rings)).code).toBe("triangulation-failed");
  });
});
