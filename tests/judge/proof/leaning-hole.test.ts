// Covers: src/judge/proof/expected-volume.ts
import { describe, expect, it } from "vitest";
import type { Band } from "../../../src/band/band.js";
import { columnAt } from "../../../src/judge/proof/columns.js";
import { heldFor } from "../../../src/judge/proof/held.js";
import { type Pierced, withLeaningHole } from "../../../src/judge/proof/leaning-hole.js";
import { openInside } from "../../../src/ring/open-ring.js";

const DOME = { width: 4, thickness: 2, outside: { form: "domed", rise: 0.7 } };
const CROWN = { width: 3, thickness: 1.8, outside: { form: "channel", rail: 0.9, depth: 0.35, crown: 0.2, edge: 0.1 } };
const ROUND = "M 0.3 0 A 0.2 0.2 0 0 1 0.7 0 A 0.2 0.2 0 0 1 0.3 0 Z";

const band = (profile: object) => ({ annulet: 1, size: { diameter: 15 }, tolerance: 0.02, profile });
const holes = (profile: object, repeats: number, path: string) => ({
  ...band(profile),
  pattern: { fit: { repeats, hold: "band" }, symmetry: "p1", regions: [{ path, mode: "pierced" }] },
});

async function columnOnDome(across: number) {
  const { answers } = await openInside(band(DOME)).ask(["profile", "wrap"]);
  const { polyline } = (answers.profile as Band).sectionAt(0);
  const line = answers.wrap.lineAt(0);
  return { line, stand: columnAt({ on: "seat", across, section: { line, polyline } }) };
}

describe("a column that leans into a hole", () => {
  it("ends at the hole's wall, which goes along the radius", async () => {
    const { line, stand } = await columnOnDome(0.8);
    const [from, to] = [stand.band[0], stand.band[1]];
    const piercedAt = (v: number): Pierced => (Math.abs(v) < 0.7 ? "through" : "no");
    const { surely, likely, maybe } = withLeaningHole(heldFor(stand.band), {
      line,
      stand,
      stretch: [from, to],
      piercedAt,
    });
    // By hand: the column is at the wall where its w is that of the wall's foot.
    const wall = (line.point(0.7, 0)[0] - stand.point[0]) / stand.way[0];
    expect(wall).toBeGreaterThan(from);
    expect(wall).toBeLessThan(0);
    for (const set of [surely, likely, maybe]) {
      expect(set).toHaveLength(2);
      expect(set[0]).toBeCloseTo(wall, 2);
      expect(set[1]).toBe(to);
    }
  });

  it("may hold what the broken edges of a hole take, and what is farther from the hole than it reaches for sure", async () => {
    const { line, stand } = await columnOnDome(0.8);
    const stretch = [stand.band[0], stand.band[1]] as const;
    const of = (piercedAt: (v: number) => Pierced) =>
      withLeaningHole(heldFor(stand.band), { line, stand, stretch, piercedAt });
    expect(of((v) => (v < 0.2 ? "through" : "no"))).toEqual(heldFor(stand.band));
    const broken = of((v) => (v < 0.7 ? "edge" : "no"));
    expect(broken.maybe).toEqual(stand.band);
    expect(broken.surely[0]).toBeGreaterThan(stand.band[0]);
  });
});

describe("a ring with holes", () => {
  it.each([
    ["round ones through a dome", holes(DOME, 12, ROUND)],
    // Its normals meet in the wall: what columns hold deeper than that would count against the volume.
    [
      "through a seat with a tight crown, and beads that lie against its rails",
      { ...holes(CROWN, 24, ROUND), beads: [{ along: "seat-edge", diameter: 0.4 }] },
    ],
  ])("%s: has the volume that is expected of it", async (_, document) => {
    const { answers } = await openInside({ ...document, proud: true }).ask(["union", "profile"]);
    const { agrees, volume } = answers.union.proof ?? { agrees: false, volume: undefined };
    expect(agrees).toBe(true);
    if (volume === undefined) throw new Error("no proof");
    // A tolerance of 0.02 mm of some 300 mm² of surface is a fiftieth of it.
    expect(Math.abs(volume.expected / volume.built - 1)).toBeLessThan(0.02);
  });
});
