import { describe, expect, it } from "vitest";
import { annulet, PLAIN, put, TILED, tempFolder } from "../support.js";

describe("annulet fit", () => {
  it("prints the candidates best first, in millimetres that add up", async () => {
    const path = put(tempFolder(), "ring.json", TILED);
    const { out: json } = await annulet(["fit", path, "--json"]);
    const fit = JSON.parse(json);
    expect(fit.drawnWidth).toBe(4);
    // A flat band's seat has one radius, so the tiles close the circle at it: N · t = 2 π R.
    const around = 2 * Math.PI * (54 / Math.PI / 2 + 1.6);
    for (const { repeats, tileWidth } of fit.candidates) expect(repeats * tileWidth).toBeCloseTo(around, 6);

    const { code, out, err } = await annulet(["fit", path]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const rows = out.split("\n").slice(2, 2 + fit.candidates.length);
    const shown = rows.map((row) => Number(row.replace("*", " ").trim().split(/\s+/)[0]));
    expect(shown).toEqual(fit.candidates.map((one: { repeats: number }) => one.repeats));
    expect(rows.filter((row) => row.startsWith("*"))).toEqual([rows[0]]);
    expect(rows[0].trim().split(/\s+/).slice(2, 6)).toEqual([
      fit.tileWidth.toFixed(3),
      fit.tileHeight.toFixed(3),
      fit.bandWidth.toFixed(3),
      `${fit.bandWidth > 4 ? "+" : ""}${(fit.bandWidth - 4).toFixed(3)}`,
    ]);
    expect(out).toMatch(
      new RegExp(`\\* ${fit.repeats} tiles go round, .* band becomes ${fit.bandWidth.toFixed(3)} mm wide`),
    );
  });

  it("says by how much tiles stretch when the band is held", async () => {
    const held = { ...TILED, pattern: { fit: { hold: "band", repeats: 12 } } };
    const { out: json } = await annulet(["fit", "-", "--json"], { stdin: JSON.stringify(held) });
    const { stretch } = JSON.parse(json);
    const { out } = await annulet(["fit", "-"], { stdin: JSON.stringify(held) });
    const by = (Math.abs(stretch - 1) * 100).toFixed(3);
    expect(out).toContain(`${stretch > 1 ? "stretched" : "squeezed"} across it by ${by} %`);
    expect(out).toMatch(/^\* +12 /m);
  });

  it("has nothing to fit on a plain band", async () => {
    const { code, err } = await annulet(["fit", "-"], { stdin: JSON.stringify(PLAIN) });
    expect(code).toBe(2);
    expect(err).toMatch(/no pattern/);
  });
});
