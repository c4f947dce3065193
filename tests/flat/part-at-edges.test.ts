import { describe, expect, it } from "vitest";
import { boxRing } from "../../src/flat/box.js";
import { partAtEdges } from "../../src/flat/part-at-edges.js";

const p = (x: number, y: number) => ({ x, y });

describe("parting outlines at the edges of a cut", () => {
  it("leaves out the sides that lie on an edge, and keeps the others in their order", () => {
    const cut = boxRing({ left: 0, right: 10, low: 20, high: 100 });
    expect(partAtEdges([cut], 100)).toEqual({ closed: [], open: [[p(0, 100), p(0, 20), p(10, 20), p(10, 100)]] });
    const through = boxRing({ left: 0, right: 10, low: -100, high: 100 });
    expect(partAtEdges([through], 100).open).toEqual([
      [p(10, -100), p(10, 100)],
      [p(0, 100), p(0, -100)],
    ]);
  });

  it("leaves alone what only touches an edge in a point, or lies within", () => {
    const tip = [p(0, 0), p(10, 0), p(5, 100)];
    const inside = boxRing({ left: 0, right: 10, low: 20, high: 97 });
    expect(partAtEdges([tip, inside], 100)).toEqual({ closed: [tip, inside], open: [] });
  });
});
