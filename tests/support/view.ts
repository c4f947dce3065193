/**
 * Looks at a binary STL: `node tests/support/view.mjs ring.stl out.png [azimuth elevation zoom up]`,
 * angles in degrees, up `y` (standing) or `z` (lying).
 * The reader is its own, so that what a slicer would see is what is shown.
 */
import { readFileSync, writeFileSync } from "node:fs";
import type { Mesh } from "../../src/mesh/mesh.js";
import { renderMesh } from "./render.js";

/** Bytes before the first triangle, and bytes a triangle, of a binary STL. */
const HEADER_BYTES = 84;
const TRIANGLE_BYTES = 50;

/** Runs the command with its arguments. */
export function view(args: readonly string[]): void {
  const [input, output, ...rest] = args;
  const [azimuth, elevation, zoom] = rest.slice(0, 3).map(Number);
  const up = rest[3];
  if (
    output === undefined ||
    rest.length > 4 ||
    rest.slice(0, 3).some((text) => !Number.isFinite(Number(text))) ||
    !(up === undefined || up === "y" || up === "z")
  ) {
    throw new Error("usage: node tests/support/view.mjs ring.stl out.png [azimuth elevation zoom up]");
  }
  const mesh = readStl(readFileSync(input));
  const options = Object.entries({ azimuth, elevation, zoom, up }).filter(([, value]) => value !== undefined);
  writeFileSync(output, renderMesh(mesh, Object.fromEntries(options)));
  console.error(`${input}: ${mesh.triangles.length / 3} triangles, ${mesh.positions.length / 3} vertices → ${output}`);
}

/** Reads a binary STL and merges corners whose float32 coordinates are equal. */
export function readStl(bytes: Uint8Array): Mesh {
  const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = bytes.byteLength < HEADER_BYTES ? -1 : data.getUint32(80, true);
  if (bytes.byteLength !== HEADER_BYTES + count * TRIANGLE_BYTES) throw new Error("this is no whole binary STL");
  const positions: number[] = [];
  const triangles = new Uint32Array(count * 3);
  const known = new Map<string, number>();
  for (let corner = 0; corner < count * 3; corner++) {
    const at = HEADER_BYTES + Math.floor(corner / 3) * TRIANGLE_BYTES + 12 + (corner % 3) * 12;
    // Adding zero turns −0 into 0, so that both merge.
    const point = [0, 4, 8].map((offset) => data.getFloat32(at + offset, true) + 0);
    const key = point.join();
    let vertex = known.get(key);
    if (vertex === undefined) {
      vertex = positions.length / 3;
      known.set(key, vertex);
      positions.push(...point);
    }
    triangles[corner] = vertex;
  }
  return { positions: Float64Array.from(positions), triangles };
}
