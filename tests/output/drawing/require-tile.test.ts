import { drawTile, flatTile } from "annulet";
import { describe, expect, it } from "vitest";
import { failureOf } from "../../support/failure-of.js";

const tile = await flatTile({
  annulet: 1,
  size: { diameter: 17 },
  profile: { width: 4, thickness: 1.6, outside: { form: "flat" } },
  pattern: { regions: [{ path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.4 }] },
});

const told = (given: unknown, options = {}) =>
  failureOf(() => drawTile(given as typeof tile, options)).problems.map(({ code, path }) => [code, path]);

describe("a tile to be drawn", () => {
  it("is told apart from what is none, field by field", () => {
    expect(told(undefined)).toEqual([["option-missing", "tile"]]);
    expect(told("tile")).toEqual([["option-invalid", "tile"]]);
    expect(told({ ...tile, tiles: 1e9, beads: [null] })).toEqual([
      ["option-invalid", "tile.tiles"],
      ["option-invalid", "tile.beads"],
    ]);
    expect(told({ ...tile, fit: { ...tile.fit, rows: 0, tileWidth: undefined } })).toEqual([
      ["option-invalid", "tile.fit.rows"],
      ["option-missing", "tile.fit.tileWidth"],
    ]);
    expect(told({ ...tile, regions: [{ ...tile.regions[0], rings: [[]] }] })).toEqual([
      ["option-invalid", "tile.regions"],
    ]);
  });

  it("needs the surface laid flat only where it is drawn as worn", () => {
    const { height } = tile.top;
    const posted = { ...tile, top: { height } };
    expect(drawTile(posted as typeof tile)).toBe(drawTile(tile));
    expect(told(posted, { asWorn: true })).toEqual([["option-missing", "tile.top.develop"]]);
  });
});
