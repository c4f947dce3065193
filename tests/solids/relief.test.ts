import { describe, expect, it } from "vitest";
import type { BandSurface } from "../../src/band/surface/surface.js";
import { type FriezeName, friezeGroups } from "../../src/base/frieze/symmetry.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { SMOOTH_FORMS } from "../band/surface/forms.js";
import { bodiesOf } from "../support/stages.js";

const TOLERANCE = 0.02;

/** A triangle inside the fundamental region of every group, 0.15 × 0.3 / 2 tiles² in area. */
const TRIANGLE = { path: "M 0.05 0.1 L 0.2 0.1 L 0.1 0.4 Z", area: 0.0225 };

interface Drawing {
  readonly profile?: object;
  readonly fit?: object;
  readonly symmetry?: FriezeName;
  readonly cover?: number;
  readonly regions?: readonly object[];
}

function draw({ profile, fit, symmetry = "p1", cover = 360, regions }: Drawing) {
  return bodiesOf({
    annulet: 1,
    size: { system: "iso", value: 54 },
    tolerance: TOLERANCE,
    profile: profile ?? { width: 6, thickness: 2, outside: { form: "flat" } },
    pattern: { fit, symmetry, cover, regions: regions ?? [{ path: TRIANGLE.path, height: 0.4 }] },
    proud: true,
  });
}

/** Faults of a mesh in double precision and in float32, the number of its pieces left aside. */
function faultsOf(mesh: Mesh): string[] {
  const check = checkSolid(mesh);
  return [...check.faults, ...check.float32.faults].map(({ code }) => code).filter((code) => code !== "components");
}

const volumeOf = (mesh: Mesh) => checkSolid(mesh).volume;

/**
 * How far the insides of bent triangles lie from the surface whose chords they are: each triangle is sampled at ten
 * points, and the height over the seat there compared with what its corners have.
 */
function chordalError(mesh: Mesh, wrap: BandSurface): number {
  let worst = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => {
      const at = 3 * mesh.triangles[t + k];
      return [mesh.positions[at], mesh.positions[at + 1], mesh.positions[at + 2]] as const;
    });
    const levels = corners.map((corner) => wrap.inverse(...corner)[2]);
    for (let i = 0; i <= 3; i++) {
      for (let j = 0; i + j <= 3; j++) {
        const share = [i / 3, j / 3, 1 - (i + j) / 3];
        const mix = (value: (n: number) => number) => share.reduce((sum, weight, n) => sum + weight * value(n), 0);
        const [, , h] = wrap.inverse(
          mix((n) => corners[n][0]),
          mix((n) => corners[n][1]),
          mix((n) => corners[n][2]),
        );
        worst = Math.max(worst, Math.abs(h - mix((n) => levels[n])));
      }
    }
  }
  return worst;
}

describe("relief of each frieze group", () => {
  it.each(friezeGroups.map(({ name, operations }) => ({ name, images: operations.length })))(
    "$name: $images closed images a tile, each of the volume of its prism",
    ({ name, images }) => {
      const { parts, fit, wrap, profile } = draw({ symmetry: name });
      if (fit === undefined) throw new Error("no fit");
      const [relief] = parts.reliefs;
      expect(faultsOf(relief)).toEqual([]);
      const check = checkSolid(relief, { components: images * fit.repeats });
      expect(check.closed).toBe(true);
      expect(check.genus).toBe(0);
      // dV = (r + h) / R du dv dh on a flat seat, from the foot to the top.
      const sink = -Math.min(...heights(relief, wrap));
      expect(sink).toBeGreaterThanOrEqual(0.05 - 1e-9);
      const area = TRIANGLE.area * fit.tileWidth ** 2 * images * fit.repeats;
      const prism = area * (0.4 + sink) * (1 + (0.4 - sink) / 2 / profile.outsideRadius);
      expect(check.volume / prism).toBeCloseTo(1, 2);
      expect(check.volume).toBeLessThan(prism);
    },
  );
});

function heights({ positions }: Mesh, wrap: BandSurface): number[] {
  return Array.from(
    { length: positions.length / 3 },
    (_, i) => wrap.inverse(positions[3 * i], positions[3 * i + 1], positions[3 * i + 2])[2],
  );
}

const edgeToEdge = [{ path: "M 0.2 -0.5 H 0.6 V 0.5 H 0.2 Z", height: 0.4 }];
const channel = { width: 6, thickness: 2, outside: { form: "channel" } };

describe("relief is closed", () => {
  it.each<[string, Drawing, number]>([
    ["on a part of the band", { cover: 120 }, 0],
    ["cut off where the part ends", { cover: 90, symmetry: "p1m1" }, 0],
    ["in a single tile", { fit: { repeats: 1, hold: "band" } }, 0],
    ["in very many tiles", { fit: { repeats: 90, hold: "band" } }, 0],
    ["in rows", { fit: { rows: 3 }, symmetry: "p2mg" }, 0],
    ["from edge to edge of the seat", { regions: edgeToEdge }, 0],
    ["from rail to rail, going on beneath them", { profile: channel, regions: edgeToEdge }, 0],
    [
      "rounded, with a hole",
      {
        regions: [{ path: "M 0.1 -0.4 H 0.9 V 0.4 H 0.1 Z M 0.3 -0.2 V 0.2 H 0.7 V -0.2 Z", height: 0.4, round: 0.15 }],
      },
      1,
    ],
    [
      "through all tiles as one band with windows",
      {
        symmetry: "p11m",
        regions: [{ path: "M 0 0 H 1 V 0.3 H 0 Z M 0.3 0 V 0.2 H 0.7 V 0 Z", height: 0.4, round: 0.1 }],
      },
      2,
    ],
    [
      "across the tile's border",
      { symmetry: "p1m1", regions: [{ path: "M -0.2 -0.3 L 0.2 0 L -0.2 0.3 Z", height: 0.4, round: 0.1 }] },
      0,
    ],
    [
      "as a ribbon that goes round",
      {
        regions: [
          { path: "M 0 0 C 0.2 0.4 0.3 0.4 0.5 0 S 0.8 -0.4 1 0", ribbon: { width: 0.6 }, height: 0.4, round: 0.2 },
        ],
      },
      2,
    ],
  ])("%s", (_, drawing) => {
    const { parts, wrap } = draw(drawing);
    expect(parts.reliefs.length).toBeGreaterThan(0);
    for (const relief of parts.reliefs) {
      expect(faultsOf(relief)).toEqual([]);
      expect(volumeOf(relief)).toBeGreaterThan(0);
      expect(chordalError(relief, wrap)).toBeLessThan(TOLERANCE);
    }
  });

  it("has the handles that its holes make", () => {
    const windowed = draw({
      symmetry: "p11m",
      regions: [{ path: "M 0 0 H 1 V 0.3 H 0 Z M 0.3 0 V 0.2 H 0.7 V 0 Z", height: 0.4 }],
    });
    const check = checkSolid(windowed.parts.reliefs[0]);
    expect(check.components).toBe(1);
    // The band itself, and a window a tile.
    expect(check.genus).toBe(1 + (windowed.fit?.repeats as number));
  });
});

describe.each(SMOOTH_FORMS)("relief on the outside $name", ({ profile }) => {
  const rounded = draw({
    profile,
    fit: { hold: "band" },
    symmetry: "p2mm",
    regions: [{ path: "M 0 0 L 0.42 0 L 0.1 0.4 L 0 0.4 Z", height: 0.5, round: 0.12 }],
  });

  it("is closed and stands on the exact surface: foot, top and what is between", () => {
    const { parts, wrap } = rounded;
    const [relief] = parts.reliefs;
    expect(faultsOf(relief)).toEqual([]);
    const all = heights(relief, wrap);
    const [foot, top] = [Math.min(...all), Math.max(...all)];
    expect(top).toBeCloseTo(0.5, 9);
    expect(foot).toBeLessThan(-0.049);
    const steps = new Set(all.map((h) => h.toFixed(6)));
    // The rounding's contours: 0.38 mm and then up the quarter circle.
    expect(steps).toContain("0.380000");
    expect(steps).toContain("0.500000");
  });

  it("has no inside of a triangle farther from its bent surface than the tolerance", () => {
    expect(chordalError(rounded.parts.reliefs[0], rounded.wrap)).toBeLessThan(TOLERANCE);
  });
});
