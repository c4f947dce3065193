// Covers: src/stones/settings/prong-parts.ts
import { describe, expect, test } from "vitest";
import { checkSolid } from "../../../src/judge/gate.js";
import { meshBounds } from "../../../src/mesh/bounds.js";
import { fromSpace } from "../../../src/stones/frame.js";
import { ROOM } from "../../../src/stones/settings/hollow.js";
import { collarReach, prongSizes } from "../../../src/stones/settings/prongs.js";
import { setOnFlat } from "../../support/set-group.js";

describe("a stone held by prongs", () => {
  test.each([3, 4, 6, 8])("has %s of them on a collar", (count) => {
    const { parts } = setOnFlat({ size: 5, level: 2.5, setting: { form: "prongs", count } }, { count: 1 });
    const walls = parts("walls");
    expect(walls.length).toBe(count + 1);
    expect(walls.every((wall) => checkSolid(wall).closed)).toBe(true);
    expect(parts("clears").length).toBe(1);
  });

  test("has prongs that the girdle goes into by their notch, seen from above", () => {
    const { set } = setOnFlat({ size: 3, level: 1.6, setting: { form: "prongs" } }, { count: 1 });
    const sizes = prongSizes(set[0].shape, { tip: 0.6, height: 0.7, notch: 0.4 }, -1.5);
    const inner = sizes.away - sizes.girdle;
    expect(-inner / (2 * sizes.girdle)).toBeCloseTo(0.4, 9);
    expect(sizes.foot).toBeCloseTo(0.3, 9);
    expect(collarReach(sizes)).toBeGreaterThanOrEqual(ROOM + 0.2);
  });

  test("notches prongs for the crown and pavilion with the stone's room, and leaves their tips", () => {
    const { set, parts } = setOnFlat({ size: 3, level: 1.6, setting: { form: "prongs" } }, { count: 1 });
    const [{ shape, frame }] = set;
    const [notch] = parts("hollows");
    expect(checkSolid(notch)).toMatchObject({ closed: true, genus: 0 });
    const { positions: p, triangles } = notch;
    const local = Array.from({ length: p.length / 3 }, (_, i) =>
      fromSpace(frame, [p[3 * i], p[3 * i + 1], p[3 * i + 2]]),
    );
    let nearest = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < triangles.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => local[triangles[i + k]]);
      const low = Math.min(a[2], b[2], c[2]);
      const high = Math.max(a[2], b[2], c[2]);
      // Bearing, wall and crown: neither the pilot below nor what is over the table, nor flat ends.
      if (low < -shape.band - shape.pavilion / 2 || high > shape.crown + 2 * ROOM || high - low < 1e-9) continue;
      const [u, v] = [b, c].map((point) => point.map((x, q) => x - a[q]));
      const normal = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
      const length = Math.hypot(...normal);
      for (const corner of shape.corners) {
        if (corner[2] < 0 && low >= 0) continue;
        if (corner[2] > 0 && low < -shape.band) continue;
        nearest = Math.max(nearest, normal.reduce((sum, n, q) => sum + n * (corner[q] - a[q]), 0) / length);
      }
    }
    expect(nearest).toBeLessThan(-ROOM + 1e-6);
    const top = Math.max(...local.map(([, , z]) => z));
    const widest = Math.max(...local.filter(([, , z]) => z > top - 1e-9).map(([x, y]) => Math.hypot(x, y)));
    expect(widest).toBeLessThan(0.62 * 1.5 + 2 * ROOM);
  });

  test("shares prongs with its neighbours where asked for", () => {
    const own = setOnFlat({ size: 2, level: 0.8, setting: { form: "prongs" } }, { count: 7, from: 58.5, to: 121.5 });
    const shared = setOnFlat(
      { size: 2, level: 0.8, setting: { form: "prongs", shared: true } },
      { count: 7, from: 58.5, to: 121.5 },
    );
    expect(own.parts("walls").length - 7).toBe(28);
    expect(shared.parts("walls").length - 7).toBe(16);
    const { max } = meshBounds(shared.parts("walls")[0]);
    expect(max.every(Number.isFinite)).toBe(true);
  });
});
