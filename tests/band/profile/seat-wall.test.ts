import { describe, expect, it } from "vitest";
import { buildOutline } from "../../../src/band/profile/profile.js";
import { seatWall } from "../../../src/band/profile/seat-wall.js";
import { spec } from "./specs.js";

const RADIUS = 8;
const flat = { form: "flat", edge: 0 };
const wall = (outside: object, bore: object = flat) =>
  seatWall(buildOutline(spec({ width: 6, thickness: 2, bore, outside }), RADIUS, 0.01));

describe("the metal under a seat", () => {
  it("of a flat band is its thickness, of a channel that less its depth", () => {
    expect(wall(flat)).toBeCloseTo(2, 12);
    expect(wall({ form: "channel", rail: 1, depth: 0.6, edge: 0, root: 0 })).toBeCloseTo(1.4, 12);
  });

  it("of a dome is least at its ends, of a hollow in its middle", () => {
    expect(wall({ form: "domed", rise: 0.5, edge: 0 })).toBeCloseTo(1.5, 9);
    expect(wall({ form: "concave", dip: 0.5, edge: 0 })).toBeCloseTo(1.5, 4);
  });

  it("over a comfort bore is least in the middle, where the bore is narrowest by the whole rise", () => {
    // A rise of the bore makes it wider towards its edges: there the wall is thinner by all of it.
    const own = wall(flat, { form: "comfort", rise: 0.4, edge: 0 });
    expect(own).toBeCloseTo(1.6, 3);
  });

  it("does not count where the bore's own edges are rounded away", () => {
    expect(wall(flat, { form: "flat", edge: 0.5 })).toBeCloseTo(2, 12);
  });
});
