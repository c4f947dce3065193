import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { polygonArea } from "../../src/base/math/polygon.js";
import { build } from "../../src/ring/build.js";
import { flatTile } from "../../src/ring/flat-tile.js";
import { CHANNEL, CHANNEL_AREA } from "../output/drawing/tiles.js";

const example = (name: string) => readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8");

describe("the flat tile", () => {
  it("has the regions' area, also over the seams between tiles", async () => {
    for (const tiles of [1, 2, 5]) {
      const { regions, fit } = await flatTile(CHANNEL, { tiles });
      const area = regions.flatMap(({ rings }) => rings).reduce((sum, ring) => sum + polygonArea(ring), 0);
      expect(area / (tiles * CHANNEL_AREA * fit.tileWidth ** 2)).toBeCloseTo(1, 5);
      expect(regions.map(({ height }) => height)).toEqual([0.3, 0.4]);
      // A bar at each border between tiles is one ring, not two halves.
      expect(regions[0].rings).toHaveLength(tiles + 1);
    }
  });

  it("tells raised, sunk and pierced regions apart, what is cut after what it cuts", async () => {
    const box = (name: string, x: number) => ({ name, path: `M ${x} -0.1 h 0.2 v 0.2 h -0.2 z` });
    const regions = [
      { ...box("high", 0.1), height: 0.5 },
      { ...box("low", 0.12), height: 0.3 },
      { ...box("slot", 0.4), mode: "pierced" },
      { ...box("pit", 0.7), mode: "sunk", depth: 0.2 },
    ];
    const tile = await flatTile({ ...CHANNEL, pattern: { ...CHANNEL.pattern, symmetry: "p1", regions } });
    expect(tile.regions.map(({ names, mode, height }) => [...names, mode, height])).toEqual([
      ["low", "raised", 0.3],
      ["high", "raised", 0.5],
      ["pit", "sunk", -0.2],
      ["slot", "pierced", undefined],
    ]);
    for (const { rings } of tile.regions.slice(1)) {
      const area = rings.reduce((sum, ring) => sum + polygonArea(ring), 0);
      expect(area / (0.2 * tile.fit.tileWidth) ** 2).toBeCloseTo(1, 3);
    }
  });

  it("keeps to the tiles and the seat", async () => {
    const { regions, fit, seatLength } = await flatTile(example("saltmarsh-lattice"), { tiles: 2 });
    const points = regions.flatMap(({ rings }) => rings.flat());
    expect(Math.min(...points.map(([u]) => u))).toBeCloseTo(0, 5);
    expect(Math.max(...points.map(([u]) => u))).toBeCloseTo(2 * fit.tileWidth, 5);
    expect(Math.max(...points.map(([, v]) => Math.abs(v)))).toBeLessThanOrEqual(seatLength / 2 + 1e-6);
  });

  it("places the beads that the report counts, each once but those on the right border", async () => {
    const document = example("saltmarsh-lattice");
    const { report } = await build(document);
    const round = report.beads.filter(({ onRail }) => !onRail).reduce((sum, { count }) => sum + count, 0);
    const { fit } = await flatTile(document);
    for (const tiles of [1, 3, fit.repeats]) {
      const tile = await flatTile(document, { tiles });
      expect(tile.beads.filter(({ next }) => !next)).toHaveLength((round * tiles) / fit.repeats);
      const left = tile.beads.filter(({ centre }) => Math.abs(centre[0]) < 0.005);
      expect(tile.beads.filter(({ next }) => next)).toHaveLength(left.length);
      expect(tile.runs).toEqual(report.beads);
      expect(tile.lambda).toEqual(report.fit?.lambda);
    }
  });

  it("has woven ribbons on every tile: each piece comes again with its period", async () => {
    const weave = { lift: 0.2 };
    const bar = (path: string) => ({ path, height: 0.3, ribbon: { width: 0.4, weave } });
    const regions = [bar("M 0 -0.3 L 1 0.3"), bar("M 0 0.3 L 1 -0.3")];
    const woven = { ...CHANNEL, pattern: { ...CHANNEL.pattern, symmetry: "p1", regions } };
    const areaOf = async (tiles: number) => {
      const { regions: drawn } = await flatTile(woven, { tiles });
      return drawn.flatMap(({ rings }) => rings).reduce((sum, ring) => sum + polygonArea(ring), 0);
    };
    const one = await areaOf(1);
    expect(one).toBeGreaterThan(0);
    for (const tiles of [2, 5]) expect((await areaOf(tiles)) / (tiles * one)).toBeCloseTo(1, 5);
  });

  it("counts the beads of a pattern that stops", async () => {
    const { fit, beads, runs } = await flatTile(example("sluice-resizable"));
    const all = await flatTile(example("sluice-resizable"), { tiles: fit.repeats });
    const count = runs.reduce((sum, run) => sum + run.count, 0);
    expect(beads).toHaveLength(count / fit.repeats);
    expect(all.beads).toHaveLength(count);
  });

  it("refuses what it cannot show", async () => {
    const { pattern: _, ...plain } = CHANNEL;
    await expect(flatTile(plain)).rejects.toMatchObject({ code: "no-pattern" });
    const { fit } = await flatTile(CHANNEL);
    for (const tiles of [0, 1.5, -1, fit.repeats + 1]) {
      await expect(flatTile(CHANNEL, { tiles })).rejects.toMatchObject({
        code: "tiles-out-of-range",
        allowed: `a whole number from 1 to ${fit.repeats}`,
      });
    }
    await expect(
      flatTile({ ...CHANNEL, beads: [{ along: { v: 0 }, diameter: 0.3 }] }, { maxBeads: 9 }),
    ).rejects.toMatchObject({ code: "too-many-beads" });
  });
});
