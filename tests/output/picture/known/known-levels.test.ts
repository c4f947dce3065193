// Covers: src/output/picture/known/known-normals.ts
import { describe, expect, it } from "vitest";
import { openRing } from "../../../../src/index.js";
import { cornerNormals, facesOf } from "../../../../src/output/picture/corner-normals.js";
import { knownBand } from "../../../../src/output/picture/known/known-band.js";
import { knownLevels } from "../../../../src/output/picture/known/known-levels.js";
import { knownNormals } from "../../../../src/output/picture/known/known-normals.js";
import { type Picture, takePicture } from "../../../../src/output/picture/picture.js";
import { bodiesOf } from "../../../support/stages.js";

const TOLERANCE = 0.02;

const document = (outside: object) => ({
  annulet: 1,
  size: { system: "iso", value: 55 },
  tolerance: TOLERANCE,
  profile: { width: 6, thickness: 2, bore: { form: "flat", edge: 0.3 }, outside },
  pattern: {
    fit: { repeats: 9 },
    symmetry: "p1",
    regions: [{ name: "kite", path: "M 0.4 -0.2 L 0.63 -0.1 L 0.5 0.2 L 0.37 0.13 Z", height: 0.3 }],
  },
});

describe("a ring whose surfaces are known", () => {
  it("keeps the edges of a channel and of what stands in it sharp, and has each level face as the seat", async () => {
    const channel = document({ form: "channel", rail: 1, depth: 0.6, edge: 0 });
    const mesh = await openRing(channel).solid();
    const { profile, pattern, wrap } = bodiesOf(channel);
    const surfaces = [knownBand(profile, TOLERANCE), knownLevels(pattern, wrap, TOLERANCE)];
    const known = knownNormals(mesh.positions, surfaces);
    const faces = facesOf(mesh);
    const seen = new Uint8Array(mesh.triangles.length / 3).fill(1);
    const normals = cornerNormals(mesh, faces, { seen, crease: Math.PI / 4, known });
    let level = 0;
    for (let corner = 0; corner < mesh.triangles.length; corner++) {
      if (faces.angles[corner] === 0) continue;
      const face = 3 * Math.floor(corner / 3);
      const [n, f] = [normals.subarray(3 * corner, 3 * corner + 3), faces.normals.subarray(face, face + 3)];
      // No corner takes the normal from across an edge of 90°.
      expect(n[0] * f[0] + n[1] * f[1] + n[2] * f[2]).toBeGreaterThan(Math.cos(0.4));
      const [x, y] = mesh.positions.subarray(3 * mesh.triangles[corner], 3 * mesh.triangles[corner] + 2);
      const radius = Math.hypot(x, y);
      // What faces away from the axis is a level of a channel: floor, rail or top.
      if (f[0] * x + f[1] * y < 0.99 * radius) continue;
      level++;
      expect((n[0] * x + n[1] * y) / radius).toBeGreaterThan(1 - 1e-6);
    }
    expect(level).toBeGreaterThan(1000);
  });

  it("has lights with smooth rims on a dome, where those of the bare mesh are ragged", async () => {
    const ring = openRing(document({ form: "domed", rise: 0.7, edge: 0.2 }));
    const view = { stance: "lying", azimuth: 60, elevation: 0 } as const;
    const options = { width: 300, height: 300, zoom: 1.6, view, ground: "clear", supersample: 1 } as const;
    // Down the dome the strip's rim goes to one side and back again: what it goes beside that is ragged, pixels.
    expect(raggedness(await ring.picture(options))).toBeLessThan(0.1);
    expect(raggedness(takePicture(await ring.solid(), options))).toBeGreaterThan(2);
  });
});

/** Above this, of 255, is light. */
const LIGHT = 225;

function raggedness({ width, pixels }: Picture): number {
  const rim: number[] = [];
  for (let y = 78; y < 208; y++) {
    const row = (x: number) => pixels[4 * (y * width + x)];
    for (let x = 180; x < 298; x++) {
      if (row(x) >= LIGHT || row(x + 1) < LIGHT) continue;
      rim.push(x + (LIGHT - row(x)) / (row(x + 1) - row(x)));
      break;
    }
  }
  expect(rim.length).toBeGreaterThan(120);
  const way = rim.slice(1).reduce((sum, x, i) => sum + Math.abs(x - rim[i]), 0);
  return way - (2 * Math.max(...rim) - rim[0] - rim[rim.length - 1]);
}
