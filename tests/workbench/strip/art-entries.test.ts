import { describe, expect, it } from "vitest";
import { flatTile } from "../../../src/index.js";
import {
  artEntries,
  chosenEntry,
  laneNames,
  nextEntry,
  partsOf,
  tilesOf,
} from "../../../src/workbench/strip/art-entries.js";

const art = (x: number) => ({ path: `M${x} -0.1L${x + 0.2} -0.1L${x + 0.1} 0.1Z`, height: 0.3 });

const LANED = {
  annulet: 1,
  name: "Entries",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 7, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
  pattern: {
    lanes: [
      { name: "low", fit: { repeats: 12 }, regions: [{ ...art(0.2), name: "leaf" }, art(0.6)] },
      {
        fit: { repeats: 12 },
        regions: [art(0.2)],
        medallion: { tiles: 2, regions: [art(0.2)] },
      },
    ],
    fit: { hold: "band" },
  },
  beads: [
    { along: "rail", diameter: 0.4 },
    { along: { v: 0.5 }, diameter: 0.4 },
    { along: { path: "M0 0L1 0", lane: "lane 2" }, diameter: 0.3 },
    { along: { path: "M0 0L1 0" }, diameter: 0.3 },
  ],
};

describe("what is drawn on the tiles that are shown", () => {
  it("has the names by which the library calls its bodies", async () => {
    for (const [lane, part] of [
      ["low", "tile"],
      ["lane 2", "tile"],
      ["lane 2", "medallion"],
    ] as const) {
      const document = { ...LANED, beads: [] };
      const tile = await flatTile(document, { lane, part });
      const names = artEntries(document, { lane, part }).map(({ name }) => name);
      expect(tile.regions.length).toBeGreaterThan(0);
      for (const region of tile.regions) expect(names).toEqual(expect.arrayContaining([...region.names]));
    }
  });

  it("is the regions of the lane and part, and the runs that stand in it", () => {
    expect(laneNames(LANED)).toEqual(["low", "lane 2"]);
    expect(partsOf(LANED, undefined)).toEqual(["tile"]);
    expect(partsOf(LANED, "lane 2")).toEqual(["tile", "medallion"]);
    const paths = (lane: string | undefined) =>
      artEntries(LANED, { part: "tile", lane }).map(({ path }) => path.join("."));
    expect(paths(undefined)).toEqual(["pattern.lanes.0.regions.0", "pattern.lanes.0.regions.1", "beads.1", "beads.3"]);
    expect(paths("lane 2")).toEqual(["pattern.lanes.1.regions.0", "beads.1", "beads.2"]);
    expect(artEntries(LANED, { part: "medallion", lane: "lane 2" })[0].path.join(".")).toBe(
      "pattern.lanes.1.medallion.regions.0",
    );
    const ends = { pattern: { regions: [], ends: { form: "ornament", regions: [{}] } } };
    expect(partsOf(ends, undefined)).toEqual(["tile", "ornament"]);
    expect(artEntries(ends, { part: "ornament", lane: undefined })[0]).toMatchObject({ name: "ends region 1" });
  });

  it("is nothing where the document is anything else", () => {
    for (const odd of [
      undefined,
      {},
      { pattern: 3 },
      { pattern: { regions: "x" } },
      { pattern: { regions: [null, 3] } },
    ]) {
      expect(() => artEntries(odd, { part: "tile", lane: undefined })).not.toThrow();
    }
  });

  it("is chosen by any field in it, and by a press, again and again the next of those that lie there", () => {
    const entries = artEntries(LANED, { part: "tile", lane: "low" });
    const [leaf, second] = entries;
    expect(chosenEntry(entries, [...second.path, "height"])).toBe(second);
    expect(chosenEntry(entries, ["pattern", "lanes", 0])).toBeUndefined();
    const names = [second.name, "leaf"];
    expect(nextEntry(entries, names, undefined)).toBe(second);
    expect(nextEntry(entries, names, second)).toBe(leaf);
    expect(nextEntry(entries, names, leaf)).toBe(second);
    expect(nextEntry(entries, ["none"], leaf)).toBeUndefined();
  });
});

describe("what is chosen in another view", () => {
  const lanes = {
    pattern: { lanes: [{ name: "low" }, { name: "high" }] },
    beads: [{ along: { path: "M 0 0", lane: "high" } }],
  };

  it("is shown on its own tiles", () => {
    expect(tilesOf(lanes, ["pattern", "lanes", 1, "regions", 0])).toEqual({ part: "tile", lane: "high" });
    expect(tilesOf(lanes, ["pattern", "lanes", 0, "medallion", "regions", 0])).toEqual({
      part: "medallion",
      lane: "low",
    });
    expect(tilesOf(lanes, ["beads", 0])).toEqual({ part: "tile", lane: "high" });
    expect(tilesOf({}, ["pattern", "ends", "regions", 0])).toEqual({ part: "ornament", lane: undefined });
    expect(tilesOf({}, ["pattern", "regions", 3, "height"])).toEqual({ part: "tile", lane: undefined });
  });

  it("changes no tiles where it is none of theirs", () => {
    for (const path of [
      ["profile", "bore"],
      ["pattern", "fit", "repeats"],
      ["pattern", "ends", "length"],
      ["beads", 1],
    ]) {
      expect(tilesOf({ beads: [{}, { along: "rail" }] }, path)).toBeUndefined();
    }
  });
});

describe("groups of stones", () => {
  const document = {
    pattern: { lanes: [{ name: "low" }, { name: "high" }] },
    stones: [
      { place: { form: "tile", at: [0, 0], lane: "high" } },
      { name: "row", place: { form: "row" } },
      { place: { form: "line", path: "M0 0H1" } },
      {},
    ],
  };
  const entries = (lane: string) =>
    artEntries(document, { part: "tile", lane })
      .filter(({ kind }) => kind === "stones")
      .map(({ name, path }) => [name, path[1]]);

  it("are drawn in their lane's tiles, and round the band in all", () => {
    expect(entries("low")).toEqual([
      ["row", 1],
      ["stones 3", 2],
      ["stones 4", 3],
    ]);
    expect(entries("high").map(([, at]) => at)).toEqual([0, 1, 3]);
    expect(artEntries(document, { part: "medallion", lane: "low" })).toEqual([]);
  });

  it("show their own tiles where they stand in some", () => {
    expect(tilesOf(document, ["stones", 0, "size"])).toEqual({ part: "tile", lane: "high" });
    expect(tilesOf(document, ["stones", 2])).toEqual({ part: "tile", lane: "low" });
    for (const at of [1, 3, 7]) expect(tilesOf(document, ["stones", at])).toBeUndefined();
  });
});
