// Covers: src/output/picture/develop.ts, src/output/picture/camera.ts, src/output/picture/options.ts
// Covers: src/output/picture/picture-schema.ts
// Covers: src/output/picture/png.ts, src/output/picture/raster.ts, src/output/picture/shade.ts
// Covers: src/output/picture/views.ts, src/output/picture/pixel-view.ts
import { decode } from "fast-png";
import { describe, expect, it } from "vitest";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { transformMesh } from "../../../src/mesh/transform.js";
import { PICTURE_DEFAULTS, type PictureOptions } from "../../../src/output/picture/options.js";
import { openStudio, type Picture, takePicture } from "../../../src/output/picture/picture.js";
import { encodePng } from "../../../src/output/picture/png.js";
import { turntable, views } from "../../../src/output/picture/views.js";
import { failureOf } from "../../support/failure-of.js";
import { box, meshOf, sphere, torus } from "../../support/meshes.js";

const SMALL: PictureOptions = { width: 120, height: 90 };

function alphaSum({ pixels }: Picture): number {
  let sum = 0;
  for (let i = 3; i < pixels.length; i += 4) sum += pixels[i] / 255;
  return sum;
}

function pixel({ width, pixels }: Picture, x: number, y: number): readonly number[] {
  return [...pixels.subarray(4 * (y * width + x), 4 * (y * width + x) + 4)];
}

function magentaPixels({ pixels }: Picture): number {
  let count = 0;
  for (let i = 0; i < pixels.length; i += 4) {
    if (pixels[i] === 255 && pixels[i + 1] === 0 && pixels[i + 2] === 255) count++;
  }
  return count;
}

describe("takePicture", () => {
  it("covers the disc that a ball covers in perspective", () => {
    // A ball of radius r at distance d is seen within the cone of sine r / d: on the screen tan = r / √(d² − r²). The
    // camera puts that cone's rim on a share of the smaller side, whatever the ball's size.
    for (const radius of [0.01, 10, 4000]) {
      const picture = takePicture(sphere(radius, 90, 180), { width: 400, height: 300, ground: "clear" });
      const wide = [...Array(300).keys()].filter((y) => pixel(picture, 200, y)[3] > 127).length;
      expect(alphaSum(picture)).toBeGreaterThan(0.995 * (Math.PI / 4) * wide ** 2);
      expect(alphaSum(picture)).toBeLessThan(1.015 * (Math.PI / 4) * wide ** 2);
      expect(wide / 300).toBeCloseTo(0.88, 1);
    }
  });

  it("leaves no crack between triangles, coarse ones and ones far smaller than a sample", () => {
    for (const ball of [sphere(5, 6, 9), sphere(5, 40, 80), sphere(5, 300, 600)]) {
      const picture = takePicture(ball, { ...SMALL, ground: "clear" });
      const alpha = (x: number, y: number) => pixel(picture, x, y)[3];
      // What is covered all round, two pixels far, is covered whole.
      const around = [-2, -1, 0, 1, 2];
      let inside = 0;
      for (let y = 2; y < 88; y++) {
        for (let x = 2; x < 118; x++) {
          if (!around.every((dy) => around.every((dx) => (dx === 0 && dy === 0) || alpha(x + dx, y + dy) > 0)))
            continue;
          expect(alpha(x, y)).toBe(255);
          inside++;
        }
      }
      expect(inside).toBeGreaterThan(1500);
    }
  });

  it("gives the same pixels again, and the same for triangles in another order", () => {
    const ring = torus(9, 1.5, 60, 24);
    const picture = takePicture(ring, SMALL);
    expect(takePicture(ring, SMALL)).toEqual(picture);
    const count = ring.triangles.length / 3;
    const turned: Mesh = {
      positions: ring.positions,
      triangles: Uint32Array.from(
        { length: 3 * count },
        (_, i) => ring.triangles[3 * (count - 1 - Math.floor(i / 3)) + (i % 3)],
      ),
    };
    const other = takePicture(turned, SMALL);
    const apart = picture.pixels.map((value, i) => Math.abs(value - other.pixels[i]));
    expect(Math.max(...apart)).toBeLessThanOrEqual(2);
  });

  it("gives the same from a studio that took other pictures before", () => {
    const ring = torus(9, 1.5, 60, 24);
    const shoot = openStudio(ring);
    shoot({ ...SMALL, view: "top", material: "wax" });
    expect(shoot(SMALL)).toEqual(takePicture(ring, SMALL));
  });

  it("follows the ring when it is turned or scaled", () => {
    const ring = torus(9, 1.5, 96, 24);
    const picture = takePicture(ring, { ...SMALL, view: "lying" });
    const scaled = transformMesh(ring, [3, 0, 0, 0, 0, 3, 0, 0, 0, 0, 3, 0, 50, -20, 7, 1]);
    const turned = transformMesh(ring, [0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]);
    for (const other of [scaled, turned]) {
      const { pixels } = takePicture(other, { ...SMALL, view: "lying" });
      const apart = pixels.reduce((sum, value, i) => sum + Math.abs(value - picture.pixels[i]), 0) / pixels.length;
      expect(apart).toBeLessThan(0.5);
    }
  });

  it("shows each metal in its colour and a shadow that darkens the paper", () => {
    const ring = torus(9, 2, 96, 32);
    const mean = (material: string) => {
      const { pixels } = takePicture(ring, { ...SMALL, material, ground: "clear" });
      const sums = [0, 0, 0];
      for (let i = 0; i < pixels.length; i += 4)
        if (pixels[i + 3] === 255) for (let k = 0; k < 3; k++) sums[k] += pixels[i + k];
      return sums;
    };
    const [silver, gold, red, platinum] = ["ag999", "au999", "au750-red", "pt999"].map(mean);
    expect(gold[2] / gold[0]).toBeLessThan(0.75 * (silver[2] / silver[0]));
    expect(red[1] / red[0]).toBeLessThan(gold[1] / gold[0]);
    expect(platinum[1]).toBeLessThan(0.93 * silver[1]);
    const [shadow, plain] = (["shadow", "plain"] as const).map((ground) =>
      takePicture(ring, { ...SMALL, view: "lying", ground }),
    );
    const light = ({ pixels }: Picture) => pixels.reduce((sum, value) => sum + value, 0);
    expect(light(shadow)).toBeLessThan(0.99 * light(plain));
    expect(pixel(shadow, 0, 0)).toEqual(pixel(plain, 0, 0));
  });

  it("is lighter at a higher exposure and softer in satin", () => {
    const ball = sphere(5, 60, 120);
    const middle = (options: PictureOptions) => takePicture(ball, { ...SMALL, ground: "clear", ...options });
    const sum = ({ pixels }: Picture) => pixels.reduce((total, value) => total + value, 0);
    expect(sum(middle({ exposure: 1.5 }))).toBeGreaterThan(1.05 * sum(middle({})));
    const steepest = ({ pixels }: Picture) =>
      Math.max(
        ...pixels.map((value, i) =>
          i >= 4 && pixels[i] > 0 && pixels[i - 1] === 255 && i % 4 === 0 && pixels[i + 3] === 255
            ? Math.abs(value - pixels[i - 4])
            : 0,
        ),
      );
    expect(steepest(middle({ finish: "satin" }))).toBeLessThan(0.6 * steepest(middle({})));
  });

  it("shows triangles from behind only when asked, in magenta", () => {
    const cube = box();
    const open: Mesh = { ...cube, triangles: cube.triangles.slice(6) };
    for (const view of ["three-quarter", "lying", "top"] as const) {
      expect(magentaPixels(takePicture(cube, { ...SMALL, view, backs: "magenta" }))).toBe(0);
      expect(magentaPixels(takePicture(open, { ...SMALL, view }))).toBe(0);
    }
    // Without the side of −x, its inside is seen from there.
    expect(
      magentaPixels(
        takePicture(open, { ...SMALL, view: { stance: "standing", azimuth: -90, elevation: 10 }, backs: "magenta" }),
      ),
    ).toBeGreaterThan(300);
  });

  it("looks from where the views say", () => {
    // Three balls: one at the top of the ring (+y), one towards +x, one towards the open end (+z).
    const at = (x: number, y: number, z: number) =>
      transformMesh(sphere(1, 20, 40), [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, y, z, 1]);
    const where = (mark: Mesh, view: keyof typeof views) => {
      const corners = meshOf(
        [
          [-6, -6, -6],
          [6, 6, 6],
        ],
        [],
      );
      const both: Mesh = {
        positions: Float64Array.from([...corners.positions, ...mark.positions]),
        triangles: mark.triangles.map((index) => index + 2),
      };
      const picture = takePicture(both, { width: 100, height: 100, view, ground: "clear" });
      let [x, y, sum] = [0, 0, 0];
      for (let i = 0; i < 10_000; i++) {
        const alpha = picture.pixels[4 * i + 3];
        x += alpha * ((i % 100) - 49.5);
        y -= alpha * (Math.floor(i / 100) - 49.5);
        sum += alpha;
      }
      return [Math.round(x / sum / 5), Math.round(y / sum / 5)].map(Math.sign);
    };
    expect(where(at(0, 5, 0), "front")).toEqual([0, 1]);
    expect(where(at(5, 0, 0), "front")).toEqual([1, 0]);
    expect(where(at(0, 0, 5), "front")).toEqual([0, 0]);
    expect(where(at(0, 5, 0), "side")).toEqual([0, 1]);
    expect(where(at(0, 0, 5), "side")).toEqual([-1, 0]);
    expect(where(at(0, 5, 0), "top")).toEqual([0, 0]);
    expect(where(at(0, 5, 0), "lying")[0]).toBe(0);
    expect(where(at(0, 0, 5), "lying")).toEqual([0, 1]);
  });

  it("refuses what makes no picture, and says all of it", () => {
    const ball = sphere(1, 6, 12);
    const failure = failureOf(() => takePicture(ball, { width: 0, zoom: -1, supersample: 9, material: "unobtainium" }));
    expect(failure.problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "option-invalid width",
      "option-invalid zoom",
      "option-invalid supersample",
      "material-unknown material",
    ]);
    expect(failureOf(() => takePicture(ball, { width: 8000, height: 8000 })).path).toBe("supersample");
    expect(failureOf(() => takePicture(ball, { view: "inside" as "top" })).code).toBe("view-unknown");
    expect(failureOf(() => takePicture(ball, { view: { stance: "lying", azimuth: 0, elevation: 100 } })).path).toBe(
      "view.elevation",
    );
    expect(failureOf(() => takePicture(meshOf([], []))).code).toBe("mesh-without-extent");
    expect(failureOf(() => takePicture(meshOf([[0, 0, Number.NaN]], []))).code).toBe("mesh-malformed");
  });

  it("refuses options that nobody reads, and types that are none", () => {
    const ball = sphere(1, 6, 12);
    const failure = (options: object) => failureOf(() => takePicture(ball, options));
    expect(failure({ widht: 10 })).toMatchObject({ code: "option-unknown", hint: 'did you mean "width"?' });
    expect(failure({ view: "frnt" })).toMatchObject({ code: "view-unknown", hint: 'did you mean "front"?' });
    expect(failure({ finish: "matt", material: 3, lookAt: "top" }).problems.map(({ path }) => path)).toEqual([
      "lookAt",
      "material",
      "finish",
    ]);
    expect(failure({ material: { name: "ours", colour: [1, 2, 0], metal: true } }).path).toBe("material.colour[1]");
    expect(failureOf(() => takePicture(ball, null as unknown as object)).code).toBe("option-invalid");
  });

  it("fills in defaults for what is undefined", () => {
    expect(takePicture(sphere(1, 6, 12), { ...SMALL, zoom: undefined, material: undefined })).toEqual(
      takePicture(sphere(1, 6, 12), { ...SMALL, zoom: PICTURE_DEFAULTS.zoom, material: PICTURE_DEFAULTS.material }),
    );
  });
});

describe("turntable", () => {
  it("goes round once in even steps from the view itself", () => {
    const turn = turntable(views.lying, 8);
    expect(turn.map(({ azimuth }) => azimuth)).toEqual([90, 45, 0, -45, -90, -135, -180, -225]);
    expect(turn.every(({ stance, elevation }) => stance === "lying" && elevation === 28)).toBe(true);
  });

  it("ends where it began: a ring of eight like parts looks alike in each of eight frames", () => {
    const ring = torus(9, 1.5, 8, 24);
    const frames = turntable(views.lying, 8).map((view) => takePicture(ring, { ...SMALL, view }));
    for (const frame of frames) {
      const apart = frame.pixels.reduce((sum, value, i) => sum + Math.abs(value - frames[0].pixels[i]), 0);
      expect(apart / frame.pixels.length).toBeLessThan(0.5);
    }
  });
});

describe("encodePng", () => {
  it("writes what another decoder reads back, with alpha only where it is needed", () => {
    for (const [ground, channels] of [
      ["shadow", 3],
      ["clear", 4],
    ] as const) {
      const picture = takePicture(sphere(3, 20, 40), { ...SMALL, ground });
      const read = decode(encodePng(picture));
      expect([read.width, read.height, read.channels, read.depth]).toEqual([120, 90, channels, 8]);
      const pixels = channels === 4 ? picture.pixels : picture.pixels.filter((_, i) => i % 4 !== 3);
      expect(Buffer.compare(Buffer.from(read.data.buffer), Buffer.from(pixels))).toBe(0);
    }
  });
});

describe("the bytes of a PNG", () => {
  it.each<[string, unknown]>([
    ["nothing", undefined],
    ["no pixels", { width: 2, height: 1 }],
    ["too few", { width: 2, height: 1, pixels: new Uint8Array(4) }],
    ["half a pixel", { width: 0.5, height: 2, pixels: new Uint8Array(4) }],
    ["a list", { width: 1, height: 1, pixels: [0, 0, 0, 0] }],
  ])("are not made of %s", (_, picture) => {
    expect(failureOf(() => encodePng(picture as never)).code).toBe("picture-invalid");
  });
});
