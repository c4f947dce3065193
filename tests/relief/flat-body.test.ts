import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import { inTurn, inverseOf, type Motion, movedAcross, movedAlong, STAY } from "../../src/flat/motion.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { type BodyMap, type FlatBody, liftBody, mapBody, moveBody } from "../../src/relief/flat-body.js";
import { applyRise } from "../../src/solids/apply-rise.js";
import { fadeBody } from "../../src/solids/fade.js";
import { flatMesh } from "../../src/solids/flat-mesh.js";
import { motions, SEED } from "../flat/strips.js";

/** mm, of the foot below the seat. */
const SINK = 0.25;

type Ring = readonly Point3[];

/** A ring about (u, v): its corners' distances go round, so that no motion but none maps it onto itself. */
function ringAbout([u, v]: readonly [number, number], reaches: readonly number[], share: number, h: number): Point3[] {
  return reaches.map((reach, i): Point3 => {
    const angle = (2 * Math.PI * i) / reaches.length;
    return [u + share * reach * Math.cos(angle), v + share * reach * Math.sin(angle), h];
  });
}

const reversed = (ring: Ring): Ring => ring.toReversed();

interface Drawn {
  readonly at: readonly [number, number];
  readonly reaches: readonly number[];
  readonly high: number;
  readonly kind: "levels" | "surface" | "hole";
  readonly seam: boolean;
}

/** A body with something in every field that has a place, and nothing symmetric about it. */
function bodyOf({ at, reaches, high, kind, seam }: Drawn): FlatBody {
  const [low, top] = [ringAbout(at, reaches, 1, 0.5), ringAbout(at, reaches, 0.5, high)];
  const fan = (ring: Ring, peak: number) => ({
    points: [...ring, [at[0], at[1], peak] as Point3],
    triangles: ring.flatMap((_, i) => [i, (i + 1) % ring.length, ring.length]),
  });
  const raised = kind !== "hole";
  return {
    mode: raised ? "raised" : "pierced",
    names: ["leaf"],
    path: "pattern.regions[0]",
    made: "leaf",
    upright: raised,
    top: kind === "surface" ? [] : [[low, reversed(top)], ...(raised ? [[top]] : [])],
    surface: kind === "surface" ? { top: fan(low, high), foot: fan(low, 0) } : undefined,
    outline: [[low]],
    throat: raised ? [] : [[top]],
    seam: seam ? [at[0] - 3, at[0] + 4] : undefined,
    period: 12.5,
    copies: 7,
    height: high,
    rise: { at: (u, v) => 0.3 + 0.02 * (u - at[0]) + 0.05 * (v - at[1]), from: 0.5, step: 0.5, tolerance: 0.01 },
    fade: { ends: [at[0] - 2, at[0] + 5], length: 2.5, tolerance: 0.01 },
    filling: true,
    members: [{ name: "leaf", path: "pattern.regions[0]", outline: [low] }],
  };
}

const bodies = fc
  .record({
    at: fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -4, max: 4 })),
    reaches: fc.uniqueArray(
      fc.integer({ min: 4, max: 12 }).map((n) => n / 8),
      { minLength: 5, maxLength: 8 },
    ),
    high: fc.constantFrom(0.75, 1, 1.5),
    kind: fc.constantFrom("levels", "surface", "hole"),
    seam: fc.boolean(),
  })
  .map(bodyOf);

const maps = fc.record({ motion: motions, lift: fc.constantFrom(0, 0.25, 0.5) });

/** Everything of a body as plain numbers: the rise by what it gives at the body's own points. */
function toldOf(body: FlatBody) {
  const { rise, ...rest } = body;
  const places = [...body.outline, ...body.top].flat(2);
  return { ...rest, rise: rise && { ...rise, at: places.map(([u, v]) => rise.at(u, v)) } };
}

/** Two bodies are one but for rounding. */
function expectSame(a: FlatBody, b: FlatBody): void {
  expect(rounded(toldOf(a))).toEqual(rounded(toldOf(b)));
}

/** Numbers to a millionth of a millimetre. */
function rounded(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, one) => (typeof one === "number" ? Math.round(one * 1e6) / 1e6 + 0 : one)),
  );
}

/** The points of a mesh, moved, in one order. */
function pointsOf({ positions }: Mesh, motion: Motion): string[] {
  return Array.from({ length: positions.length / 3 }, (_, i) => {
    const [u, v, h] = positions.subarray(3 * i, 3 * i + 3);
    return [movedAlong(u, motion), movedAcross(v, motion), h]
      .map((x) => (Math.round(x * 1e6) / 1e6 + 0).toFixed(6))
      .join(" ");
  }).sort();
}

describe("a flat body mapped", () => {
  it("by nothing is itself, and told twice it is told at once", () => {
    fc.assert(
      fc.property(bodies, maps, maps, (body, first, second) => {
        expectSame(mapBody(body, { motion: STAY, lift: 0 }), body);
        const both: BodyMap = { motion: inTurn(first.motion, second.motion), lift: first.lift + second.lift };
        expectSame(mapBody(mapBody(body, first), second), mapBody(body, both));
      }),
      { seed: SEED },
    );
  });

  it("mirrored twice, or moved and taken back, is itself", () => {
    fc.assert(
      fc.property(bodies, motions, (body, motion) => {
        const mirror = { ...motion, v: 0, mirrored: true };
        expectSame(moveBody(moveBody(body, mirror), mirror), body);
        expectSame(moveBody(moveBody(body, motion), inverseOf(motion)), body);
      }),
      { seed: SEED },
    );
  });

  it("keeps every field, and moves each that has a place", () => {
    fc.assert(
      fc.property(bodies, motions, (body, motion) => {
        const moved = moveBody(body, motion);
        expect(Object.keys(moved).sort()).toEqual(Object.keys(body).sort());
        expect([moved.copies, moved.period, moved.height]).toEqual([7, 12.5, body.height]);
        const [middle, length] = [
          (low: number, high: number) => (low + high) / 2,
          (low: number, high: number) => high - low,
        ];
        for (const [own, old] of [
          [moved.seam, body.seam],
          [moved.fade?.ends, body.fade?.ends],
        ]) {
          if (own === undefined || old === undefined) {
            expect(own).toBe(old);
            continue;
          }
          expect(middle(...own)).toBeCloseTo(movedAlong(middle(...old), motion), 9);
          expect(length(...own)).toBeCloseTo(length(...old), 9);
        }
        const drawn = ({ top, outline, throat, surface, members = [] }: FlatBody) => [
          ...[top, outline, throat, members.map((member) => member.outline)].map((polygons) => polygons.flat(2)),
          ...(surface === undefined ? [] : [surface.top.points, surface.foot.points]),
        ];
        const sorted = (points: readonly Point3[]) => points.map(String).sort();
        const there = drawn(body).map((points) =>
          points.map(([u, v, h]): Point3 => [movedAlong(u, motion), movedAcross(v, motion), h]),
        );
        expect(drawn(moved).map(sorted)).toEqual(there.map(sorted));
        for (const [u, v] of body.outline.flat(2)) {
          expect(moved.rise?.at(movedAlong(u, motion), movedAcross(v, motion))).toBeCloseTo(
            body.rise?.at(u, v) ?? 0,
            9,
          );
        }
      }),
      { seed: SEED },
    );
  });

  it("is the mesh of the body mapped: the same points moved, the same volume, the same side out", () => {
    fc.assert(
      fc.property(bodies, motions, (whole, motion) => {
        if (whole.mode === "pierced") return;
        const body = { ...whole, seam: undefined };
        const [own, moved] = [flatMesh(body, SINK), flatMesh(moveBody(body, motion), SINK)];
        expect(signedVolume(own)).toBeGreaterThan(0);
        expect(signedVolume(moved)).toBeCloseTo(signedVolume(own), 9);
        expect(pointsOf(moved, STAY)).toEqual(pointsOf(own, motion));
      }),
      { seed: SEED },
    );
  });

  it("fades and rises where it has gone as it did where it was", () => {
    fc.assert(
      fc.property(bodies, motions, (whole, motion) => {
        if (whole.mode === "pierced") return;
        const body = { ...whole, seam: undefined };
        const moved = moveBody(body, motion);
        const [faded, gone] = [body, moved].map((one) => fadeBody(flatMesh(one, SINK), one, SINK));
        // Split along other diagonals where it is mirrored, it is as far off the curve as the tolerance allows.
        expect(signedVolume(gone)).toBeCloseTo(signedVolume(faded), 2);
        expect(signedVolume(faded)).toBeLessThan(signedVolume(flatMesh(body, SINK)));
        const [risen, there] = [body, moved].map((one) => {
          if (one.rise === undefined) throw new Error("the body rises");
          return signedVolume(applyRise(flatMesh(one, SINK), one.rise));
        });
        expect(there).toBeCloseTo(risen, 1);
        expect(risen).toBeGreaterThan(signedVolume(flatMesh(body, SINK)));
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it("lifted has its outline's area times the lift more, and rises from so much higher; its foot stays", () => {
    fc.assert(
      fc.property(bodies, fc.constantFrom(0.25, 0.5), (whole, lift) => {
        if (whole.mode === "pierced") return;
        const body = { ...whole, seam: undefined };
        const lifted = liftBody(body, lift);
        const twice = body.outline[0][0].reduce((sum, [u, v], i, all) => {
          const [x, y] = all[(i + 1) % all.length];
          return sum + (u * y - x * v);
        }, 0);
        expect(signedVolume(flatMesh(lifted, SINK)) - signedVolume(flatMesh(body, SINK))).toBeCloseTo(
          (twice / 2) * lift,
          9,
        );
        expect(lifted.height).toBe(body.height + lift);
        expect(lifted.rise?.from).toBe((body.rise?.from ?? 0) + lift);
        expect(lifted.surface?.foot).toEqual(body.surface?.foot);
      }),
      { seed: SEED },
    );
  });
});
