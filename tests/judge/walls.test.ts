// Covers: src/judge/wall-rays.ts
import { describe, expect, it } from "vitest";
import { checkWalls, type WallOptions } from "../../src/judge/walls.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { build } from "../../src/ring/build.js";
import { failureOf } from "../support/failure-of.js";
import { box, meshOf, revolve, sphere, torus } from "../support/meshes.js";

/** What is promised of plain profiles, mm. */
const PROMISED = 0.01;

const thinnest = (mesh: Mesh, options: WallOptions = {}) => checkWalls(mesh, options).thinnest[0];

/** A band between two circles whose middles lie `aside` apart along x, so thinnest at θ = 180°. */
function eccentric(bore: number, outside: number, aside: number, width: number, around: number): Mesh {
  const points: number[][] = [];
  const triangles: number[][] = [];
  for (let i = 0; i < around; i++) {
    const [c, s] = [Math.cos((2 * Math.PI * i) / around), Math.sin((2 * Math.PI * i) / around)];
    points.push([bore * c, bore * s, -width / 2], [outside * c + aside, outside * s, -width / 2]);
    points.push([outside * c + aside, outside * s, width / 2], [bore * c, bore * s, width / 2]);
    for (let j = 0; j < 4; j++) {
      const [a, b] = [4 * i + j, 4 * i + ((j + 1) % 4)];
      const [d, e] = [4 * ((i + 1) % around) + j, 4 * ((i + 1) % around) + ((j + 1) % 4)];
      triangles.push([a, d, e], [a, e, b]);
    }
  }
  return meshOf(points, triangles);
}

describe("the walls of solids whose walls are known", () => {
  it("are a box's three measures", () => {
    for (const [size, least] of [
      [[1, 2, 3], 1],
      [[5, 0.4, 7], 0.4],
      [[8, 6, 0.05], 0.05],
    ] as const) {
      expect(thinnest(box(size)).thickness).toBeCloseTo(least, 9);
    }
  });

  it("are the diameters of a sphere and of a torus' tube", () => {
    expect(Math.abs(thinnest(sphere(3, 90, 180)).thickness - 6)).toBeLessThan(PROMISED);
    expect(Math.abs(thinnest(torus(10, 1.2, 240, 120)).thickness - 2.4)).toBeLessThan(PROMISED);
  });

  it("are least where two circles that are not about one middle come nearest", () => {
    const wall = thinnest(eccentric(8, 10, 1.1, 5, 720));
    expect(Math.abs(wall.thickness - 0.9)).toBeLessThan(PROMISED);
    expect(Math.abs(wall.from[1])).toBeLessThan(0.5);
    expect(wall.from[0]).toBeLessThan(0);
  });

  it("are told once for each neighbourhood, thinnest first", () => {
    const [thin, thick] = [box([4, 4, 0.3]), box([4, 4, 0.7], [10, 0, 0])];
    const two = meshOf(
      [thin, thick].flatMap(({ positions }) =>
        Array.from({ length: positions.length / 3 }, (_, i) => [...positions.slice(3 * i, 3 * i + 3)]),
      ),
      [thin, thick].flatMap(({ triangles }, k) =>
        Array.from({ length: triangles.length / 3 }, (_, i) =>
          [...triangles.slice(3 * i, 3 * i + 3)].map((v) => v + 8 * k),
        ),
      ),
    );
    const found = checkWalls(two, { apart: 8, places: 5 }).thinnest;
    expect(found.map(({ thickness }) => Number(thickness.toFixed(9)))).toEqual([0.3, 0.7]);
  });
});

describe("faces that lean towards each other", () => {
  /** A roof 10 long and 1 high whose two sides meet at an angle, degrees. */
  const roof = (angle: number) => {
    const half = Math.tan((angle * Math.PI) / 360);
    const section = [
      [-half, 0],
      [half, 0],
      [0, 1],
    ];
    const points = [0, 10].flatMap((x) => section.map(([y, z]) => [x, y, z]));
    return meshOf(points, [
      [0, 2, 1],
      [3, 4, 5],
      ...[0, 1, 2].flatMap((i) => {
        const j = (i + 1) % 3;
        return [
          [i, j, j + 3],
          [i, j + 3, i + 3],
        ];
      }),
    ]);
  };

  it("are an edge beyond the angle asked for, and a wall that runs out below it", () => {
    expect(thinnest(roof(40)).thickness).toBeCloseTo(10, 6);
    expect(thinnest(roof(20)).thickness).toBeLessThan(0.02);
    expect(thinnest(roof(40), { lean: 45 }).thickness).toBeLessThan(0.04);
  });
});

describe("the walls of plain bands", () => {
  const bandOf = async (profile: object) => {
    const size = { diameter: 17.5 };
    return (await build({ annulet: 1, size, profile })).mesh;
  };

  it("are the thickness of a flat band", async () => {
    const flat = { width: 5, thickness: 1.8, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 0 } };
    expect(Math.abs(thinnest(await bandOf(flat)).thickness - 1.8)).toBeLessThan(PROMISED);
  });

  it("are the metal left under a channel's floor, or a rail where that is thinner", async () => {
    const channel = (depth: number, rail: number) => ({
      width: 6,
      thickness: 1.9,
      bore: { form: "flat", edge: 0.2 },
      outside: { form: "channel", rail, depth, edge: 0 },
    });
    const floor = thinnest(await bandOf(channel(0.6, 1.5)));
    expect(Math.abs(floor.thickness - 1.3)).toBeLessThan(PROMISED);
    expect(Math.abs(floor.from[2])).toBeLessThan(1.5);
    const rail = thinnest(await bandOf(channel(0.6, 0.7)));
    expect(Math.abs(rail.thickness - 0.7)).toBeLessThan(PROMISED);
    expect(Math.abs(rail.from[2])).toBeGreaterThan(2.2);
  });

  it("are those of the napkin ring: a chord over a bore, least at the lean asked for", async () => {
    // Outside a sphere of 10 mm, bore 17.5 mm: straight out from the bore to where the sphere slopes by φ it is
    // 10 cos φ − 8.75; straight in from the sphere there it is more, 10 − 8.75 / cos φ.
    const outline = Array.from({ length: 241 }, (_, i) => {
      const angle = (-25 + (50 * i) / 240) * (Math.PI / 180);
      return [10 * Math.sin(angle), 10 * Math.cos(angle)] as const;
    });
    const half = 10 * Math.sin((25 * Math.PI) / 180);
    const ring = revolve([[-half, 8.75], ...outline, [half, 8.75]], 720);
    const lean = 20;
    const least = 10 * Math.cos((lean * Math.PI) / 180) - 8.75;
    expect(Math.abs(thinnest(ring, { lean, rays: 200_000 }).thickness - least)).toBeLessThan(PROMISED);
  });
});

describe("options that walls cannot be looked for with", () => {
  it.each([
    ["rays", 99],
    ["rays", 1000.5],
    ["lean", -1],
    ["lean", 90],
    ["places", 0],
    ["apart", Number.NaN],
  ] as const)("%s %s is refused", (path, value) => {
    expect(failureOf(() => checkWalls(box(), { [path]: value }))).toMatchObject({
      code: "option-invalid",
      path,
      value,
    });
  });

  it("a mesh without triangles has no walls", () => {
    expect(checkWalls(meshOf([], []))).toEqual({ thinnest: [], walls: 0 });
  });
});
