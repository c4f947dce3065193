import { describe, expect, test } from "vitest";
import { stoneOf } from "../../../src/gems/stone-of.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { meshBounds } from "../../../src/mesh/bounds.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { bezelSetting } from "../../../src/stones/settings/bezel.js";
import { ROOM } from "../../../src/stones/settings/hollow.js";
import { shapeOf } from "../../../src/stones/settings/shape-of.js";

const shape = shapeOf(stoneOf({ size: 3 }), 0.01);
const options = {
  ready: "full",
  wall: 0.5,
  height: 0.35,
  ledge: 0.3,
  opening: undefined,
  footUnder: () => -1.2,
  around: { surface: -0.5, bore: -3, above: 1.4 },
  tolerance: 0.01,
} as const;

describe("a bezel", () => {
  const {
    walls: [wall],
    hollows: [hollow],
  } = bezelSetting(shape, options);

  test("has a wall as thick as asked for, from its foot over the girdle to a share of the crown", () => {
    expect(checkSolid(wall)).toMatchObject({ closed: true, genus: 0 });
    const { min, max } = meshBounds(wall);
    expect(max[0]).toBeCloseTo(1.5 + ROOM + 0.5, 2);
    expect([min[2], max[2]]).toEqual([-1.2, expect.closeTo(0.35 * shape.crown, 9)]);
    // A cylinder, less what its rounded edge takes away: by Pappus the square less the quarter circle, turned round.
    const [outer, edge] = [1.5 + ROOM + 0.5, 0.125];
    const cut = (1 - Math.PI / 4) * edge ** 2 * 2 * Math.PI * (outer - 0.2234 * edge);
    const expected = Math.PI * outer ** 2 * (0.35 * shape.crown + 1.2) - cut;
    expect(Math.abs(signedVolume(wall) - expected)).toBeLessThan(0.01 * 2 * Math.PI * outer * 1.4);
  });

  test("leaves a ledge of the width asked for", () => {
    const floor = meshBounds(hollow).min[2];
    const radii = radiiAt(hollow, floor);
    expect(Math.min(...radii)).toBeCloseTo(1.5 - 0.3, 2);
  });

  test("is open below where asked for, no wider than its ledge leaves", () => {
    const open = bezelSetting(shape, { ...options, opening: { size: 0.95, edge: 0, round: true } });
    const below = meshBounds(open.hollows[0]).min[2];
    expect(below).toBeLessThan(-3);
    expect(Math.max(...radiiAt(open.hollows[0], below))).toBeCloseTo(1.2, 1);
  });
});

/** Distances from the axis of a mesh's corners at a height. */
function radiiAt({ positions: p }: { readonly positions: Float64Array }, z: number): number[] {
  const found: number[] = [];
  for (let i = 0; i < p.length; i += 3) {
    const radius = Math.hypot(p[i], p[i + 1]);
    if (Math.abs(p[i + 2] - z) < 1e-9 && radius > 0.1) found.push(radius);
  }
  return found;
}
