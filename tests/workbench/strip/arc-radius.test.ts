import { describe, expect, it } from "vitest";
import { arcNodes, bendArc, hasEllipse } from "../../../src/workbench/strip/arc-radius.js";
import { readPathText, writePathText } from "../../../src/workbench/strip/path-text.js";

const read = (d: string) => {
  const path = readPathText(d);
  if (path === undefined) throw new Error("no path");
  return path;
};

describe("the middle of an arc", () => {
  it("is taken hold of where the arc is a circle's, on its own side", () => {
    const [node, ...others] = arcNodes(read("M 1 0 A 1 1 0 0 1 0 1 L 5 5 A 2 1 0 0 1 7 7"));
    expect(others).toEqual([]);
    expect(node.at[0]).toBeCloseTo(Math.SQRT1_2, 9);
    expect(node.at[1]).toBeCloseTo(Math.SQRT1_2, 9);
    expect(arcNodes(read("M 1 0 A 1 1 0 0 0 0 1"))[0].at[0]).toBeCloseTo(1 - Math.SQRT1_2, 9);
  });

  it.each([
    [1, 0.3],
    [1, -0.3],
    [1, 1],
    [0.2, 1.7],
    [0.9, -2.4],
  ])("goes where it is put, on either side, flat or past the half round: %s, %s", (x, rise) => {
    const bent = bendArc(read("M 0 0 A 1 1 0 0 1 2 0 L 3 3"), 1, [x, rise]);
    const [node] = arcNodes(read(writePathText(bent)));
    expect(node.at[0]).toBeCloseTo(1, 3);
    expect(node.at[1]).toBeCloseTo(rise, 2);
    expect(writePathText(bent)).toMatch(/ L 3 3$/);
  });

  it("is none of an ellipse's, which is told", () => {
    expect(hasEllipse(read("M 0 0 A 1 2 0 0 1 2 0"))).toBe(true);
    expect(arcNodes(read("M 0 0 A 1 2 0 0 1 2 0"))).toEqual([]);
    expect(hasEllipse(read("M 0 0 A 1 1 0 0 1 2 0 L 3 3"))).toBe(false);
  });

  it("stays an arc that reaches from end to end however flat it is pulled", () => {
    const [node] = arcNodes(bendArc(read("M 0 0 A 1 1 0 0 1 2 0"), 1, [1, 0]));
    expect(node.radius).toBeGreaterThan(100);
    expect(node.radius).toBeLessThan(1000);
    const closed = read("M 0 0 A 1 1 0 0 1 0 0");
    expect(bendArc(closed, 1, [1, 1])).toBe(closed);
  });
});
