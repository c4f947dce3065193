// Covers: src/workbench/section/built-numbers.ts
import { describe, expect, it } from "vitest";
import { buildProfile, readDesign } from "../../../src/index.js";
import { builtNumbers } from "../../../src/workbench/section/built-numbers.js";
import { arcRise, movedOutline } from "../../../src/workbench/section/section-shape.js";
import { sectionNumbers } from "../../../src/workbench/section/section-sizes.js";

const BORE = 8.6;

function profileOf(profile: object) {
  const document = { annulet: 1, name: "Section", size: { diameter: 2 * BORE }, profile };
  return readDesign(document).profile;
}

/** Farthest that one outline's points lie from the other's lines, mm. */
function apart(points: readonly (readonly [number, number])[], line: readonly (readonly [number, number])[]): number {
  const far = points.map(([x, y]) =>
    Math.min(
      ...line.map(([ax, ay], i) => {
        const [bx, by] = line[(i + 1) % line.length];
        const length = (bx - ax) ** 2 + (by - ay) ** 2;
        const along =
          length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
        return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay));
      }),
    ),
  );
  return Math.max(...far);
}

/** A change of one size, drawn at once and built. */
function bothWays(profile: object, change: (profile: Record<string, never>) => void) {
  const before = profileOf(profile);
  const changed = structuredClone(profile) as Record<string, never>;
  change(changed);
  const after = profileOf(changed);
  const [old, built] = [buildProfile(before, BORE, 0.002), buildProfile(after, BORE, 0.002)];
  const [from, to] = [sectionNumbers(profile, before), sectionNumbers(changed, before)];
  const drawn = movedOutline(old.polyline, BORE, from, to);
  return { drawn: apart(drawn, built.polyline), undrawn: apart(old.polyline, built.polyline) };
}

const flat = { form: "flat", edge: 0.1 };
const channel = { form: "channel", rail: 0.9, depth: 0.6, crown: 0.1, edge: 0.1 };
const PROFILES: readonly [string, object, (profile: Record<string, never>) => void][] = [
  ["width", { outside: channel }, (profile) => Object.assign(profile, { width: 6.6 })],
  ["thickness", { outside: channel }, (profile) => Object.assign(profile, { thickness: 2.2 })],
  ["rail", { outside: channel }, ({ outside }) => Object.assign(outside, { rail: 1.2 })],
  ["depth", { outside: channel }, ({ outside }) => Object.assign(outside, { depth: 0.8 })],
  ["crown", { outside: channel }, ({ outside }) => Object.assign(outside, { crown: 0.4 })],
  [
    "rise",
    { outside: { form: "domed", rise: 0.3, edge: 0.1 } },
    ({ outside }) => Object.assign(outside, { rise: 0.6 }),
  ],
  ["dip", { outside: { form: "concave", dip: 0.3, edge: 0.1 } }, ({ outside }) => Object.assign(outside, { dip: 0.5 })],
  [
    "bevel",
    { outside: { form: "bevelled", bevel: 0.8, drop: 0.3, edge: 0.1 } },
    ({ outside }) => Object.assign(outside, { bevel: 1.3 }),
  ],
  [
    "drop",
    { outside: { form: "bevelled", bevel: 0.8, drop: 0.3, edge: 0.1 } },
    ({ outside }) => Object.assign(outside, { drop: 0.6 }),
  ],
  [
    "rise",
    { outside: { form: "knife", rise: 0.4, ridge: 0.1, edge: 0.1 } },
    ({ outside }) => Object.assign(outside, { rise: 0.7 }),
  ],
  [
    "rise",
    { outside: flat, bore: { form: "comfort", rise: 0.2, edge: 0.1 } },
    ({ bore }) => Object.assign(bore, { rise: 0.4 }),
  ],
];

describe("a cross-section whose sizes are dragged", () => {
  it.each(PROFILES)("is drawn at once nearly as it is built: %s of %o", (_, parts, change) => {
    const profile = { width: 6, thickness: 1.8, bore: { form: "flat", edge: 0.1 }, outside: flat, ...parts };
    const { drawn, undrawn } = bothWays(profile, change);
    expect(undrawn).toBeGreaterThan(0.07);
    // Corners keep their radius but not their angle: less than a fifth of the radius, 0.1 mm, and no more than a tenth of the change.
    expect(drawn).toBeLessThan(0.02);
  });

  it("is drawn exactly where nothing changes", () => {
    const { drawn } = bothWays({ width: 6, thickness: 1.8, bore: flat, outside: channel }, () => undefined);
    expect(drawn).toBeLessThan(1e-12);
  });

  it("rises as an arc of its chord and sagitta does", () => {
    expect(arcRise(0, 3, 0.5)).toBeCloseTo(0.5, 12);
    expect(arcRise(3, 3, 0.5)).toBeCloseTo(0, 12);
    expect(arcRise(0, 3, -0.5)).toBeCloseTo(-0.5, 12);
    expect(arcRise(1, 3, 0)).toBe(0);
  });

  it("keeps what fitting or the angle made of its width, and changes it by what is written", () => {
    const written = { width: 6, thickness: 1.8, outside: channel, bore: flat };
    const profile = { ...buildProfile(profileOf({ ...written, width: 6.3 }), BORE, 0.05) };
    const { before, after } = builtNumbers({ written, profile, read: profileOf(written) }, { ...written, width: 6.5 });
    expect(before.sizes.width).toBe(6.3);
    expect(after.sizes.width).toBeCloseTo(6.8, 12);
    expect(after.sizes["outside.rail"]).toBe(0.9);
  });
});
