/** Runs together: shared junctions, symmetry, what is reported and warned of. */
import { describe, expect, it } from "vitest";
import type { Warning } from "../../src/base/errors.js";
import { type FriezeName, friezeGroup } from "../../src/base/frieze/symmetry.js";
import type { Point2 } from "../../src/base/math/point.js";
import type { Bead } from "../../src/beads/bead.js";
import { failureOf } from "../band/profile/specs.js";
import { bodiesOf } from "../support/stages.js";

const REPEATS = 8;

const band = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  tolerance: 0.02,
  profile: { width: 8, thickness: 2, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 0 } },
};

const patterned = (symmetry: FriezeName, beads: readonly object[], cover = 360) =>
  bodiesOf({ ...band, pattern: { symmetry, cover, fit: { repeats: REPEATS } }, beads });

const codes = (warnings: readonly Warning[]) => warnings.map(({ code }) => code);

/** Beads as (u in tiles, v in mm, diameter), the tile's number left out. */
function inTile({ parts, wrap, fit }: ReturnType<typeof bodiesOf>): { at: Point2; diameter: number }[] {
  return parts.spheres.map(({ centre, radius }) => {
    const [u, v] = wrap.inverse(...centre);
    return { at: [u / (fit?.tileWidth as number), v] as Point2, diameter: 2 * radius };
  });
}

/** How often a bead of that size is on each image of every bead under the group, whole tiles aside. */
function imagesFound(bodies: ReturnType<typeof bodiesOf>, symmetry: FriezeName): Set<number> {
  const beads = inTile(bodies);
  const counts = new Set<number>();
  for (const { flipX, flipY, shift } of friezeGroup(symmetry).operations) {
    for (const { at, diameter } of beads) {
      const [u, v] = [(flipX ? -at[0] : at[0]) + shift, flipY ? -at[1] : at[1]];
      const same = beads.filter(
        (other) =>
          Math.abs(other.at[0] - u - REPEATS * Math.round((other.at[0] - u) / REPEATS)) < 1e-4 &&
          Math.abs(other.at[1] - v) < 1e-3 &&
          Math.abs(other.diameter - diameter) < 1e-4,
      );
      counts.add(same.length);
    }
  }
  return counts;
}

/** Beads nearest to a place of the first tile. */
function beadsAt(spheres: readonly Bead[], bodies: ReturnType<typeof bodiesOf>, at: Point2, reach: number): number {
  const place = bodies.wrap.forward(at[0] * (bodies.fit?.tileWidth as number), at[1], 0);
  return spheres.filter(({ centre }) => Math.hypot(...centre.map((x, k) => x - place[k])) < reach).length;
}

const bead = { diameter: 0.4, pitch: 1.05 };
const share = { ...bead, junctions: "share" };

describe("runs that share their junctions", () => {
  // Two diagonals a tile that cross in its middle and meet their neighbours' at the tile's borders.
  const rising = { path: "M 0 -0.3 L 1 0.3" };
  const falling = { path: "M 0 0.3 L 1 -0.3" };
  const uncross = "M 0.2 -0.3 L 0.85 0.25";
  const cross = "M 0.25 0.3 L 0.7 -0.2";

  it("have one bead on each crossing of a lattice under p1, and none crowd there", () => {
    const runs = (how: object) => [
      { along: { path: uncross }, ...how },
      { along: { path: cross }, ...how },
    ];
    const left = patterned("p1", runs(bead));
    const shared = patterned("p1", runs(share));
    // u = 0.2 + 0.65 s = 0.25 + 0.45 t and −0.3 + 0.55 s = 0.3 − 0.5 t.
    const s = (0.05 * 0.5 + 0.45 * 0.6) / (0.65 * 0.5 + 0.45 * 0.55);
    const tile = shared.fit?.tileWidth as number;
    const at: Point2 = [0.2 + 0.65 * s, (-0.3 + 0.55 * s) * tile];
    expect(beadsAt(shared.parts.spheres, shared, at, 1e-4)).toBe(1);
    expect(beadsAt(shared.parts.spheres, shared, at, 0.3)).toBe(1);
    expect(codes(left.warnings)).toContain("beads-crowded");
    expect(codes(shared.warnings)).not.toContain("beads-crowded");
    const [first, second] = shared.parts.runs;
    expect(first.count % REPEATS).toBe(0);
    // One bead a tile is counted with the first run alone.
    expect(second.choices.find(({ made }) => made)?.count).toBe(second.count);
    expect(first.count + second.count).toBe(shared.parts.beads.length);
  });

  it("have one bead on each crossing under p2mm, and are as symmetric", () => {
    const lattice = patterned("p2mm", [
      { along: { path: "M 0 0.35 L 0.5 -0.2" }, ...share },
      { along: { path: "M 0.5 0 H 0.75" }, ...share },
    ]);
    expect(imagesFound(lattice, "p2mm")).toEqual(new Set([1]));
    // The diagonals and their images cross on the middle line.
    const u = 0.5 * (0.35 / 0.55);
    for (const at of [
      [u, 0],
      [1 - u, 0],
    ] as Point2[]) {
      expect(beadsAt(lattice.parts.spheres, lattice, at, 1e-3)).toBe(1);
      expect(beadsAt(lattice.parts.spheres, lattice, at, 0.3)).toBe(1);
    }
  });

  it("share beads over the tile's border and with the circle that they cross", () => {
    const lattice = patterned("p1", [
      { along: rising, ...share },
      { along: falling, ...share },
      { along: { v: 0 }, ...share },
    ]);
    for (const at of [
      [0.5, 0],
      [1.5, 0],
    ] as Point2[]) {
      expect(beadsAt(lattice.parts.spheres, lattice, at, 1e-3)).toBe(1);
      expect(beadsAt(lattice.parts.spheres, lattice, at, 0.35)).toBe(1);
    }
    expect(lattice.parts.runs[2].run).toBe("v 0");
    expect(lattice.parts.runs[2].count % REPEATS).toBe(0);
  });

  it("share with the end of a run that does not ask, and leave it as it is", () => {
    const ends = { along: { path: "M 0.5 0 V 0.4" }, ...bead };
    const alone = patterned("p1", [ends]);
    const both = patterned("p1", [ends, { along: { v: 0 }, ...share }]);
    expect(both.parts.runs[0].count).toBe(alone.parts.runs[0].count);
    expect(beadsAt(both.parts.spheres, both, [0.5, 0], 0.3)).toBe(1);
    expect(codes(both.warnings)).not.toContain("beads-crowded");
  });

  it("are circles as before where nothing meets them", () => {
    const plain = bodiesOf({ ...band, beads: [{ along: { v: 0 }, ...bead }] });
    const asked = bodiesOf({ ...band, beads: [{ along: { v: 0 }, ...share }] });
    expect(asked.parts.spheres).toEqual(plain.parts.spheres);
  });

  it("share on a pattern that stops too", () => {
    const part = patterned(
      "p1",
      [
        { along: rising, ...share },
        { along: falling, ...share },
      ],
      200,
    );
    for (let tile = 0; tile < REPEATS; tile++) expect(beadsAt(part.parts.spheres, part, [tile + 0.5, 0], 0.3)).toBe(1);
  });
});

describe("what is symmetric", () => {
  const corner = "M 0.1 0.05 L 0.25 0.3 L 0.4 0.1";
  const groups: readonly FriezeName[] = ["p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm"];

  it.each(groups)("stays so under %s, whatever is asked", (symmetry) => {
    for (const how of [{ corners: "on" }, { corners: "split" }, { to: 0.25 }, { alternate: 0.25, corners: "on" }]) {
      const found = imagesFound(patterned(symmetry, [{ along: { path: corner }, ...bead, ...how }]), symmetry);
      expect(found).toEqual(new Set([1]));
    }
  });

  it.each(["p1m1", "p2mm", "p2mg"] as const)("stays so under %s where lines are joined over a mirror", (symmetry) => {
    for (const how of [{ to: 0.25 }, { alternate: 0.25 }, { corners: "split", to: 0.3 }]) {
      const path = "M 0 0.1 L 0.18 0.3 L 0.21 0.3";
      expect(imagesFound(patterned(symmetry, [{ along: { path }, ...bead, ...how }]), symmetry)).toEqual(new Set([1]));
    }
  });

  it("stays so on loops about a half turn and on strands under a glide", () => {
    const oval = "M 0.3 0 C 0.3 0.3 -0.3 0.3 -0.3 0 C -0.3 -0.3 0.3 -0.3 0.3 0 Z";
    const wave = "M 0 0 C 0.15 0.4 0.35 0.4 0.5 0 C 0.65 -0.4 0.85 -0.4 1 0";
    for (const how of [{ to: 0.25 }, { alternate: 0.25 }]) {
      for (const [symmetry, path] of [
        ["p2mm", oval],
        ["p2", oval],
        ["p11g", wave],
      ] as const) {
        expect(imagesFound(patterned(symmetry, [{ along: { path }, ...bead, ...how }]), symmetry)).toEqual(
          new Set([1]),
        );
      }
    }
  });
});

describe("what is told of a run", () => {
  it("is what one fewer and one more would come to", () => {
    const { parts } = bodiesOf({ ...band, beads: [{ along: { v: 0 }, ...bead }] });
    const [{ count, choices, diameter }] = parts.runs;
    expect(choices.map((choice) => choice.count)).toEqual([count - 1, count, count + 1]);
    expect(choices.map(({ made }) => made)).toEqual([false, true, false]);
    for (const choice of choices) {
      expect(choice.ratio).toBeCloseTo(choice.spacing / diameter, 12);
      expect(choice.spacing * choice.count).toBeCloseTo(choices[1].spacing * count, 9);
    }
  });

  it("is the ratio to the local diameters, and what overlaps or gaps against them", () => {
    const grown = { along: { v: 0 }, diameter: 0.3, to: 0.6 };
    const { parts, warnings } = bodiesOf({ ...band, beads: [grown] });
    expect(parts.runs[0]).toMatchObject({ diameter: 0.3, diameterMin: 0.3, diameterMax: 0.6 });
    expect(parts.runs[0].ratio).toBeCloseTo(1.05, 1);
    expect(warnings).toEqual([]);
    expect(codes(bodiesOf({ ...band, beads: [{ ...grown, pitch: 0.8 }] }).warnings)).toEqual(["beads-overlap"]);
    expect(codes(bodiesOf({ ...band, beads: [{ ...grown, pitch: 1.4 }] }).warnings)).toEqual(["beads-gap"]);
  });

  it("is the largest bead's reach for the headroom", () => {
    const { parts, profile } = bodiesOf({ ...band, beads: [{ along: { v: 0 }, diameter: 0.3, to: 0.6, count: 100 }] });
    expect(parts.reliefRadius).toBeCloseTo(profile.outsideRadius + 0.3, 9);
  });

  it("is where a corner pinches the beads beside it", () => {
    const spike = { along: { path: "M 0.3 0 L 0.5 0.3 L 0.55 0" }, ...bead };
    expect(codes(patterned("p1", [{ ...spike, corners: "on" }]).warnings)).toContain("beads-pinched");
    expect(codes(patterned("p1", [{ ...spike, corners: "split" }]).warnings)).not.toContain("beads-pinched");
  });
});

describe("runs round a circle", () => {
  it("of several sizes take no notice of corners, as a circle has none", () => {
    for (const size of [{ to: 0.3 }, { alternate: 0.3 }]) {
      const centres = (corners: string) =>
        bodiesOf({ ...band, beads: [{ along: { v: 0.5 }, ...bead, ...size, corners }] }).parts.spheres;
      expect(centres("on")).toEqual(centres("pass"));
      expect(centres("split")).toEqual(centres("pass"));
    }
  });
});

describe("runs that cannot be", () => {
  it("are refused both graduated and alternating", () => {
    const run = { along: { v: 0 }, diameter: 0.4, to: 0.5, alternate: 0.3 };
    expect(failureOf(() => bodiesOf({ ...band, beads: [run] }))).toMatchObject({
      code: "bead-sizes",
      path: "beads[0].alternate",
    });
  });

  it("are refused with a count where corners or junctions part them", () => {
    for (const how of [{ corners: "on" }, { corners: "split" }, { junctions: "share" }]) {
      const run = { along: { v: 0 }, diameter: 0.4, count: 9, ...how };
      expect(failureOf(() => bodiesOf({ ...band, beads: [run] }))).toMatchObject({
        code: "bead-count",
        path: "beads[0].count",
      });
    }
  });

  it("are refused along lines of no length, of one size or graduated, and never come to no number of beads", () => {
    for (const path of ["M 0.5 0 L 0.50001 0", "M 0 0 L 0 0.00004"]) {
      for (const size of [{}, { to: 0.2 }, { alternate: 0.2 }]) {
        const run = { along: { path }, diameter: 0.4, ...size };
        expect(failureOf(() => patterned("p2mm", [run]))).toMatchObject({
          code: "bead-line-too-short",
          path: "beads[0]",
        });
      }
    }
  });
});

describe("a circle at v beside a rail", () => {
  it("is warned of where the wall stands into its beads, since v is no w", () => {
    const channel = {
      ...band,
      profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.8, depth: 0.6 } },
    };
    const codesOf = (v: number) => {
      const { warnings } = bodiesOf({ ...channel, beads: [{ along: { v }, diameter: 0.5 }] });
      return warnings.map(({ code }) => code);
    };
    expect(codesOf(2.15)).toContain("beads-in-wall");
    expect(codesOf(1.8)).not.toContain("beads-in-wall");
  });
});
