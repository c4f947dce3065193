// Covers: src/judge/proof/upright.ts
/** What stands upright on a domed band, against the dome's circle. */
import { describe, expect, it } from "vitest";
import { revolvedSurface } from "../../src/band/surface/revolved.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { unitFaceNormals } from "../../src/mesh/normals.js";
import { build } from "../../src/ring/build.js";
import { checkDesign } from "../../src/ring/check-design.js";
import { openInside } from "../../src/ring/open-ring.js";
import { uprightForward } from "../../src/solids/upright-map.js";
import { greyPng } from "../art/image/pngs.js";

const [WIDTH, RISE, TOP] = [6, 1.2, 17.5 / 2 + 2.2];
const HEIGHT = 0.5;
const DRAFT = Math.PI / 18;

/** Of the dome's circle, mm: its radius, and how far its centre is from the finger's axis. */
const RADIUS = ((WIDTH / 2) ** 2 + RISE ** 2) / (2 * RISE);
const CENTRE = TOP - RADIUS;

const SCALENE = "M 0.5 -2.6 L 3.5 -2.2 L 4 1.2 L 3 2.4 L 2 0.4 L 1 1.9 Z";

const design = (regions: readonly object[], more: object = {}, outside: object = {}) => ({
  annulet: 1,
  tolerance: 0.02,
  size: { diameter: 17.5 },
  profile: {
    width: WIDTH,
    thickness: 2.2,
    bore: { form: "flat", edge: 0.2 },
    outside: { form: "domed", rise: RISE, edge: 0, ...outside },
  },
  pattern: {
    fit: { hold: "band", repeats: 8 },
    ...more,
    regions: regions.map((one) => ({ unit: "mm", upright: true, ...one })),
  },
});

/** (w, r) at v and a height squarely over a straight slope there, mm along the radius. */
const stands = (v: number, h: number): readonly [number, number] => {
  const tilt = v / RADIUS;
  return [RADIUS * Math.sin(tilt), CENTRE + RADIUS * Math.cos(tilt) + h / Math.cos(tilt)];
};

const undercutOf = async (document: object) =>
  (await checkDesign(document)).results.find(({ rule }) => rule === "undercut")?.figure;

/** Angles to the radius, radians, of the faces that look towards +z between two places across, by the mesh. */
function leansBetween({ positions, triangles }: Mesh, [low, high]: readonly number[]): number[] {
  const normals = unitFaceNormals({ positions, triangles });
  const found: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => positions.subarray(3 * triangles[t + k], 3 * triangles[t + k] + 3));
    const [x, y, z] = [0, 1, 2].map((k) => (corners[0][k] + corners[1][k] + corners[2][k]) / 3);
    const out = (normals[t] * x + normals[t + 1] * y) / Math.hypot(x, y);
    if (z > low && z < high && Math.hypot(x, y) > stands(2, 0)[1] + 0.1 && normals[t + 2] > 0.9)
      found.push(Math.asin(out));
  }
  return found;
}

describe("the map of what stands upright", () => {
  const half = WIDTH / 2;
  const sweep = 2 * Math.asin(half / RADIUS);
  const wrap = revolvedSurface({
    line: [{ kind: "arc", centre: [0, CENTRE], radius: RADIUS, start: Math.PI / 2 + sweep / 2, sweep: -sweep }],
    referenceRadius: TOP,
    startAngle: Math.PI / 2,
  });
  const forward = uprightForward(wrap);

  it("goes along the radius, as far as a straight slope needs for the height", () => {
    for (const [u, v, h] of [
      [0, 0, 0.5],
      [3, 2.1, 0.5],
      [-7, -1.3, -0.3],
      [40, 2.9, 0.02],
    ]) {
      const [x, y, z] = forward(u, v, h);
      const [w, r] = stands(v, h);
      expect(z).toBeCloseTo(w, 12);
      expect(Math.hypot(x, y)).toBeCloseTo(r, 12);
      expect(Math.atan2(y, x)).toBeCloseTo(Math.atan2(Math.cos(u / TOP), -Math.sin(u / TOP)), 12);
      // The mirrored place is the mirrored point: its tilt is the other way.
      expect(forward(u, -v, h)).toEqual([x, y, -z].map((one) => expect.closeTo(one, 12)));
    }
  });
});

describe("upright regions on a domed band", () => {
  it("a scalene one has no undercut, where along the normal it leans over by up to its tilt", async () => {
    expect(await undercutOf(design([{ path: SCALENE, height: HEIGHT }]))).toBeNull();
    const leaning = await undercutOf(design([{ path: SCALENE, height: HEIGHT, upright: false }]));
    expect(Math.abs(((leaning as number) * Math.PI) / 180 - 2.6 / RADIUS)).toBeLessThan(0.03);
  });

  it("what is sunk has none either", async () => {
    const sunk = { path: "M 0.5 -2 L 3.5 -2 L 4 1.2 L 2 1.4 Z", mode: "sunk", depth: 0.35 };
    expect(await undercutOf(design([sunk]))).toBeNull();
  });

  it.each([0, DRAFT])("walls with a draft of %d radians stand as the circle has it on either side", async (draft) => {
    const section = { form: "flat", height: HEIGHT, draft: (draft * 180) / Math.PI };
    const { mesh } = await build(design([{ path: "M 1 -0.5 H 3 V 2 H 1 Z", section }]));
    const [foot, top] = [stands(2 + HEIGHT * Math.tan(draft), 0), stands(2, HEIGHT)];
    const expected = Math.atan2(foot[0] - top[0], top[1] - foot[1]);
    const near = 1e-3;
    const leans = leansBetween(mesh, [top[0] - near, foot[0] + near]);
    expect(leans.length).toBeGreaterThan(16);
    // Facets round the finger and across the seat.
    for (const lean of leans) expect(Math.abs(lean - expected)).toBeLessThan(0.02);
  });

  it("relief that runs to the band's edges ends there: the ring is no wider than its band", async () => {
    const wide = async (upright: boolean) => {
      const { mesh } = await build(design([{ path: "M 1 -3.31 H 3 V 3.31 H 1 Z", height: HEIGHT, upright }]));
      return 2 * mesh.positions.reduce((most, at, i) => (i % 3 === 2 ? Math.max(most, at) : most), 0);
    };
    expect(await wide(true)).toBeCloseTo(WIDTH, 6);
    // Along the normal it leans out by the height times the sine of the tilt at the edge.
    expect(await wide(false)).toBeCloseTo(WIDTH + 2 * HEIGHT * (WIDTH / 2 / RADIUS), 1);
  });

  it("hammering that runs over the band's edges ends there without a lip", async () => {
    const files = { "a.png": greyPng(48, 40, (x, y) => 0.6 + 0.2 * Math.sin(2 * Math.PI * x) + 0.1 * Math.cos(9 * y)) };
    const hammered = (upright: boolean) =>
      design([{ image: "a.png", height: HEIGHT, map: { edge: 0, resolution: 0.3 }, upright }]);
    const wide = async (upright: boolean) => {
      const { mesh } = await build(hammered(upright), { files });
      return 2 * mesh.positions.reduce((most, at, i) => (i % 3 === 2 ? Math.max(most, at) : most), 0);
    };
    expect(await wide(true)).toBeCloseTo(WIDTH, 6);
    expect(await wide(false)).toBeGreaterThan(WIDTH + 0.2);
    const { results } = await checkDesign(hammered(true), { files });
    expect(results.find(({ rule }) => rule === "undercut")?.figure).toBeNull();
  });

  it("is not taken for the image of one whose walls lean", async () => {
    const pair = (upright: readonly boolean[]) =>
      design(
        upright.map((one, i) => ({
          path: `M 1 ${i === 0 ? "0.5 H 3 V 2" : "-0.5 H 3 V -2"} H 1 Z`,
          height: HEIGHT,
          upright: one,
        })),
      );
    const one = ((await undercutOf(pair([true, false]))) as number) * (Math.PI / 180);
    expect(Math.abs(one - 2 / RADIUS)).toBeLessThan(0.03);
    expect(await undercutOf(pair([true, true]))).toBeNull();
  });

  it("the proof tells upright walls from leaning ones", async () => {
    const laid = async (upright: boolean) =>
      (await openInside(design([{ path: SCALENE, height: HEIGHT, upright }]), {}).ask(["solid", "prove"])).answers;
    const [upright, leaning] = [await laid(true), await laid(false)];
    const proofOf = ({ prove }: typeof upright, { solid }: typeof upright) =>
      prove(solid, checkSolid(solid), { units: 1 });
    expect(proofOf(upright, upright).agrees).toBe(true);
    expect(proofOf(leaning, leaning).agrees).toBe(true);
    expect(proofOf(upright, leaning).agrees).toBe(false);
    expect(proofOf(leaning, upright).agrees).toBe(false);
  });

  it("slopes of over 60° are refused with the place; pierced and beaded regions in the document", async () => {
    const path = "M 1 -3.7 H 3 V 3.7 H 1 Z";
    expect(await failureIn(() => build(design([{ path, height: HEIGHT }], {}, { rise: 1.9 })))).toMatchObject({
      code: "seat-too-steep",
      path: "pattern.regions[0]",
    });
    const beads = { on: "border", diameter: 0.4 };
    for (const wrong of [
      { mode: "pierced", height: undefined },
      { height: HEIGHT, beads },
    ]) {
      expect(await failureIn(() => build(design([{ path: SCALENE, ...wrong }])))).toMatchObject({
        path: "pattern.regions[0].upright",
      });
    }
  });
});

async function failureIn(work: () => Promise<unknown>): Promise<unknown> {
  return work().then(
    () => undefined,
    (error: unknown) => error,
  );
}
