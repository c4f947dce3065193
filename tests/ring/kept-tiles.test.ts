// Covers: src/band/seat-lengths.ts, src/flat/seat-outline.ts, src/flat/within-seat.ts, src/pattern/kept-size.ts
import { build } from "annulet";
import { describe, expect, it } from "vitest";
import { TOP, TURN } from "../../src/base/units.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { halfPlaneSection } from "../support/half-plane-section.js";
import { bodiesOf } from "../support/stages.js";

const SIZES = { width: 8, thickness: 2.2 };
const BACK = { width: 4, thickness: 1.6 };
const TOLERANCE = 0.01;
const BORE_RADIUS = 55 / TURN;
const HEIGHT = 0.4;

/** A flat band: its seat is as long as it is wide, and at the height of its thickness. */
const bandOf = (pattern: object, { taper = BACK, outside = { form: "flat", edge: 0 }, ...more }: Options = {}) => ({
  annulet: 1,
  size: { system: "iso", value: 55 },
  tolerance: TOLERANCE,
  profile: { ...SIZES, bore: { form: "flat", edge: 0 }, outside, taper },
  pattern,
  ...more,
});

interface Options {
  readonly taper?: object | undefined;
  readonly outside?: object;
  readonly tolerance?: number;
  readonly beads?: readonly object[];
}

const kept = { repeats: 12, aspect: 1.4, hold: "band", taper: "keep" };

/** Width and thickness by the smooth step 3t² − 2t³ of the share of the half round from the top. */
function sizesAt(angle: number): { W: number; T: number } {
  const away = Math.abs(angle - TOP) % TURN;
  const t = Math.min(away, TURN - away) / (TURN / 2);
  const share = t * t * (3 - 2 * t);
  return {
    W: SIZES.width + share * (BACK.width - SIZES.width),
    T: SIZES.thickness + share * (BACK.thickness - SIZES.thickness),
  };
}

describe("stripes on tiles that keep their size", () => {
  const high = 8;
  const wide = (TURN * (BORE_RADIUS + SIZES.thickness)) / 12;
  const path = `M ${wide / 4} ${-high / 2} H ${(3 * wide) / 4} V ${high / 2} H ${wide / 4} Z`;
  const pattern = { fit: kept, regions: [{ name: "stripe", path, unit: "mm", height: HEIGHT }] };

  it("are cut off on the seat: their area is ∫ of its width over them", () => {
    const [{ outline }] = bodiesOf(bandOf(pattern)).pattern.bodies;
    const drawn = outline.flat().reduce((sum, ring) => sum + areaOf(ring), 0);
    let expected = 0;
    const steps = 2000;
    for (let tile = 0; tile < 12; tile++) {
      for (let i = 0; i < steps; i++) {
        const u = (tile + 0.25 + (0.5 * (i + 0.5)) / steps) * wide;
        expected += (sizesAt(TOP - TURN / 2 + (u / (12 * wide)) * TURN).W * 0.5 * wide) / steps;
      }
    }
    expect(Math.abs(drawn / expected - 1)).toBeLessThan(1e-3);
  });

  it("stand up with the volume of ∫ W h (r + h/2) dθ, closed, of a quarter and its images", async () => {
    const [{ report }, none] = await Promise.all([build(bandOf(pattern)), build(bandOf({ ...pattern, regions: [] }))]);
    let expected = 0;
    const steps = 2000;
    for (let tile = 0; tile < 12; tile++) {
      for (let i = 0; i < steps; i++) {
        const angle = TOP - TURN / 2 + ((tile + 0.25 + (0.5 * (i + 0.5)) / steps) / 12) * TURN;
        const { W, T } = sizesAt(angle);
        expected += (W * HEIGHT * (BORE_RADIUS + T + HEIGHT / 2) * 0.5 * (TURN / 12)) / steps;
      }
    }
    expect(report).toMatchObject({ closed: true, genus: 1, components: 1, road: "mirror" });
    expect(report.roadReason).toContain("a quarter");
    const volume = report.volume - none.report.volume;
    expect(Math.abs(volume / expected - 1)).toBeLessThan(0.01);
    expect(report.fit?.lambda.across).toEqual({ min: 1, max: 1 });
  });
});

describe("a low stripe all round", () => {
  it("is as many mm wide at the back as at the top, and narrows with the band if it may", async () => {
    const pattern = (taper: string) => ({
      fit: { ...kept, taper },
      regions: [{ name: "stripe", path: "M 0 -0.8 H 10 V 0.8 H 0 Z", unit: "mm", height: HEIGHT }],
    });
    const [keep, narrow] = await Promise.all(["keep", "narrow"].map((taper) => build(bandOf(pattern(taper)))));
    for (const angle of [0.0137, TOP + 0.0137, TOP + 1.7, TOP + TURN / 2 + 0.0137]) {
      const { W } = sizesAt(angle);
      expect(Math.abs(widthOnTop(keep.mesh, angle) - 1.6)).toBeLessThan(2 * TOLERANCE);
      expect(Math.abs(widthOnTop(narrow.mesh, angle) - (1.6 * W) / 8)).toBeLessThan(2 * TOLERANCE);
    }
  });
});

describe("what is cut off", () => {
  const leaning = [{ name: "leaf", path: "M 0.1 -0.5 L 0.7 -0.5 L 0.3 0.6 Z", height: HEIGHT }];

  it("is not taken for symmetric where the art is not", async () => {
    const { report } = await build(bandOf({ fit: kept, regions: leaning }, { tolerance: 0.03 }));
    expect(report).toMatchObject({ closed: true, genus: 1, road: "whole" });
  });

  it("is not taken for symmetric where the band is not, though the art is", async () => {
    const taper = {
      ...BACK,
      between: [
        { angle: 0, width: 7.5 },
        { angle: 180, width: 5 },
      ],
    };
    // Mirrored across the band alone: a mirror along the band they would have in common.
    const regions = [{ name: "bar", path: "M 0.3 -0.68 H 0.7 V 0.5 H 0.3 Z", height: HEIGHT }];
    const { report } = await build(bandOf({ fit: kept, symmetry: "p1m1", regions }, { taper, tolerance: 0.03 }));
    expect(report).toMatchObject({ closed: true, genus: 1, road: "whole" });
  });

  it("goes on beneath the rails of a channel, with rounded edges, beads along it, and stays closed", async () => {
    const regions = [
      {
        name: "petal",
        path: "M 0.06 0 C 0.18 -0.8 0.32 -0.8 0.44 0 C 0.32 0.8 0.18 0.8 0.06 0 Z",
        ribbon: { width: 0.6, side: "inside" },
        height: 0.35,
        round: 0.05,
        beads: { diameter: 0.3, on: "centre" },
      },
    ];
    const outside = { form: "channel", rail: 0.9, depth: 0.6, edge: 0.2 };
    const beads = [{ along: "rail", diameter: 0.4 }];
    const { report } = await build(
      bandOf({ fit: kept, symmetry: "p2mm", regions }, { outside, beads, tolerance: 0.03 }),
    );
    expect(report).toMatchObject({ closed: true, genus: 1, components: 1, road: "mirror" });
  });

  it("leaves the wall beside the edge: holes and pits end before it, each hole a handle", async () => {
    const regions = [
      { name: "hole", path: "M 0.3 0.36 H 0.6 V 0.55 H 0.3 Z", mode: "pierced", broken: 0.1 },
      { name: "pool", path: "M 0.7 -0.6 H 0.9 V 0.2 H 0.7 Z", mode: "sunk", depth: 0.3 },
    ];
    const document = bandOf({ fit: kept, regions }, { tolerance: 0.03 });
    const { bodies } = bodiesOf(document).pattern;
    const round = TURN * (BORE_RADIUS + SIZES.thickness);
    for (const [u, v] of bodies.flatMap(({ outline }) => outline.flat(2))) {
      const { W } = sizesAt(TOP - TURN / 2 + (u / round) * TURN);
      expect(W / 2 - Math.abs(v)).toBeGreaterThan(0.1 - 1e-3);
    }
    const pierced = bodies.filter(({ mode }) => mode === "pierced").flatMap(({ outline }) => outline);
    const { report } = await build(document);
    expect(pierced.length).toBeGreaterThan(6);
    expect(pierced.length).toBeLessThan(12);
    expect(report).toMatchObject({ closed: true, genus: 1 + pierced.length, genusExpected: 1 + pierced.length });
  });
});

describe("tiles that keep their size and what cannot be", () => {
  it.each([
    { name: "weave", regions: [{ path: "M 0 0 L 1 0.4", ribbon: { width: 0.5, weave: { lift: 0.2 } }, height: 0.3 }] },
  ])("refuses a $name", async ({ regions }) => {
    await expect(build(bandOf({ fit: kept, regions }))).rejects.toMatchObject({
      problems: [{ code: "cannot-keep-size", path: "pattern.regions[0].ribbon.weave" }],
    });
  });

  it("refuses lanes, and bead runs beyond the seat where it is narrowest", async () => {
    const lane = { regions: [{ path: "M 0.3 -0.2 H 0.6 V 0.2 H 0.3 Z", height: HEIGHT }] };
    const lanes = { fit: { hold: "band", taper: "keep" }, lanes: [lane, lane] };
    await expect(build(bandOf(lanes))).rejects.toMatchObject({ problems: [{ code: "cannot-keep-size" }] });
    const beads = [{ along: { v: 2.5 }, diameter: 0.4 }];
    await expect(build(bandOf({ fit: kept }, { beads }))).rejects.toMatchObject({
      problems: [{ code: "beads-off-seat", path: "beads[0].along.v" }],
    });
  });
});

describe("a taper that changes nothing", () => {
  it.each([undefined, {}, SIZES])(
    "makes the very same bytes whether tiles keep their size or not: %o",
    async (taper) => {
      const regions = [{ name: "leaf", path: "M 0.1 -0.5 L 0.7 -0.5 L 0.3 0.6 Z", height: HEIGHT }];
      const [one, other] = await Promise.all(
        ["keep", "narrow"].map((way) => {
          const document = bandOf({ fit: { ...kept, taper: way }, regions }, { tolerance: 0.03 });
          return build({ ...document, profile: { ...document.profile, taper } });
        }),
      );
      expect(one.mesh.positions).toEqual(other.mesh.positions);
      expect(one.mesh.triangles).toEqual(other.mesh.triangles);
    },
  );
});

function areaOf(ring: readonly (readonly number[])[]): number {
  return ring.reduce((sum, [u, v], i) => {
    const [nu, nv] = ring[(i + 1) % ring.length];
    return sum + (u * nv - nu * v) / 2;
  }, 0);
}

/** How wide the mesh is in the half plane at θ half way up the relief, by the crossings of its triangles alone. */
function widthOnTop(mesh: Mesh, angle: number): number {
  const { r } = halfPlaneSection(mesh, angle);
  const level = r[1] - HEIGHT / 2;
  const { positions, triangles } = mesh;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < triangles.length; i += 3) {
    const cut = [0, 1, 2].flatMap((k) => {
      const [a, b] = [k, (k + 1) % 3].map((n) => {
        const [x, y, z] = positions.subarray(3 * triangles[i + n], 3 * triangles[i + n] + 3);
        return { off: y * cos - x * sin, r: x * cos + y * sin, w: z };
      });
      if (a.off < 0 === b.off < 0) return [];
      const t = a.off / (a.off - b.off);
      return [{ r: a.r + t * (b.r - a.r), w: a.w + t * (b.w - a.w) }];
    });
    if (cut.length < 2 || cut[0].r < 0) continue;
    const [a, b] = cut;
    if (a.r < level === b.r < level) continue;
    const w = a.w + ((b.w - a.w) * (level - a.r)) / (b.r - a.r);
    [low, high] = [Math.min(low, w), Math.max(high, w)];
  }
  return high - low;
}
