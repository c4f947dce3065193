import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { annulet, PLAIN, put, tempFolder } from "../support.js";

const BEADED = {
  ...PLAIN,
  beads: [
    { along: { v: 0 }, diameter: 0.4 },
    { along: { v: 1 }, diameter: 0.3, to: 0.5 },
  ],
};

describe("annulet beads", () => {
  it("prints one fewer and one more beside what is made", async () => {
    const path = put(tempFolder(), "ring.json", BEADED);
    const { out: json } = await annulet(["beads", path, "--json"]);
    const [first, second] = JSON.parse(json);
    // A flat bore of 54 mm round and 1.6 mm of band: beads round 2 π R.
    const around = 54 + 2 * Math.PI * 1.6;
    expect(first.count).toBe(Math.round(around / (1.05 * 0.4)));
    expect(first.choices).toHaveLength(3);
    expect(second).toMatchObject({ diameterMin: 0.3, diameterMax: 0.5 });

    const { code, out, err } = await annulet(["beads", path]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const rows = out.split("\n").slice(2, 8);
    const counts = rows.map((row) => Number(/(\d+) +0\.[34]00/.exec(row)?.[1]));
    expect(counts.slice(0, 3)).toEqual([first.count - 1, first.count, first.count + 1]);
    expect(counts.slice(3)).toEqual(second.choices.map((choice: { count: number }) => choice.count));
    expect(rows.map((row) => row.includes("*"))).toEqual([false, true, false, false, true, false]);
    const [made] = first.choices.filter((choice: { made: boolean }) => choice.made);
    expect(rows[1].split(/ +/).slice(-4)).toEqual([
      made.ratio.toFixed(3),
      "gap",
      (100 * (made.ratio - 1)).toFixed(1),
      "%",
    ]);
    expect(rows[3]).toContain("0.300–0.500");
  });

  it("stops at the limits that it is told, as annulet tile and annulet fit do", async () => {
    const stdin = JSON.stringify({
      ...BEADED,
      pattern: {
        fit: { repeats: 9, hold: "band" },
        regions: [{ path: "M 0.2 -0.3 H 0.8 V 0.3 H 0.2 Z", height: 0.3 }],
      },
    });
    const corners = await annulet(["beads", "-", "--max-corners", "10"], { stdin });
    expect(corners.code).toBe(2);
    expect(corners.err).toContain("at most 10 corners");
    const tile = ["tile", "-", "-o", join(tempFolder(), "tile.svg"), "--max-corners", "10"];
    expect((await annulet(tile, { stdin })).err).toContain("at most 10 corners");
    const fitted = await annulet(["fit", "-", "--max-seconds", "1e-9"], { stdin });
    expect(fitted.code).toBe(2);
    expect(fitted.err).toContain("at most 1e-9 seconds");
  });

  it("calls an overlap so", async () => {
    const tight = { ...PLAIN, beads: [{ along: { v: 0 }, diameter: 0.4, pitch: 0.9 }] };
    const { out } = await annulet(["beads", "-"], { stdin: JSON.stringify(tight) });
    expect(out.match(/overlap/g)).toHaveLength(3);
  });

  it("says so where there are none", async () => {
    const { code, out } = await annulet(["beads", "-"], { stdin: JSON.stringify(PLAIN) });
    expect({ code, out }).toEqual({ code: 0, out: "The design has no bead runs.\n" });
  });
});
