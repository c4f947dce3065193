// Covers: src/mesh/triangles-meet.ts, src/mesh/box-tree.ts
import { describe, expect, it } from "vitest";
import { addImage } from "../../src/mesh/add-image.js";
import { findCrossings } from "../../src/mesh/crossings.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { TrianglesMeet } from "../../src/mesh/triangles-meet.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { box, meshOf, torus } from "../support/meshes.js";

/** Two triangles, the first on x, y ≥ 0 in the plane z = 0. */
const FLOOR = [
  [0, 0, 0],
  [4, 0, 0],
  [0, 4, 0],
];

const pairs: readonly (readonly [string, readonly number[][], readonly number[][], boolean])[] = [
  [
    "that go through each other",
    [
      [1, 1, -1],
      [1, 1, 1],
      [2, 1, 1],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    true,
  ],
  [
    "of which a side of the first goes through the second",
    [
      [3, 0, -1],
      [3, 3, -1],
      [3, 0, 2],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    true,
  ],
  [
    "apart, whose planes cross",
    [
      [3, 3, -1],
      [3, 3, 1],
      [4, 3, 1],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    false,
  ],
  [
    "one above the other",
    [
      [0, 0, 1],
      [4, 0, 1],
      [0, 4, 1],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    false,
  ],
  [
    "a rounding above the other",
    [
      [1, 1, 5e-324],
      [2, 1, 5e-324],
      [1, 2, 1],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    false,
  ],
  [
    "that touch in a point within",
    [
      [1, 1, 0],
      [1, 1, 1],
      [2, 1, 1],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    true,
  ],
  [
    "that touch in a corner which they do not share",
    [
      [0, 0, 0],
      [-1, 0, 1],
      [0, -1, 1],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    true,
  ],
  [
    "that touch along sides which they do not share",
    [
      [1, 0, 0],
      [2, 0, 0],
      [1, -1, 1],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    true,
  ],
  [
    "in one plane, one over the other's corner",
    [
      [3, -1, 0],
      [5, -1, 0],
      [5, 3, 0],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    true,
  ],
  [
    "in one plane, one within the other",
    [
      [1, 1, 0],
      [1.5, 1, 0],
      [1, 1.5, 0],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    true,
  ],
  [
    "in one plane, apart, their boxes over each other",
    [
      [3, 3, 0],
      [4, 1, 0],
      [4, 3, 0],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    false,
  ],
  [
    "that share a corner alone",
    [
      [-1, 0, 1],
      [0, -1, 1],
    ],
    [
      [0, 1, 2],
      [0, 3, 4],
    ],
    false,
  ],
  [
    "that share a corner, in one plane, side by side",
    [
      [-1, 0, 0],
      [0, -1, 0],
    ],
    [
      [0, 1, 2],
      [0, 3, 4],
    ],
    false,
  ],
  [
    "that share a corner, in one plane, over each other",
    [
      [3, 1, 0],
      [1, 3, 0],
    ],
    [
      [0, 1, 2],
      [0, 3, 4],
    ],
    true,
  ],
  [
    "that share a corner, one going through the other",
    [
      [2, 2, -1],
      [1, 1, 3],
    ],
    [
      [0, 1, 2],
      [0, 3, 4],
    ],
    true,
  ],
  [
    "that share a corner and touch along a side",
    [
      [2, 0, 0],
      [1, -1, 1],
    ],
    [
      [0, 1, 2],
      [0, 3, 4],
    ],
    true,
  ],
  [
    "that share a side, in one plane",
    [[0, -4, 0]],
    [
      [0, 1, 2],
      [1, 0, 3],
    ],
    false,
  ],
  [
    "that share a side and are folded over each other",
    [[1, 1, 0]],
    [
      [0, 1, 2],
      [1, 0, 3],
    ],
    true,
  ],
  [
    "that share a side at a fold of a rounding",
    [[1, 1, 5e-324]],
    [
      [0, 1, 2],
      [1, 0, 3],
    ],
    false,
  ],
  [
    "that share all three corners",
    [],
    [
      [0, 1, 2],
      [0, 2, 1],
    ],
    true,
  ],
  [
    "one without area through the other",
    [
      [1, 1, -1],
      [1, 1, 1],
      [1, 1, 2],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    false,
  ],
  [
    "one without area, a point in the other",
    [
      [1, 1, 0],
      [1, 1, 0],
      [1, 1, 0],
    ],
    [
      [0, 1, 2],
      [3, 4, 5],
    ],
    false,
  ],
  [
    "one without area along the other's side",
    [
      [1, 0, 0],
      [2, 0, 0],
    ],
    [
      [0, 1, 2],
      [0, 3, 4],
    ],
    false,
  ],
];

/** Turns of the coordinates and of the corners that leave an answer as it is. */
const views: readonly ((point: readonly number[]) => number[])[] = [
  ([x, y, z]) => [x, y, z],
  ([x, y, z]) => [y, z, x],
  ([x, y, z]) => [z, x, y],
  ([x, y, z]) => [-x, z, y],
];

describe("two triangles", () => {
  it.each(pairs)("%s", (_, others, triangles, expected) => {
    for (const view of views) {
      for (const turned of [0, 1, 2]) {
        const turn = (corners: readonly number[], by: number) => corners.map((_c, k) => corners[(k + by) % 3]);
        const mesh = meshOf([...FLOOR, ...others].map(view), [
          turn(triangles[0], turned),
          turn(triangles[1], 2 * turned),
        ]);
        const test = new TrianglesMeet(mesh);
        expect([test.meet(0, 1), test.meet(1, 0)]).toEqual([expected, expected]);
      }
    }
  });
});

const sphereless = { count: 0, deepest: 0, places: [], complete: true };

describe("a mesh", () => {
  it("of one box, or of two apart, crosses itself nowhere", async () => {
    expect(await findCrossings(box())).toEqual(sphereless);
    expect(await findCrossings(concatMeshes([box(), box([1, 1, 1], [1.5, 0, 0])]))).toEqual(sphereless);
    expect(await findCrossings(torus(5, 1, 40, 20))).toEqual(sphereless);
  });

  it("without triangles crosses itself nowhere", async () => {
    expect(await findCrossings(meshOf([], []))).toEqual(sphereless);
  });

  it("of two boxes in each other says how deep and where", async () => {
    const { count, deepest, places } = await findCrossings(concatMeshes([box(), box([1, 1, 1], [0.7, 0.6, 0.8])]));
    expect(count).toBeGreaterThan(0);
    // The corner reaches 0.3, 0.4 and 0.2 through three faces; of the deepest pair the smaller of two reaches counts.
    expect(deepest).toBeCloseTo(0.3, 12);
    expect(places.length).toBe(Math.min(10, count));
  });

  it("says that it has not looked at all where boxes lie over each other without end", async () => {
    const count = 2500;
    // Slanting sheets over each other: each lies in the box of every other, and none meets another.
    const points = Array.from({ length: count }, (_, i) => {
      const z = (0.2 * i) / count;
      return [
        [0, 0, z],
        [1, 0, 1 + z],
        [0.5, 1, 0.5 + z],
      ];
    }).flat();
    const triangles = Array.from({ length: count }, (_, i) => [3 * i, 3 * i + 1, 3 * i + 2]);
    const { complete } = await findCrossings(meshOf(points, triangles));
    expect(complete).toBe(false);
  });

  it("gives way to a signal", async () => {
    const signal = AbortSignal.abort(new Error("stop"));
    await expect(findCrossings(torus(5, 1, 100, 60), { signal })).rejects.toThrow("stop");
  });
});

/** A sector of a ring with a spike that leans over into the next but one, and where it is open. */
function leaning(units: number, reach: number) {
  const step = (2 * Math.PI) / units;
  const at = (angle: number, r: number, z: number) => [r * Math.cos(angle), r * Math.sin(angle), z];
  const points = [at(0.1 * step, 10, 0), at(0.2 * step, 10, 0), at(0.15 * step, 10, 0.3), at(reach * step, 10, 0.1)];
  const mesh = meshOf(points, [
    [0, 2, 1],
    [0, 1, 3],
    [1, 2, 3],
    [2, 0, 3],
  ]);
  return { mesh, follows: new Int32Array(4).fill(-1) };
}

describe("a ring of turned units", () => {
  it.each([3, 7, 8])("is told by its first unit what all of %i say", async (units) => {
    for (const reach of [0.4, 1.16, 2.17, 3.15]) {
      const mesh = turnRound(leaning(units, reach), units);
      const [all, few] = [await findCrossings(mesh), await findCrossings(mesh, { units })];
      expect(few.count).toBe(all.count);
      expect(few.deepest).toBeCloseTo(all.deepest, 9);
    }
  });
});

/** Pairs that meet, by looking at every two triangles. */
function everyPair(mesh: Mesh): number {
  const test = new TrianglesMeet(mesh);
  const count = mesh.triangles.length / 3;
  let found = 0;
  for (let s = 0; s < count; s++) for (let t = s + 1; t < count; t++) if (test.meet(s, t)) found++;
  return found;
}

describe("a ring of units that are a part and its mirror images", () => {
  const units = 5;
  const step = (2 * Math.PI) / units;
  /** A spike in half a unit and its image in the plane at the half's end; on wish both again in z = 0. */
  const mirrored = (reach: number, low: number, middle: boolean) => {
    const at = (share: number, r: number, z: number) => [r * Math.cos(share * step), r * Math.sin(share * step), z];
    const spike = meshOf(
      [at(0.1, 10, 0.1), at(0.2, 10, 0.1), at(0.15, 10, 0.4), at(reach, 10, low)],
      [
        [0, 2, 1],
        [0, 1, 3],
        [1, 2, 3],
        [2, 0, 3],
      ],
    );
    const half = { mesh: spike, marks: new Uint8Array(4) };
    const [cos, sin] = [Math.cos(step), Math.sin(step)];
    const across = addImage(half, 1, (x, y, z) => [x * cos + y * sin, x * sin - y * cos, z]).whole;
    const whole = middle ? addImage(across, 1, (x, y, z) => [x, y, -z]).whole : across;
    return turnRound({ mesh: whole.mesh, follows: new Int32Array(whole.marks.length).fill(-1) }, units);
  };

  it.each([false, true])("is told by that part what every pair says (across the band too: %s)", async (middle) => {
    let most = 0;
    // Free; through its own image; through another unit's; through the plane z = 0.
    for (const [reach, low] of [
      [0.4, 0.2],
      [0.6, 0.2],
      [0.95, 0.25],
      [1.2, 0.3],
      [0.4, -0.1],
      [0.7, -0.2],
    ]) {
      const mesh = mirrored(reach, low, middle);
      const { count } = await findCrossings(mesh, { units });
      expect(count).toBe(everyPair(mesh));
      most = Math.max(most, count);
    }
    expect(most).toBeGreaterThan(units);
  });
});
