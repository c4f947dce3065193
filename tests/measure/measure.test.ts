import fc from "fast-check";
import { mat4 } from "gl-matrix";
import Module from "manifold-3d";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { checkSolid } from "../../src/judge/gate.js";
import { measureMesh, measureTurned, surfaceArea } from "../../src/measure/measure.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { turnRound } from "../../src/mesh/turn-round.js";
import { type Turned, turnedImages } from "../../src/mesh/turned.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { box, meshOf, revolve, sphere, spindle, torus } from "../support/meshes.js";
import { sector } from "../support/sector.js";

/** Rows of (z, r) on a sphere round z = `centre`, from one height to another, both ends included. */
function arcRows(centre: number, radius: number, from: number, to: number, rows: number): [number, number][] {
  const start = Math.acos((from - centre) / radius);
  const end = Math.acos((to - centre) / radius);
  return Array.from({ length: rows + 1 }, (_, i) => {
    const angle = start + ((end - start) * i) / rows;
    return [centre + radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

/** A flat band in the (w, r) half-plane, counter-clockwise with r to the right. */
function rectangle(bore: number, thickness: number, width: number): [number, number][] {
  const [inner, outer] = [bore / 2, bore / 2 + thickness];
  return [
    [-width / 2, inner],
    [-width / 2, outer],
    [width / 2, outer],
    [width / 2, inner],
  ];
}

/** Area of a regular n-gon over its circle's: (n / 2π) sin(2π / n). */
const inscribed = (n: number) => (n / (2 * Math.PI)) * Math.sin((2 * Math.PI) / n);

function relative(measured: number, expected: number): number {
  return Math.abs(measured / expected - 1);
}

describe("volume and area against closed forms", () => {
  it("torus R = 2, r = 1: V = 4π², S = 8π² (Pappus; Larson & Edwards, Calculus §7.6)", () => {
    const { volume, area } = measureMesh(torus(2, 1, 720, 360));
    expect(relative(volume, 4 * Math.PI ** 2)).toBeLessThan(1e-4);
    expect(relative(area, 8 * Math.PI ** 2)).toBeLessThan(1e-4);
  });

  it("a faceted torus exactly: both polygons lose their inscribed share", () => {
    // Pappus on the inscribed polygon, then every circle round the axis replaced by its polygon.
    const { volume } = measureMesh(torus(2, 1, 48, 20));
    expect(relative(volume, 4 * Math.PI ** 2 * inscribed(48) * inscribed(20))).toBeLessThan(1e-12);
  });

  it.each([
    [96, 0.9992862],
    [360, 0.9999492],
  ])("flat band D 16.51, t 1.8, w 6 in %i facets: π(D + t)wt times the area ratio %f", (facets, ratio) => {
    expect(inscribed(facets)).toBeCloseTo(ratio, 7);
    const { volume } = measureMesh(revolve(rectangle(16.51, 1.8, 6), facets));
    expect(volume / ratio).toBeCloseTo(621.2437, 3);
  });

  it("flat band's area is 2π(D + t)(w + t) = 897.3520 in the limit (Pappus)", () => {
    expect(relative(measureMesh(revolve(rectangle(16.51, 1.8, 6), 2000)).area, 897.352)).toBeLessThan(3e-6);
  });

  it("half ellipse w 4, h 1.6 on D 16.51: 282.1621 (Pappus, centroid 4h/3π)", () => {
    const outline = Array.from({ length: 2001 }, (_, i) => {
      const angle = (Math.PI * i) / 2000;
      return [-2 * Math.cos(angle), 16.51 / 2 + 1.6 * Math.sin(angle)] as const;
    });
    expect(relative(measureMesh(revolve(outline, 90)).volume / inscribed(90), 282.1621)).toBeLessThan(2e-6);
  });

  it.each([5, 8, 20])("napkin ring of height 6 in a sphere of radius %f: πL³/6, whatever the sphere", (radius) => {
    const rows = arcRows(0, radius, -3, 3, 800);
    const { volume } = measureMesh(revolve(rows, 90));
    expect(relative(volume / inscribed(90), (Math.PI * 6 ** 3) / 6)).toBeLessThan(1e-5);
  });

  it("spherical cap R 10, h 3: πh²(3R − h)/3 = 254.4690", () => {
    const rows = arcRows(0, 10, 7, 10, 800).slice(0, -1);
    const { volume } = measureMesh(spindle(7, rows, 10, 90));
    expect(relative(volume / inscribed(90), 254.469)).toBeLessThan(5e-6);
  });

  it("lens of spheres R 2 and r 1, 2 apart: 1.701696", () => {
    const lower = arcRows(2, 1, 1, 1.75, 800).slice(1);
    const upper = arcRows(0, 2, 1.75, 2, 800).slice(1, -1);
    const { volume } = measureMesh(spindle(1, [...lower, ...upper], 2, 90));
    expect(relative(volume / inscribed(90), 1.701696)).toBeLessThan(5e-6);
  });
});

describe("centroid and inertia", () => {
  it("box a × b × c: V(b² + c²)/12 about the centroid (any handbook of mechanics)", () => {
    const [a, b, c] = [2, 3, 5];
    const { centroid, inertia, bounds } = measureMesh(box([a, b, c], [10, -20, 30]));
    expect(bounds).toEqual({ min: [10, -20, 30], max: [12, -17, 35] });
    for (const [k, middle] of [11, -18.5, 32.5].entries()) expect(centroid[k]).toBeCloseTo(middle, 12);
    const expected = [b * b + c * c, c * c + a * a, a * a + b * b].map((sum) => (a * b * c * sum) / 12);
    for (let i = 0; i < 3; i++) {
      for (let k = 0; k < 3; k++) expect(inertia[i][k]).toBeCloseTo(i === k ? expected[i] : 0, 10);
    }
  });

  it("corner tetrahedron a, b, c: ∫ y² = 3Vb²/80, ∫ yz = −Vbc/80 about the centroid (by integrating over the simplex)", () => {
    const [a, b, c] = [2, 3, 5];
    const corners = [
      [0, 0, 0],
      [a, 0, 0],
      [0, b, 0],
      [0, 0, c],
    ];
    const faces = [
      [0, 2, 1],
      [0, 1, 3],
      [1, 2, 3],
      [2, 0, 3],
    ];
    const { volume, centroid, inertia } = measureMesh(meshOf(corners, faces));
    expect(volume).toBeCloseTo((a * b * c) / 6, 12);
    for (const [k, side] of [a, b, c].entries()) expect(centroid[k]).toBeCloseTo(side / 4, 12);
    const v = volume / 80;
    const expected = [
      [3 * v * (b * b + c * c), v * a * b, v * c * a],
      [v * a * b, 3 * v * (c * c + a * a), v * b * c],
      [v * c * a, v * b * c, 3 * v * (a * a + b * b)],
    ];
    for (let i = 0; i < 3; i++) for (let k = 0; k < 3; k++) expect(inertia[i][k]).toBeCloseTo(expected[i][k], 10);
  });

  it("sphere: 2/5 V r² in the limit", () => {
    const { volume, inertia } = measureMesh(sphere(3, 250, 400));
    for (let i = 0; i < 3; i++) expect(relative(inertia[i][i], 0.4 * volume * 9)).toBeLessThan(1e-4);
    expect(Math.abs(inertia[0][1])).toBeLessThan(1e-9 * volume);
  });

  it("torus about its axis: V(R² + ¾ r²)", () => {
    const { volume, inertia } = measureMesh(torus(2, 1, 720, 360));
    expect(relative(inertia[2][2], volume * (4 + 0.75))).toBeLessThan(1e-4);
  });

  it("the tensor turns with the body and stays when it moves", () => {
    const body = box([1, 2, 3]);
    const still = measureMesh(body);
    const angle = fc.double({ min: -3, max: 3, noNaN: true });
    const shift = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(angle, angle, shift, shift, (turnX, turnY, dx, dy) => {
        const map: mat4 = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, dx, dy, 7, 1];
        mat4.rotateX(map, map, turnX);
        mat4.rotateY(map, map, turnY);
        const moved = measureMesh(transformMesh(body, map));
        expect(moved.volume).toBeCloseTo(still.volume, 9);
        expect(moved.area).toBeCloseTo(still.area, 9);
        const rotation = (i: number, k: number) => map[4 * k + i];
        for (let i = 0; i < 3; i++) {
          for (let j = 0; j < 3; j++) {
            let turned = 0;
            for (let k = 0; k < 3; k++) turned += rotation(i, k) * still.inertia[k][k] * rotation(j, k);
            expect(moved.inertia[i][j]).toBeCloseTo(turned, 8);
          }
        }
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it("loses no digits a kilometre from the origin", () => {
    const far = measureMesh(box([1, 1, 1], [1e6, 1e6, 1e6]));
    expect(relative(far.volume, 1)).toBeLessThan(1e-12);
    expect(relative(far.inertia[0][0], 1 / 6)).toBeLessThan(1e-12);
  });
});

describe("against manifold-3d on the same meshes", () => {
  it("agrees on volume, area and genus of random unions of boxes, balls and tubes", async () => {
    const wasm = await Module();
    wasm.setup();
    const { Manifold } = wasm;
    const part = fc.record({
      kind: fc.constantFrom("box", "ball", "tube"),
      at: fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: -20, max: 20 }).map((step) => step / 7))),
      size: fc.integer({ min: 3, max: 15 }).map((step) => step / 5),
      taken: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        let body = Manifold.cube([4, 4, 4], true);
        for (const { kind, at, size, taken } of parts) {
          const raw =
            kind === "box"
              ? Manifold.cube([size, size, size], true)
              : kind === "ball"
                ? Manifold.sphere(size, 24)
                : Manifold.cylinder(9, size / 3, size / 3, 17, true);
          const moved = raw.translate(at as [number, number, number]);
          const next = taken ? body.subtract(moved) : body.add(moved);
          for (const used of [raw, moved, body]) used.delete();
          body = next;
        }
        const data = body.getMesh();
        const mesh: Mesh = {
          positions: Float64Array.from(data.vertProperties),
          triangles: Uint32Array.from(data.triVerts),
        };
        const again = new Manifold(
          new wasm.Mesh({ numProp: 3, vertProperties: data.vertProperties, triVerts: data.triVerts }),
        );
        const theirs = { volume: again.volume(), area: again.surfaceArea(), pieces: again.decompose() };
        const genera = theirs.pieces.reduce((sum, piece) => sum + piece.genus(), 0);
        const pieces = theirs.pieces.length;
        for (const used of [...theirs.pieces, again, body]) used.delete();
        fc.pre(mesh.triangles.length > 0);
        expect(relative(signedVolume(mesh), theirs.volume)).toBeLessThan(1e-6);
        const ours = measureMesh(mesh);
        expect(relative(ours.volume, theirs.volume)).toBeLessThan(1e-6);
        expect(relative(ours.area, theirs.area)).toBeLessThan(1e-6);
        const check = checkSolid(mesh, { components: pieces });
        expect(check.faults).toEqual([]);
        expect([check.components, check.genus]).toEqual([pieces, genera]);
      }),
      { seed: 20261125, numRuns: 40 },
    );
  });
});

describe("what cannot be measured", () => {
  it("is refused, with a code", () => {
    const flat = meshOf(
      [
        [0, 0, 0],
        [1, 0, 0],
        [0, 1, 0],
      ],
      [
        [0, 1, 2],
        [0, 2, 1],
      ],
    );
    const code = (mesh: Mesh) => {
      try {
        measureMesh(mesh);
      } catch (error) {
        return (error as AnnuletError).code;
      }
      return "measured";
    };
    expect(code(flat)).toBe("mesh-without-volume");
    expect(code(meshOf([], []))).toBe("mesh-without-volume");
    expect(code(meshOf([[0, 0, Number.NaN]], [[0, 0, 0]]))).toBe("mesh-malformed");
    expect(code(meshOf([[0, 0, 0]], [[0, 0, 1]]))).toBe("mesh-malformed");
    expect(surfaceArea(flat)).toBeCloseTo(1, 12);
    expect(() => measureMesh(flat)).toThrow(AnnuletError);
  });
});

describe("a ring of turned units", () => {
  // A unit leans to one side and has moments of its own: two make other sums than three and more.
  const leaning = (units: number) => {
    const mesh = box([1, 2, 0.5], [8, 1, 0.25]);
    return turnRound({ mesh, follows: new Int32Array(mesh.positions.length / 3).fill(-1) }, units);
  };

  it.each([
    ["two boxes", leaning(2), 2],
    ["three boxes", leaning(3), 3],
    ["eight boxes", leaning(8), 8],
    ["a torus of five units", turnRound(sector(5), 5), 5],
  ])("has the figures of the whole: %s", (_, mesh, units) => {
    const own = measureTurned(turnedImages(mesh, units) as Turned);
    const whole = measureMesh(mesh);
    expect(own.bounds).toEqual(whole.bounds);
    expect(relative(own.volume, whole.volume)).toBeLessThan(1e-13);
    expect(relative(own.area, whole.area)).toBeLessThan(1e-13);
    for (const [k, x] of own.centroid.entries()) expect(x).toBeCloseTo(whole.centroid[k], 12);
    for (const [k, x] of own.inertia.flat().entries()) expect(x).toBeCloseTo(whole.inertia.flat()[k], 9);
  });

  it("without volume is refused", () => {
    const mesh = turnRound(sector(5), 5);
    for (let i = 2; i < mesh.positions.length; i += 3) mesh.positions[i] = 0;
    const measured = () => measureTurned(turnedImages(mesh, 5) as Turned);
    expect(measured).toThrow(expect.objectContaining({ code: "mesh-without-volume" }));
  });
});
