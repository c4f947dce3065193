import { describe, expect, it } from "vitest";
import type { GridPath } from "../../src/flat/grid.js";
import { keepsParts } from "../../src/flat/keeps-parts.js";

const square = (low: number, high: number): GridPath => [
  { x: low, y: low },
  { x: high, y: low },
  { x: high, y: high },
  { x: low, y: high },
];
const hole = (low: number, high: number) => square(low, high).reverse();

describe("keeping parts", () => {
  const frame = [square(0, 100), hole(40, 60)];

  it("holds while each part stays one, with its holes", () => {
    expect(keepsParts(frame, frame)).toBe(true);
    expect(keepsParts(frame, [square(5, 95), hole(35, 65)])).toBe(true);
    expect(keepsParts([...frame, square(45, 55)], [...frame, square(46, 54)])).toBe(true);
  });

  it("fails where a part splits or vanishes, or a hole opens", () => {
    expect(keepsParts(frame, [])).toBe(false);
    expect(keepsParts(frame, [square(5, 95)])).toBe(false);
    expect(keepsParts([square(0, 100)], [square(5, 30), square(40, 60)])).toBe(false);
    // One splits while another vanishes: the number of outlines is the same.
    expect(keepsParts([square(0, 100), square(200, 210)], [square(5, 30), square(40, 60)])).toBe(false);
  });

  it("looks only at the parts that count", () => {
    expect(keepsParts([square(0, 100), square(200, 210)], [square(5, 95)], ([{ x }]) => x < 150)).toBe(true);
  });
});
