import { decode } from "fast-png";
import { describe, expect, it } from "vitest";
import type { Mesh } from "../../src/mesh/mesh.js";
import { renderMesh } from "./render.js";
import { readStl } from "./view.js";

/** Cube of side 2 about the origin. */
const CUBE: Mesh = {
  positions: Float64Array.from(
    [
      [-1, -1, -1, 1, -1, -1, 1, 1, -1, -1, 1, -1],
      [-1, -1, 1, 1, -1, 1, 1, 1, 1, -1, 1, 1],
    ].flat(),
  ),
  triangles: Uint32Array.from(
    [
      [0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4],
      [1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7],
    ].flat(),
  ),
};
const SMALL = { width: 80, height: 60 };

/** Pixels that show a back face whole. */
function magentaPixels(png: Uint8Array): number {
  const { data } = decode(png);
  let count = 0;
  for (let i = 0; i < data.length; i += 3) if (data[i] === 255 && data[i + 1] === 0 && data[i + 2] === 255) count++;
  return count;
}

describe("the renderer", () => {
  it("makes a PNG of the size asked for, the same each time, darker where the cube stands", () => {
    const png = renderMesh(CUBE, SMALL);
    const { width, height, data } = decode(png);
    expect([width, height]).toEqual([80, 60]);
    expect(renderMesh(CUBE, SMALL)).toEqual(png);
    const middle = (30 * 80 + 40) * 3;
    expect(data[middle]).toBeLessThan(data[0]);
  });

  it("shows no back face of a closed cube from any side", () => {
    const views = [
      [80, 10],
      [20, 190],
      [-20, 130],
      [-80, 250],
    ];
    for (const [elevation, azimuth] of views) {
      expect(magentaPixels(renderMesh(CUBE, { ...SMALL, azimuth, elevation }))).toBe(0);
    }
  });

  it("shows reversed triangles and holes in magenta", () => {
    const reversed = { ...CUBE, triangles: CUBE.triangles.toReversed() };
    expect(magentaPixels(renderMesh(reversed, SMALL))).toBeGreaterThan(500);
    // Without its lid (triangles 2 and 3) the inside is seen from above.
    const open = { ...CUBE, triangles: CUBE.triangles.filter((_, i) => i < 6 || i >= 12) };
    expect(magentaPixels(renderMesh(open, SMALL))).toBeGreaterThan(100);
  });

  it("enlarges and looks where it is told, in either stance", () => {
    const lit = (png: Uint8Array) => decode(png).data.filter((value) => value < 225).length;
    const plain = lit(renderMesh(CUBE, { ...SMALL, elevation: 0 }));
    expect(lit(renderMesh(CUBE, { ...SMALL, elevation: 0, zoom: 0.5 }))).toBeLessThan(plain);
    const side = { ...CUBE, triangles: CUBE.triangles.slice(6, 12) };
    expect(magentaPixels(renderMesh(side, { ...SMALL, up: "z", elevation: 80 }))).toBe(0);
    // The lid alone, which looks along +z: seen from −z (azimuth 180 with y up) it shows its back.
    expect(magentaPixels(renderMesh(side, { ...SMALL, up: "y", azimuth: 180, elevation: 0 }))).toBeGreaterThan(500);
  });
});

describe("the viewer's STL reader", () => {
  it("merges corners at one place and refuses a file cut short", () => {
    const bytes = new Uint8Array(84 + 50 * 12);
    const data = new DataView(bytes.buffer);
    data.setUint32(80, 12, true);
    CUBE.triangles.forEach((vertex, corner) => {
      const at = 84 + Math.floor(corner / 3) * 50 + 12 + (corner % 3) * 12;
      for (let k = 0; k < 3; k++) data.setFloat32(at + k * 4, CUBE.positions[vertex * 3 + k], true);
    });
    const mesh = readStl(bytes);
    expect(mesh.positions.length).toBe(24);
    expect(mesh.triangles.length).toBe(36);
    expect(magentaPixels(renderMesh(mesh, SMALL))).toBe(0);
    expect(() => readStl(bytes.subarray(0, 300))).toThrow(/whole/);
  });
});
