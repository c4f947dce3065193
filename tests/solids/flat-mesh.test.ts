import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import { checkSolid } from "../../src/judge/gate.js";
import { buildEdgeTable } from "../../src/mesh/edges.js";
import { signedVolume } from "../../src/mesh/volume.js";
import type { FlatBody, ReliefPolygon } from "../../src/relief/flat-body.js";
import { flatMesh } from "../../src/solids/flat-mesh.js";

/** mm of the foot below the seat. */
const SINK = 0.25;

const oblong = (left: number, right: number, low: number, high: number, h: number): Point3[] => [
  [left, low, h],
  [right, low, h],
  [right, high, h],
  [left, high, h],
];

function bodyOf(parts: Partial<FlatBody>): FlatBody {
  return {
    mode: "raised",
    names: ["part"],
    path: "pattern.regions[0]",
    made: "flat",
    upright: false,
    top: [],
    surface: undefined,
    outline: [],
    throat: [],
    seam: undefined,
    period: undefined,
    copies: 1,
    height: 1,
    rise: undefined,
    fade: undefined,
    ...parts,
  };
}

describe("a flat body's mesh", () => {
  it("of a block is closed and as large as its base times its height and foot", () => {
    const block = bodyOf({ outline: [[oblong(0, 3, 0, 2, 1)]], top: [[oblong(0, 3, 0, 2, 1)]] });
    const mesh = flatMesh(block, SINK);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 0 });
    expect(signedVolume(mesh)).toBeCloseTo(6 * 1.25, 12);
    expect(signedVolume(flatMesh(block, 1))).toBeCloseTo(6 * 2, 12);
  });

  it("of a frustum is h (A + √(A B) + B) / 3 above its foot", () => {
    const base = oblong(0, 4, 0, 4, 0);
    const top = oblong(1, 3, 1, 3, 1.5);
    // The slopes are a level ring with its own heights: outer ring low, inner ring high.
    const slopes: ReliefPolygon = [base, top.toReversed()];
    const mesh = flatMesh(bodyOf({ outline: [[base]], top: [slopes, [top]] }), SINK);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 0 });
    expect(signedVolume(mesh)).toBeCloseTo((1.5 * (16 + 8 + 4)) / 3 + 16 * SINK, 12);
  });

  it("with a hole is closed, of one handle, and lacks the hole", () => {
    const frame: ReliefPolygon = [oblong(0, 5, 0, 5, 1), oblong(1, 4, 2, 3, 1).toReversed()];
    const mesh = flatMesh(bodyOf({ outline: [frame], top: [frame] }), SINK);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 1 });
    expect(signedVolume(mesh)).toBeCloseTo((25 - 3) * 1.25, 12);
  });

  it("is open at its seam alone, on both sides of it", () => {
    const block = { outline: [[oblong(0, 3, 0, 2, 1)]], top: [[oblong(0, 3, 0, 2, 1)]] };
    const mesh = flatMesh(bodyOf({ ...block, seam: [0, 3] }), SINK);
    const { open } = buildEdgeTable(mesh);
    const at = (h: number) => mesh.positions[3 * mesh.triangles[h]];
    expect(open).toHaveLength(8);
    expect(open.map(at).filter((u) => u === 0)).toHaveLength(4);
    expect(open.map(at).filter((u) => u === 3)).toHaveLength(4);
    expect(buildEdgeTable(flatMesh(bodyOf({ ...block, seam: [-1, 2] }), SINK)).open).toEqual([]);
  });

  it("of a height map has its surface above and its own foot below", () => {
    const ring = oblong(0, 2, 0, 2, 0.5);
    const fan = (peak: number) => ({
      points: [...ring, [1, 1, peak] as Point3],
      triangles: ring.flatMap((_, i) => [i, (i + 1) % 4, 4]),
    });
    const mesh = flatMesh(bodyOf({ outline: [[ring]], surface: { top: fan(2), foot: fan(9) } }), SINK);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 0 });
    // A pyramid of 1.5 mm on a block of 0.5 mm, its foot level whatever height its points have.
    expect(signedVolume(mesh)).toBeCloseTo(4 * (1.5 / 3 + 0.5 + SINK), 12);
  });
});
