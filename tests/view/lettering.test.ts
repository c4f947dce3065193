// Covers: src/view/strokes.ts
import { describe, expect, test } from "vitest";
import { DRAWABLE, letteringGeometry, lettersWide } from "../../src/view/lettering.js";
import { arcAround } from "../../src/view/strokes.js";

/** Left, right, lower and upper end of a text. */
function extent(text: string): readonly [number, number, number, number] {
  const geometry = letteringGeometry(text);
  geometry.computeBoundingBox();
  const { min, max } = geometry.boundingBox ?? { min: { x: 0, y: 0 }, max: { x: 0, y: 0 } };
  return [min.x, max.x, min.y, max.y];
}

describe("letters of strokes", () => {
  test.each([..."0123456789Ø"])("%s is as high as all figures and within its width", (letter) => {
    const [left, right, low, high] = extent(letter);
    expect(low).toBeCloseTo(-0.53, 1);
    expect(high - low).toBeGreaterThan(0.99);
    expect(high - low).toBeLessThan(1.12);
    expect(right - left).toBeLessThan(lettersWide(letter) + 0.13);
    expect((left + right) / 2).toBeCloseTo(0, 1);
  });

  test("no two figures look alike: each differs from every other by a tenth of its area", () => {
    const figures = [..."0123456789"].map((letter) => shadeOf(letter));
    for (let i = 0; i < figures.length; i++) {
      for (let j = 0; j < i; j++) {
        const differing = figures[i].filter((dark, at) => dark !== figures[j][at]).length;
        expect(differing / figures[i].filter(Boolean).length, `${i} and ${j}`).toBeGreaterThan(0.1);
      }
    }
  });

  test("a text is as wide as its letters with spaces between them", () => {
    expect(lettersWide("11")).toBeCloseTo(2 * lettersWide("1") + 0.2, 12);
    const [left, right] = extent("12.5 mm");
    expect(right - left).toBeCloseTo(lettersWide("12.5 mm") + 0.1, 1);
  });

  test("every triangle faces the reader", () => {
    const { array } = letteringGeometry(DRAWABLE).getAttribute("position");
    for (let i = 0; i < array.length; i += 9) {
      const [ax, ay, , bx, by, , cx, cy] = array.slice(i, i + 9);
      expect((bx - ax) * (cy - ay) - (by - ay) * (cx - ax)).toBeGreaterThan(0);
    }
  });

  test("what has no strokes is an error, keys of every object among it", () => {
    expect(() => letteringGeometry("é")).toThrow(RangeError);
    expect(() => lettersWide("constructor")).toThrow(RangeError);
  });
});

test("an arc begins and ends where it is told, and runs along its ellipse", () => {
  const arc = arcAround([1, 2], [3, 4], 0, -90);
  expect(arc[0]).toEqual([4, 2]);
  expect(arc.at(-1)?.[0]).toBeCloseTo(1, 12);
  expect(arc.at(-1)?.[1]).toBeCloseTo(-2, 12);
  for (const [x, y] of arc) expect(((x - 1) / 3) ** 2 + ((y - 2) / 4) ** 2).toBeCloseTo(1, 12);
});

/** Which cells of a grid over a figure are dark. */
function shadeOf(letter: string): readonly boolean[] {
  const { array } = letteringGeometry(letter).getAttribute("position");
  const cells: boolean[] = [];
  for (let j = 0; j < 24; j++) {
    for (let i = 0; i < 16; i++) cells.push(covers(array, (i + 0.5) / 24 - 1 / 3, (j + 0.5) / 21 - 24 / 42));
  }
  return cells;
}

function covers(array: ArrayLike<number>, x: number, y: number): boolean {
  for (let i = 0; i < array.length; i += 9) {
    const side = (a: number, b: number) =>
      (array[i + b] - array[i + a]) * (y - array[i + a + 1]) -
      (array[i + b + 1] - array[i + a + 1]) * (x - array[i + a]);
    if (side(0, 3) >= 0 && side(3, 6) >= 0 && side(6, 0) >= 0) return true;
  }
  return false;
}
