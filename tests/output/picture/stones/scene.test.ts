// Covers: src/output/picture/stones/shade-scene.ts, src/output/picture/stones/shade-stones.ts
// Covers: src/output/stones/shown-stone.ts
import { describe, expect, it } from "vitest";
import type { Mesh } from "../../../../src/mesh/mesh.js";
import { makeCamera, projectPoints } from "../../../../src/output/picture/camera.js";
import { makeEchoGrid } from "../../../../src/output/picture/echo.js";
import { makeLightMap } from "../../../../src/output/picture/light-map.js";
import { MIRRORED } from "../../../../src/output/picture/mirrored.js";
import { openStudio, openStudioOf, type Picture } from "../../../../src/output/picture/picture.js";
import { rasterize } from "../../../../src/output/picture/raster.js";
import { sceneOf } from "../../../../src/output/picture/stones/scene.js";
import { shadeStones } from "../../../../src/output/picture/stones/shade-stones.js";
import { type ShownStone, shownStones } from "../../../../src/output/stones/shown-stone.js";
import { box, torus } from "../../../support/meshes.js";
import { placeOn } from "../../../support/place-stones.js";

const single = (gem: string, angle: number, more: object = {}) => ({
  ...{ size: 3, gem, place: { form: "single", angle }, setting: { form: "flush" } },
  ...more,
});

async function stonesOf(...groups: readonly object[]): Promise<readonly ShownStone[]> {
  return shownStones(await placeOn(groups, { profile: { width: 6, thickness: 3.5, outside: { form: "flat" } } }));
}

const RING: Mesh = torus(10, 1, 96, 24);
const SEEN = { lookAt: { angle: 90 }, width: 120, height: 90, zoom: 3 } as const;

/** Mean of red, green and blue of the middle of a picture. */
function middle({ width, height, pixels }: Picture): readonly number[] {
  const sums = [0, 0, 0];
  for (let y = height / 2 - 6; y < height / 2 + 6; y++) {
    for (let x = width / 2 - 6; x < width / 2 + 6; x++) {
      for (let k = 0; k < 3; k++) sums[k] += pixels[4 * (y * width + x) + k] / 144;
    }
  }
  return sums;
}

describe("sceneOf", () => {
  it("is the metal itself without stones, and takes the same picture", () => {
    expect(sceneOf(RING, []).mesh).toBe(RING);
    expect(openStudioOf(RING, [], [])(SEEN)).toEqual(openStudio(RING)(SEEN));
  });

  it("puts each stone's facets where it stands, each with the normal of its own plane", async () => {
    const stones = await stonesOf(single("diamond", 30), single("ruby", 200, { cut: "emerald" }), single("ruby", 90));
    const { mesh, metal, first, stoneOf, normals } = sceneOf(RING, stones);
    expect(metal).toBe(RING.triangles.length / 3);
    expect(mesh.positions.subarray(0, RING.positions.length)).toEqual(RING.positions);
    expect(stoneOf.length).toBe(mesh.triangles.length / 3 - metal);
    for (let t = metal; t < mesh.triangles.length / 3; t++) {
      const { body, frame } = stones[stoneOf[t - metal]];
      expect(t - first[stoneOf[t - metal]]).toBeLessThan(body.mesh.triangles.length / 3);
      const corners = [0, 1, 2].map((k) => [0, 1, 2].map((j) => mesh.positions[3 * mesh.triangles[3 * t + k] + j]));
      const [a, b, c] = corners;
      const [u, v] = [a, b].map((from) => from.map((value, k) => c[k] - value));
      const cross = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
      const own = [...normals.subarray(9 * (t - metal), 9 * (t - metal) + 3)];
      const along = own.reduce((sum, value, k) => sum + value * cross[k], 0);
      const length = Math.hypot(...cross);
      if (length > 1e-6) expect(along / length).toBeGreaterThan(0.999);
      // No point lies farther from the stone's own place than it is large.
      expect(Math.max(...corners.map((at) => Math.hypot(...at.map((value, k) => value - frame.at[k]))))).toBeLessThan(
        3,
      );
    }
  });
});

describe("shownStones", () => {
  it("shares one body among equal stones and names each by group and number", async () => {
    const row = { form: "row", along: "middle", over: "round", gap: 0.4 };
    const stones = await stonesOf({ ...single("diamond", 0, { place: row }), name: "round about" });
    expect(stones.length).toBeGreaterThan(10);
    expect(new Set(stones.map(({ body }) => body)).size).toBe(1);
    expect(stones.map(({ number }) => number)).toEqual(stones.map((_, i) => i + 1));
    expect(stones[0].group).toBe("round about");
  });
});

describe("a picture with stones", () => {
  it("shows a ruby red, a sapphire blue, turquoise as it is, and a diamond without a colour", async () => {
    const look = async (gem: string, cut = "round") =>
      middle(openStudioOf(RING, [], await stonesOf(single(gem, 90, { cut })))({ ...SEEN, material: "ag925" }));
    const [ruby, sapphire, diamond] = [await look("ruby"), await look("sapphire"), await look("diamond")];
    expect(ruby[0]).toBeGreaterThan(1.5 * ruby[2]);
    expect(sapphire[2]).toBeGreaterThan(1.5 * sapphire[0]);
    expect(Math.max(...diamond) - Math.min(...diamond)).toBeLessThan(12);
    const turquoise = await look("turquoise", "cabochon");
    expect(turquoise[2]).toBeGreaterThan(1.4 * turquoise[0]);
  });
});

describe("shadeStones", () => {
  it("sees nothing of a clear stone where all round is equally bright", async () => {
    const [{ body, ...where }] = await stonesOf(single("diamond", 90));
    const stone = {
      ...where,
      body: { ...body, gem: { name: "", look: { colour: [1, 1, 1], index: 2, clear: true } } },
    } as const;
    const far = box([1, 1, 1], [500, 0, 0]);
    const scene = sceneOf({ positions: new Float64Array(), triangles: new Uint32Array() }, [stone]);
    const view = { stance: "lying", azimuth: 60, elevation: 30 } as const;
    const camera = makeCamera({ view, width: 60, height: 60, zoom: 1, centre: stone.frame.at, radius: 2 });
    const projected = projectPoints(camera, scene.mesh.positions);
    const { triangle } = rasterize(scene.mesh.triangles, projected, camera, false);
    const shade = shadeStones({
      ...{ scene, camera, supersample: 1, projected, grid: makeEchoGrid(far), colour: [0, 0, 0] },
      map: makeLightMap((_x, _y, _z, out) => out.fill(1)),
      mirrored: new Float32Array(MIRRORED * 3600),
    });
    const line = new Float32Array(180);
    let seen = 0;
    for (let at = 0; at < triangle.length; at++) {
      if (triangle[at] < 0) continue;
      const x = at % 60;
      shade(triangle[at], x, x + 1, Math.floor(at / 60), line);
      for (let k = 0; k < 3; k++) expect(line[3 * x + k]).toBeCloseTo(1, 5);
      seen++;
    }
    expect(seen).toBeGreaterThan(300);
  });
});
