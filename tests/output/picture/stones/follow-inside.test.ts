import { describe, expect, it } from "vitest";
import type { HalfSpace } from "../../../../src/base/math/half-space.js";
import type { Point3 } from "../../../../src/base/math/point.js";
import { facetPlane } from "../../../../src/gems/polyhedron.js";
import { stoneFacets } from "../../../../src/gems/stone-mesh.js";
import { stoneOf } from "../../../../src/gems/stone-of.js";
import { followInside, mirroredShare } from "../../../../src/output/picture/stones/follow-inside.js";
import type { StoneBody } from "../../../../src/output/stones/shown-stone.js";

const WHITE: Point3 = [1, 1, 1];

function bodyOf(planes: readonly HalfSpace[], index: number, colour: Point3 = WHITE): StoneBody {
  const mesh = { positions: new Float64Array(), triangles: new Uint32Array() };
  return { mesh, planes, width: 1, round: false, gem: { name: "", look: { colour, index, clear: true } } };
}

function slab(index: number, colour: Point3): StoneBody {
  const up: HalfSpace = { normal: [0, 0, 1], offset: 0 };
  const down: HalfSpace = { normal: [0, 0, -1], offset: 2 };
  return bodyOf([up, down], index, colour);
}

/** What comes in through each surface, red. */
function follow(body: StoneBody, direction: Point3, at: Point3 = [0, 0, 0]) {
  const came: { readonly at: Point3; readonly way: Point3; readonly share: number }[] = [];
  const { mirrored, left } = followInside(body, { at, direction, normal: [0, 0, 1] }, (place, way, [share]) =>
    came.push({ at: place, way, share }),
  );
  return { mirrored, left: left[0], came };
}

describe("mirroredShare", () => {
  it("is ((n − 1) / (n + 1))² straight on, all of it grazing, and the same from both sides", () => {
    for (const n of [1.5, 2.42]) {
      expect(mirroredShare(1, 1, n)).toBeCloseTo(((n - 1) / (n + 1)) ** 2, 12);
      expect(mirroredShare(0, Math.sqrt(1 - 1 / n ** 2), n)).toBeCloseTo(1, 12);
      // At Brewster's angle, tan = n, what swings along the plane is not mirrored: half of ((n² − 1) / (n² + 1))² is left.
      const out = Math.cos(Math.atan(n));
      const inside = Math.sqrt(1 - (1 - out * out) / n ** 2);
      expect(mirroredShare(out, inside, n)).toBeCloseTo(((n * n - 1) / (n * n + 1)) ** 2 / 2, 12);
    }
  });
});

describe("followInside", () => {
  it("lets through a slab what the sums over all mirrorings say, less what the way takes", () => {
    const index = 1.8;
    const r = ((index - 1) / (index + 1)) ** 2;
    // A thickness of two widths takes 0.9² each time.
    const a = 0.81;
    const { mirrored, came } = follow(slab(index, [0.9, 0.9, 0.9]), [0, 0, -1]);
    // To three places: of what is left below 3 in 1 000 nothing is followed.
    const sum = (down: boolean) =>
      came.filter(({ way }) => way[2] < 0 === down).reduce((total, { share }) => total + share, 0);
    expect(mirrored).toBeCloseTo(r, 12);
    expect(sum(true)).toBeCloseTo(((1 - r) ** 2 * a) / (1 - r * r * a * a), 3);
    expect(sum(false)).toBeCloseTo(((1 - r) ** 2 * r * a * a) / (1 - r * r * a * a), 3);
  });

  it("shifts what comes through a slab aside as Snell's law says, and keeps its direction", () => {
    const [sine, index] = [0.6, 2.42];
    const { came } = follow(slab(index, WHITE), [sine, 0, -0.8]);
    const inside = sine / index;
    expect(came[0].at[0]).toBeCloseTo((2 * inside) / Math.sqrt(1 - inside ** 2), 12);
    expect(came[0].at[2]).toBeCloseTo(-2, 12);
    expect(came[0].way[0]).toBeCloseTo(sine, 12);
    expect(came[0].way[2]).toBeCloseTo(-0.8, 12);
  });

  it("keeps inside what meets a facet beyond the critical angle", () => {
    // A ridge of 90° turns light back: each side is met at 45°, beyond 24.4° of diamond and within 50.3° of an index of 1.3.
    const half = Math.SQRT1_2;
    const ridge: HalfSpace[] = [
      { normal: [0, 0, 1], offset: 0 },
      { normal: [half, 0, -half], offset: 1 },
      { normal: [-half, 0, -half], offset: 1 },
    ];
    const { came } = follow(bodyOf(ridge, 2.42), [0, 0, -1], [0.3, 0, 0]);
    expect(came[0].at[0]).toBeCloseTo(-0.3, 12);
    expect(came[0].at[2]).toBeCloseTo(0, 12);
    expect(came[0].way[2]).toBeCloseTo(1, 12);
    expect(follow(bodyOf(ridge, 1.3), [0, 0, -1], [0.3, 0, 0]).came[0].way[2]).toBeLessThan(0);
  });

  it("loses no light in a brilliant, and leaves little of it unfollowed", () => {
    const facets = stoneFacets(stoneOf({ cut: "round", size: 1 }));
    const planes = facets.facets.map((facet) => facetPlane(facets, facet));
    const table = Math.max(...facets.points.map((point) => point[2]));
    let unfollowed = 0;
    for (let i = 0; i < 200; i++) {
      const at: Point3 = [0.2 * Math.cos(2.4 * i), (0.2 * Math.sin(2.4 * i) * i) / 200, table];
      const lean = 0.6 * Math.sin(i);
      const { mirrored, left, came } = follow(bodyOf(planes, 2.42), [lean, 0, -Math.sqrt(1 - lean * lean)], at);
      const sum = came.reduce((total, { share }) => total + share, 0);
      expect(mirrored + left + sum).toBeCloseTo(1, 12);
      unfollowed += left / 200;
    }
    expect(unfollowed).toBeLessThan(0.15);
  });
});
