// Covers: src/judge/faults.ts, src/judge/topology.ts
/** The gate's counts against a plain reference of maps and sets, on solids that were broken at random. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkForm } from "../../src/judge/check-form.js";
import { checkSolid } from "../../src/judge/gate.js";
import { roundToFloat32 } from "../../src/mesh/float32.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { reverseMesh } from "../../src/mesh/transform.js";
import { box, butterfly, soup, sphere, torus } from "../support/meshes.js";

type Corners = readonly [number, number, number];

/** What can be counted with indices alone, as slowly and plainly as can be. */
function countPlainly({ positions, triangles }: Mesh) {
  const all = Array.from({ length: triangles.length / 3 }, (_, t): Corners => {
    return [triangles[3 * t], triangles[3 * t + 1], triangles[3 * t + 2]];
  });
  const known = all.filter((corners) => corners.every((vertex) => vertex < positions.length / 3));
  const whole = known.filter((corners) => new Set(corners).size === 3);
  const users = new Map<string, { along: boolean; t: number }[]>();
  whole.forEach((corners, t) => {
    for (const [a, b] of sidesOf(corners)) {
      const key = a < b ? `${a} ${b}` : `${b} ${a}`;
      users.set(key, [...(users.get(key) ?? []), { along: a < b, t }]);
    }
  });
  const edges = [...users];
  const open = edges.filter(([, list]) => list.length === 1);
  const crowded = edges.filter(([, list]) => list.length > 2 || (list.length === 2 && list[0].along === list[1].along));
  const crowdedEnds = new Set(crowded.flatMap(([key]) => key.split(" ").map(Number)));
  const used = new Set(whole.flat());
  const pinched = [...used].filter((vertex) => {
    const at = whole.flatMap((corners, t) => (corners.includes(vertex) ? [t] : []));
    const joins = edges.flatMap(([key, list]) =>
      key.split(" ").includes(`${vertex}`) ? [list.map(({ t }) => t)] : [],
    );
    return !crowdedEnds.has(vertex) && countPieces(at, joins) > 1;
  });
  const sides = whole.flatMap((corners) => sidesOf(corners).map(([a, b]) => distance(positions, a, b)));
  const angles = whole.flatMap(([a, b, c]) => [
    angle(positions, a, b, c),
    angle(positions, b, c, a),
    angle(positions, c, a, b),
  ]);
  return {
    counts: {
      "index-out-of-range": all.length - known.length,
      "repeated-vertex": known.length - whole.length,
      "open-edge": open.length,
      "edge-used-twice": crowded.length,
      "pinched-vertex": pinched.length,
    },
    components: countPieces(
      [...whole.keys()],
      edges.map(([, list]) => list.map(({ t }) => t)),
    ),
    vertices: used.size,
    edges: edges.length,
    triangles: whole.length,
    shortestEdge: Math.min(...sides),
    smallestAngle: Math.min(...angles),
  };
}

function sidesOf([a, b, c]: Corners): [number, number][] {
  return [
    [a, b],
    [b, c],
    [c, a],
  ];
}

/** Pieces of some items that are joined in groups, by spreading labels until nothing changes. */
function countPieces(items: readonly number[], joins: readonly (readonly number[])[]): number {
  const label = new Map(items.map((item) => [item, item]));
  for (let changed = true; changed; ) {
    changed = false;
    for (const group of joins) {
      const lowest = Math.min(...group.map((item) => label.get(item) as number));
      for (const item of group) {
        if (label.get(item) === lowest) continue;
        label.set(item, lowest);
        changed = true;
      }
    }
  }
  return new Set(label.values()).size;
}

function distance(p: Float64Array, a: number, b: number): number {
  return Math.hypot(...[0, 1, 2].map((k) => p[3 * a + k] - p[3 * b + k]));
}

/** At the first corner, from the tangent of its half (W. Kahan, Miscalculating area and angles of a needle-like triangle, 2014; from memory). */
function angle(p: Float64Array, at: number, b: number, c: number): number {
  const [long, short] = [distance(p, at, b), distance(p, at, c)].sort((x, y) => y - x);
  const far = distance(p, b, c);
  if (far === 0 || short === 0) return far === 0 ? 0 : Math.PI;
  const rest = far > short ? short - (long - far) : far - (long - short);
  return (
    2 *
    Math.atan(Math.sqrt(((long - short + far) * Math.max(rest, 0)) / ((long + (short + far)) * (long - far + short))))
  );
}

const solids: readonly [string, Mesh][] = [
  ["torus", torus(9, 1, 12, 7)],
  ["sphere with poles of many edges", sphere(5, 3, 40)],
  ["shell with a void", concatMeshes([sphere(5, 6, 8), reverseMesh(sphere(2, 5, 6))])],
  ["soup", soup(box())],
  ["two triangles that meet in a point", butterfly()],
];

/** What is done to a mesh, each place as a share of its list of corners. */
interface Damage {
  /** Corners that come to name another corner's vertex. */
  readonly moved: readonly (readonly [number, number])[];
  /** Triangles left out, and triangles that stand twice. */
  readonly dropped: readonly number[];
  readonly doubled: readonly number[];
  /** Corners that name a vertex that is not there. */
  readonly beyond: readonly number[];
}

const share = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const damage: fc.Arbitrary<Damage> = fc.record({
  moved: fc.array(fc.tuple(share, share), { maxLength: 6 }),
  dropped: fc.array(share, { maxLength: 3 }),
  doubled: fc.array(share, { maxLength: 3 }),
  beyond: fc.array(share, { maxLength: 1 }),
});

function breakMesh({ positions, triangles }: Mesh, { moved, dropped, doubled, beyond }: Damage): Mesh {
  const broken = Array.from(triangles);
  const place = (of: number) => Math.floor(of * broken.length);
  for (const [to, from] of moved) broken[place(to)] = broken[place(from)];
  for (const at of beyond) broken[place(at)] = positions.length / 3;
  for (const at of doubled) broken.push(...broken.slice(place(at) - (place(at) % 3)).slice(0, 3));
  for (const at of dropped) if (broken.length > 3) broken.splice(place(at) - (place(at) % 3), 3);
  return { positions, triangles: Uint32Array.from(broken) };
}

describe.each(solids)("a %s, broken at random", (_, solid) => {
  it("is counted as a plain reference counts it, exact and rounded", () => {
    fc.assert(
      fc.property(damage, (how) => {
        const mesh = breakMesh(solid, how);
        const { float32, ...exact } = checkSolid(mesh, { components: 2 });
        for (const [check, form] of [
          [exact, mesh],
          [float32, roundToFloat32(mesh)],
        ] as const) {
          const plain = countPlainly(form);
          const found = Object.fromEntries(check.faults.map(({ code, count }) => [code, count]));
          for (const [code, count] of Object.entries(plain.counts))
            expect([code, found[code] ?? 0]).toEqual([code, count]);
          const { vertices, edges, triangles, components } = plain;
          expect(check).toMatchObject({ vertices, edges, triangles, components });
          if (triangles === 0) continue;
          expect(check.shortestEdge).toBeCloseTo(plain.shortestEdge, 12);
          expect(check.smallestAngle).toBeCloseTo(plain.smallestAngle, 7);
        }
      }),
      { seed: 20261127, numRuns: 60 },
    );
  });
});

describe("the second look", () => {
  it("is the same whether the topology is kept or read again", () => {
    const { cos, sin } = Math;
    const turned = torus(9, 1, 24, 9).positions.map((value, i, all) => {
      const [x, y] = [all[i - (i % 3)], all[i - (i % 3) + 1]];
      return [x * cos(1) - y * sin(1), x * sin(1) + y * cos(1), value][i % 3];
    });
    const mesh = { positions: turned, triangles: torus(9, 1, 24, 9).triangles };
    const rounded = roundToFloat32(mesh);
    expect(rounded.triangles).toBe(mesh.triangles);
    expect(rounded.positions).not.toEqual(mesh.positions);
    expect(checkSolid(mesh).float32).toEqual(checkForm(rounded, 1));
    expect(checkSolid(mesh).float32.volume).not.toBe(checkSolid(mesh).volume);
  });
});
