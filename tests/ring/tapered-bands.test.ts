// Across: bands that taper, from their sizes to their files
import { build, encodeMesh, formatForFile } from "annulet";
import { describe, expect, it } from "vitest";
import { TURN } from "../../src/base/units.js";
import { findBore } from "../../src/measure/bore/bore.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { admesh, hasAdmesh } from "../support/admesh.js";
import { halfPlaneSection } from "../support/half-plane-section.js";

/** A taper from 8 to 4 mm in width and from 2.2 to 1.6 in thickness. */
const TOP = { width: 8, thickness: 2.2 };
const BACK = { width: 4, thickness: 1.6 };
const TOLERANCE = 0.01;
const BORE_RADIUS = 55 / TURN;

const bandOf = (outside: object, more: object = {}) => ({
  annulet: 1,
  size: { system: "iso", value: 55 },
  tolerance: TOLERANCE,
  profile: { ...TOP, bore: { form: "flat", edge: 0 }, outside, taper: BACK },
  ...more,
});

/** Width and thickness by the smooth step 3t² − 2t³ of the share of the half round from the top. */
function sizesAt(angle: number): { W: number; T: number } {
  const away = Math.abs(angle - TURN / 4) % TURN;
  const t = Math.min(away, TURN - away) / (TURN / 2);
  const share = t * t * (3 - 2 * t);
  return {
    W: TOP.width + share * (BACK.width - TOP.width),
    T: TOP.thickness + share * (BACK.thickness - TOP.thickness),
  };
}

/** ½ ∫ (outer(w)² − bore²) dw by Simpson's rule over w, and ∫ (outer − bore) dw. */
function closedForm(outer: (w: number, W: number, T: number) => number, W: number, T: number) {
  const steps = 2000;
  let [area, moment] = [0, 0];
  for (let i = 0; i <= steps; i++) {
    const weight = ((i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2) * W) / steps / 3;
    const r = outer(-W / 2 + (W * i) / steps, W, T);
    area += weight * (r - BORE_RADIUS);
    moment += (weight * (r * r - BORE_RADIUS ** 2)) / 2;
  }
  return { area, moment };
}

const forms = [
  {
    name: "knife",
    outside: { form: "knife", rise: 0.6, ridge: 0, edge: 0 },
    outer: (w: number, W: number, T: number) => BORE_RADIUS + T - (0.6 * Math.abs(w)) / (W / 2),
  },
  {
    name: "domed",
    outside: { form: "domed", rise: 0.5, edge: 0 },
    outer: (w: number, W: number, T: number) => {
      const radius = (W * W) / 4 / (2 * 0.5) + 0.5 / 2;
      return BORE_RADIUS + T - radius + Math.sqrt(radius ** 2 - w * w);
    },
  },
  {
    name: "flat",
    outside: { form: "flat", edge: 0 },
    outer: (_: number, __: number, T: number) => BORE_RADIUS + T,
  },
] as const;

/** Angles at which no facet of these bands begins. */
const ANGLES = Array.from({ length: 23 }, (_, i) => 0.0137 + (i * TURN) / 23);

describe.each(forms)("a $name band that tapers from 8 to 4 mm", ({ outside, outer }) => {
  const made = build(bandOf(outside));

  it("has at every angle the section of the formula: width, thickness, area", async () => {
    const { mesh } = await made;
    for (const angle of ANGLES) {
      const { W, T } = sizesAt(angle);
      const cut = halfPlaneSection(mesh, angle);
      expect(Math.abs(cut.w[1] - cut.w[0] - W)).toBeLessThan(TOLERANCE);
      expect(Math.abs(cut.r[1] - BORE_RADIUS - T)).toBeLessThan(TOLERANCE);
      expect(Math.abs(cut.r[0] - BORE_RADIUS)).toBeLessThan(TOLERANCE);
      const perimeter = 2 * (W + T);
      expect(Math.abs(cut.area - closedForm(outer, W, T).area)).toBeLessThan((perimeter * TOLERANCE) / 2);
    }
  });

  it("has the volume of its sections, ∫ ∬ r dA dθ, within the tolerance times its surface", async () => {
    const { report } = await made;
    let volume = 0;
    const steps = 720;
    for (let i = 0; i < steps; i++) {
      const { W, T } = sizesAt(((i + 0.5) * TURN) / steps);
      volume += (closedForm(outer, W, T).moment * TURN) / steps;
    }
    expect(Math.abs(report.volume - volume)).toBeLessThan((TOLERANCE * report.area) / 2);
    expect(report).toMatchObject({ closed: true, genus: 1, road: "plain" });
  });

  it("keeps the finger's size", async () => {
    const { mesh } = await made;
    expect(Math.abs((findBore(mesh)?.diameter as number) - 2 * BORE_RADIUS)).toBeLessThan(2 * TOLERANCE);
  });
});

const channel = { form: "channel", rail: 0.9, depth: 0.6, edge: 0.2 };

const tile = {
  fit: { hold: "band", repeats: 11 },
  symmetry: "p2mm",
  regions: [
    {
      name: "petal",
      path: "M 0.06 0 C 0.18 -0.4 0.32 -0.4 0.44 0 C 0.32 0.4 0.18 0.4 0.06 0 Z",
      ribbon: { width: 0.5, side: "inside" },
      height: 0.35,
      round: 0.05,
      beads: { diameter: 0.3, on: "centre" },
    },
  ],
};

/** A pattern that is no mirror image of itself along the band. */
const leaning = {
  fit: { hold: "band", repeats: 12 },
  symmetry: "p1",
  regions: [{ name: "leaf", path: "M 0.1 -0.2 L 0.7 -0.2 L 0.3 0.25 Z", height: 0.35 }],
};

const mirrorImage = {
  ...leaning,
  regions: [{ name: "leaf", path: "M 0.9 -0.2 L 0.3 -0.2 L 0.7 0.25 Z", height: 0.35 }],
};

const rails = [{ along: "rail", diameter: 0.4 }];

describe("a channel band that tapers, with relief and beads", () => {
  const made = build(bandOf(channel, { pattern: tile, beads: rails }));

  it("is closed, of a quarter and its images", async () => {
    const { report } = await made;
    expect(report).toMatchObject({ closed: true, genus: 1, road: "mirror" });
    expect(report.roadReason).toContain("a quarter");
  });

  it("tells its sizes at the top and at the back, and how its tiles narrow", async () => {
    const { report } = await made;
    expect(report.band).toEqual({ ...TOP, overall: expect.any(Number), taper: [{ angle: 270, ...BACK }] });
    // The floor is 6.2 mm across at the top and 2.2 at the back.
    expect(report.fit?.lambda.across?.min).toBeCloseTo(2.2 / 6.2, 6);
    expect(report.fit?.lambda.across?.max).toBeCloseTo(1, 9);
    const floor = BORE_RADIUS + TOP.thickness - 0.6;
    expect(report.fit?.lambda.seat.max).toBeCloseTo(1, 4);
    expect(report.fit?.lambda.seat.min).toBeCloseTo((floor - 0.6) / floor, 3);
  });

  it("has relief and rails as high at the back as at the top", async () => {
    const { mesh } = await made;
    const plain = await build(bandOf(channel, { pattern: { ...tile, regions: [] } }));
    for (const { mesh: ring, above } of [
      { mesh: plain.mesh, above: 0 },
      { mesh, above: 0.2 },
    ]) {
      for (const angle of ANGLES) {
        const { T } = sizesAt(angle);
        const high = halfPlaneSection(ring, angle).r[1] - BORE_RADIUS - T;
        expect(high).toBeGreaterThan(-TOLERANCE);
        expect(high).toBeLessThan(above + TOLERANCE);
      }
    }
  });

  it("passes an independent checker", async (context) => {
    if (!hasAdmesh) context.skip();
    const { mesh, report } = await made;
    const checked = admesh(await encodeMesh(formatForFile("taper.stl"), mesh, { name: "taper" }));
    expect(checked).toMatchObject({ degenerate: 0, disconnectedEdges: [0, 0, 0], backwards: 0, parts: 1 });
    expect(checked.volume).toBeCloseTo(report.volume, 1);
  });

  it("does without a mirror where the art has none, and its mirror image is the mirrored ring", async () => {
    const [one, other] = await Promise.all(
      [leaning, mirrorImage].map((pattern) => build(bandOf(channel, { pattern, beads: rails, tolerance: 0.03 }))),
    );
    expect(one.report).toMatchObject({ closed: true, road: "whole" });
    // Their four-sided facets are cut in two along other diagonals.
    expect(Math.abs(other.report.volume - one.report.volume)).toBeLessThan(1e-4 * one.report.volume);
    const mirrored = reflected(other.mesh);
    for (const angle of ANGLES) {
      const [a, b] = [halfPlaneSection(one.mesh, angle), halfPlaneSection(mirrored, angle)];
      expect(Math.abs(a.area - b.area)).toBeLessThan(0.03);
      expect(Math.abs(a.w[0] - b.w[0])).toBeLessThan(0.03);
    }
  });
});

describe("a flat band that tapers, with holes and sunk art", () => {
  it("is closed, each hole a handle", async () => {
    const regions = [
      { name: "hole", path: "M 0.3 0 A 0.15 0.15 0 1 0 0.6 0 A 0.15 0.15 0 1 0 0.3 0 Z", mode: "pierced", broken: 0.1 },
      { name: "pool", path: "M 0.7 -0.2 H 0.9 V 0.2 H 0.7 Z", mode: "sunk", depth: 0.3 },
    ];
    const pattern = { fit: { hold: "band", repeats: 9 }, regions };
    const { report } = await build(bandOf({ form: "flat" }, { pattern, tolerance: 0.03 }));
    expect(report).toMatchObject({ closed: true, genus: 10, genusExpected: 10 });
  });
});

/** The mirror image in the plane x = 0, through the top and the back. */
function reflected({ positions, triangles }: Mesh): Mesh {
  return {
    positions: positions.map((value, i) => (i % 3 === 0 ? -value : value)),
    triangles: triangles.map((_, i) => triangles[i - (i % 3) + (2 - (i % 3))]),
  };
}

describe("a taper that changes nothing", () => {
  it.each([{}, TOP, { between: [{ angle: 0, width: TOP.width }] }])("makes the very same bytes: %o", async (taper) => {
    const beads = [{ along: "rail", diameter: 0.5 }];
    const document = bandOf(channel, { pattern: tile, beads, tolerance: 0.03 });
    const { taper: _, ...straight } = document.profile;
    const [one, other] = await Promise.all(
      [straight, { ...straight, taper }].map((profile) => build({ ...document, profile })),
    );
    expect(other.mesh.positions).toEqual(one.mesh.positions);
    expect(other.mesh.triangles).toEqual(one.mesh.triangles);
  });
});
