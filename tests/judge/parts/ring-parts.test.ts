// Covers: src/judge/parts/members.ts, src/judge/parts/body-regions.ts, src/judge/parts/band-paths.ts
import { beforeAll, describe, expect, it } from "vitest";
import type { Point3 } from "../../../src/base/math/point.js";
import { bandPartsOf } from "../../../src/judge/parts/band-paths.js";
import { regionPath } from "../../../src/judge/parts/body-regions.js";
import type { RingParts } from "../../../src/judge/parts/ring-parts.js";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { openInside } from "../../../src/ring/open-ring.js";
import { fontFiles, nameOf } from "../../support/fonts.js";

const BORE = 8.5;
const SEAT = 9.9;
const REPEATS = 10;

/** One along the tile, and one across it, mm: it fills the seat. */
const TILE = (2 * Math.PI * SEAT) / REPEATS;
const ACROSS = 4.4;

/** Tiles of which every face is looked at. */
const LOOKED = 2;
const TURN = 2 * Math.PI;

let parts: RingParts;
beforeAll(async () => {
  parts = (await ring.ask(["ringParts"], { detail: "draft" })).answers.ringParts;
});

/**
 * A channel of ten tiles on a seat of radius 9.9: two bars that cross at one height and so are one body, a lower and a higher block
 * that overlap, a pit, a hole, beads on the rails and round a block, letters in the bore. A tile is 6.22 mm long and 4.4 wide.
 */
const ring = openInside(
  {
    annulet: 1,
    name: "parts",
    size: { diameter: 2 * BORE },
    tolerance: 0.02,
    profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.8, depth: 0.6 } },
    pattern: {
      symmetry: "p1",
      fit: { repeats: REPEATS, hold: "band" },
      regions: [
        { name: "along", path: "M 0 0.24 H 1 V 0.3 H 0 Z", height: 0.3 },
        { name: "across", path: "M 0.02 -0.3 H 0.06 V 0.3 H 0.02 Z", height: 0.3 },
        { name: "low", path: "M 0.12 -0.2 H 0.4 V 0.1 H 0.12 Z", height: 0.2 },
        { name: "high", path: "M 0.2 -0.1 H 0.5 V 0.2 H 0.2 Z", height: 0.4, beads: { diameter: 0.3, on: "border" } },
        { name: "pit", path: "M 0.6 -0.2 H 0.7 V 0.2 H 0.6 Z", mode: "sunk", depth: 0.3 },
        { name: "hole", path: "M 0.8 -0.1 H 0.9 V 0.1 H 0.8 Z", mode: "pierced" },
      ],
    },
    beads: [{ along: "rail", diameter: 0.5 }],
    lettering: [{ text: "I", at: "bore", depth: 0.3, font: nameOf("nunito"), height: 2 }],
  },
  { files: fontFiles },
);

/** A point over (x, y) of a tile's fractions at a height, with the normal outward, or as told: along the band, across it, outward. */
function place(x: number, y: number, h: number, [du, dv, dh] = [0, 0, 1]): { point: Point3; normal: Point3 } {
  const angle = -Math.PI / 2 + (2 * Math.PI * x) / REPEATS;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return {
    point: [(SEAT + h) * cos, (SEAT + h) * sin, y * ACROSS],
    normal: [dh * cos - du * sin, dh * sin + du * cos, dv],
  };
}

const pathAt = (...given: Parameters<typeof place>) => parts.at(place(...given)).path;

describe("the part at a place", () => {
  it("is the region whose top or wall lies there, in every copy, before and behind the seam", async () => {
    for (const tile of [0, 1, 5, 9, -3, 12]) {
      expect(pathAt(tile + 0.3, -0.15, 0.2)).toBe("pattern.regions[2]");
      expect(pathAt(tile + 0.3, 0, 0.4)).toBe("pattern.regions[3]");
      expect(pathAt(tile + 0.45, 0.15, 0.4)).toBe("pattern.regions[3]");
    }
    expect((await ring.partAt(place(0.3, 0, 0.4), { detail: "draft" })).names).toEqual(["high"]);
  });

  it("is, where two regions overlap, that whose face it is: the wall of the higher over the lower's top", () => {
    const west: Parameters<typeof place>[3] = [-1, 0, 0];
    expect(pathAt(0.2, 0, 0.3, west)).toBe("pattern.regions[3]");
    expect(pathAt(0.12, 0, 0.1, west)).toBe("pattern.regions[2]");
    // At the foot of the wall, a micrometre on either side of the border between them.
    expect(pathAt(0.2 - 1e-4, 0, 0.2)).toBe("pattern.regions[2]");
    expect(pathAt(0.2 + 1e-4, 0, 0.4)).toBe("pattern.regions[3]");
  });

  it("is one region of several that are one body, by its own art", () => {
    expect(pathAt(0.5, 0.27, 0.3)).toBe("pattern.regions[0]");
    expect(pathAt(0.04, -0.2, 0.3)).toBe("pattern.regions[1]");
    // Where both lie the later one covers the other, and on the border it is one of the two.
    expect(pathAt(0.04, 0.27, 0.3)).toBe("pattern.regions[1]");
    expect(pathAt(0.06, 0.27, 0.3)).toMatch(/^pattern\.regions\[[01]\]$/);
    expect(pathAt(0.08, 0.27, 0.3)).toBe("pattern.regions[0]");
    // Over the tile's border the bar goes on.
    expect(pathAt(1, 0.27, 0.3)).toBe("pattern.regions[0]");
  });

  it("is what was cut, on its floor and its walls", () => {
    expect(pathAt(0.65, 0, -0.3)).toBe("pattern.regions[4]");
    expect(pathAt(0.6, 0, -0.1, [1, 0, 0])).toBe("pattern.regions[4]");
    expect(pathAt(0.8, 0, -0.7, [1, 0, 0])).toBe("pattern.regions[5]");
    expect(pathAt(0.85, 0.1, -0.7, [0, -1, 0])).toBe("pattern.regions[5]");
    expect(pathAt(0.75, 0, 0)).toBe("profile.outside");
  });

  it("is the band's: rails, sides, bore; letters in it are their own", () => {
    expect(pathAt(0.44, 2.25 / ACROSS, 0.6)).toMatch(/^(profile\.outside\.rail|beads\[0\])$/);
    expect(pathAt(0.44, 2.2 / ACROSS, 0.5, [0, -1, 0])).toBe("profile.outside.rail");
    expect(pathAt(0.44, 3 / ACROSS, 0, [0, 1, 0])).toBe("profile.width");
    expect(pathAt(0.44, 1 / ACROSS, BORE - SEAT, [0, 0, -1])).toBe("profile.bore");
  });

  it("is a letter's on its floor, and beside it the bore's", async () => {
    // The letters stand at the top, 90°, as high as the bore's middle.
    const floor = BORE + 0.3;
    expect(parts.at({ point: [0, floor, 0], normal: [0, -1, 0] })).toEqual({ path: "lettering[0]", names: [] });
    expect(parts.at({ point: [2, Math.hypot(BORE, 0), 0], normal: [0, -1, 0] }).path).toBe("profile.bore");
  });

  it("needs a direction", async () => {
    await expect(ring.partAt(3 as never)).rejects.toThrow(/object/);
    await expect(ring.partLines({ path: 3 } as never)).rejects.toThrow(/path/);
    await expect(ring.partAt({ ...place(0.3, 0, 0.4), swirl: 1 } as never)).rejects.toThrow(/swirl/);
    await expect(ring.partAt({ point: [10, 0, 0], normal: [0, 0, 0] })).rejects.toThrow(/normal/);
    await expect(ring.partAt({ point: [10, 0, Number.NaN], normal: [0, 0, 1] })).rejects.toThrow(/point/);
  });
});

describe("every face of the built ring", () => {
  let areas: Map<string, number>;
  beforeAll(async () => {
    const mesh = await ring.solid({ detail: "draft" });
    areas = new Map();
    for (let t = 0; t < mesh.triangles.length / 3; t++) {
      const { normal, point } = faceOf(mesh, t);
      // A fifth of the ring is enough: tiles are alike.
      if (((Math.atan2(point[1], point[0]) / TURN + 1.25) % 1) * REPEATS >= LOOKED) continue;
      const { path } = parts.at({ point, normal });
      areas.set(path, (areas.get(path) ?? 0) + Math.hypot(...normal) / 2);
    }
  });

  it("comes from a part, with the area that its art has", () => {
    const near = (paths: readonly string[], expected: number, bound = 0.02) => {
      const found = paths.reduce((sum, path) => sum + (areas.get(path) ?? 0), 0) / LOOKED;
      expect(Math.abs(found / expected - 1), `${paths} ${found} ${expected}`).toBeLessThan(bound);
    };
    // Round the band what lies farther out is longer.
    const along = (share: number, h: number) => share * TILE * (1 + h / SEAT);
    const across = (share: number) => share * ACROSS;
    const bars = {
      along: along(0.96, 0.3) * across(0.06) + 0.3 * 2 * along(0.96, 0.15),
      across: along(0.04, 0.3) * across(0.6) + 0.3 * 2 * (across(0.54) + along(0.04, 0.15)),
    };
    near(["pattern.regions[4]"], along(0.1, -0.3) * across(0.4) + 0.3 * 2 * (along(0.1, -0.15) + across(0.4)));
    near(["pattern.regions[5]"], (SEAT - BORE) * 2 * (along(0.1, -0.7) + across(0.2)));
    near(["profile.width"], (2 * Math.PI * (10.5 ** 2 - BORE ** 2)) / REPEATS);
    near(["pattern.regions[0]", "pattern.regions[1]"], bars.along + bars.across);
    // Triangles of one body do not end where its regions do.
    near(["pattern.regions[0]"], bars.along, 0.06);
    near(["pattern.regions[1]"], bars.across, 0.06);
    expect([...areas.keys()].sort()).toEqual([
      "beads[0]",
      ...[0, 1, 2, 3].map((i) => `pattern.regions[${i}]`),
      "pattern.regions[3].beads",
      "pattern.regions[4]",
      "pattern.regions[5]",
      "profile.bore",
      "profile.outside",
      "profile.outside.rail",
      "profile.width",
    ]);
  });
});

function faceOf({ positions, triangles }: Mesh, t: number): { point: Point3; normal: Point3 } {
  const [a, b, c] = [0, 1, 2].map((k) => {
    const at = 3 * triangles[3 * t + k];
    return [positions[at], positions[at + 1], positions[at + 2]];
  });
  const [e, f] = [b, c].map((corner) => corner.map((x, k) => x - a[k]));
  return {
    point: [0, 1, 2].map((k) => (a[k] + b[k] + c[k]) / 3) as unknown as Point3,
    normal: [e[1] * f[2] - e[2] * f[1], e[2] * f[0] - e[0] * f[2], e[0] * f[1] - e[1] * f[0]],
  };
}

describe("places of parts", () => {
  it("are those of the regions, whatever of them a body names", () => {
    expect(regionPath("pattern.regions[2].depth")).toBe("pattern.regions[2]");
    expect(regionPath("pattern.lanes[1].medallion.regions[0]")).toBe("pattern.lanes[1].medallion.regions[0]");
    expect(regionPath("pattern.regions[2].section.height")).toBe("pattern.regions[2]");
    expect(regionPath("pattern.fit.fill")).toBe("pattern.fit.fill");
  });

  it("of the band lead to its parts, the nearest first", () => {
    expect(bandPartsOf("profile.outside.rail")).toEqual(["rail"]);
    expect(bandPartsOf("profile.outside.edge")).toEqual(["seat", "outside", "rail"]);
    expect(bandPartsOf("profile.bore.rise")).toEqual(["bore"]);
    expect(bandPartsOf("profile.widths")).toEqual([]);
    expect(bandPartsOf("profile")).toEqual([]);
  });
});
