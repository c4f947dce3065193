// Covers: src/workbench/strip/path-curves.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flattenPath } from "../../../src/base/math/path-data.js";
import {
  addPoint,
  movePoint,
  nearestOn,
  nodesOf,
  removePoint,
  startOf,
} from "../../../src/workbench/strip/path-edit.js";
import { type PathText, readPathText, writePathText } from "../../../src/workbench/strip/path-text.js";

function read(d: string): PathText {
  const path = readPathText(d);
  if (path === undefined) throw new Error(`no path: ${d}`);
  return path;
}

/** Moves the first point that lies at a place. */
function moved(d: string, from: readonly [number, number], to: readonly [number, number]): string {
  const path = read(d);
  const node = nodesOf(path).find(({ at }) => Math.hypot(at[0] - from[0], at[1] - from[1]) < 1e-9);
  if (node === undefined) throw new Error("no such point");
  return writePathText(movePoint(path, node, to));
}

describe("a point of a path", () => {
  it("is moved and leaves every other text as it was written", () => {
    expect(moved("M0,0 L 1.00 , 0\n L1 1.50 Z", [1, 0], [2, 0.5])).toBe(
      "M0,0 L 2 0.5\n L1 1.50 Z".replace("\n L1", "\n L1"),
    );
  });

  it("leaves what follows it relatively where it was", () => {
    expect(moved("m1 1l2 0l0 2z", [3, 1], [4, 2])).toBe("m1 1 l 3 1 l -1 1z");
  });

  it("takes what lies level or upright out of line where it must", () => {
    expect(moved("M0 0H1V1Z", [1, 0], [2, 0.5])).toBe("M0 0 L 2 0.5 L 1 1Z");
    expect(moved("M0 0H1V1Z", [1, 0], [2, 0])).toBe("M0 0 H 2 L 1 1Z");
  });

  it("goes without a letter only where the one before it still stands", () => {
    expect(moved("M0 0H1 2V1Z", [1, 0], [1, 1])).toBe("M0 0 L 1 1 L 2 0V1Z");
  });

  it("takes the handles beside it along, and closes where it began", () => {
    expect(moved("M0 0C1 0 1 1 0 0Z", [0, 0], [1, 1])).toBe("M 1 1 C 2 1 2 2 1 1Z");
    expect(moved("M0 0C0 1 1 1 2 0S3 4 4 4", [2, 0], [3, 0])).toBe("M0 0 C 0 1 2 1 3 0S3 4 4 4");
  });

  it("bends what a smooth curve takes over", () => {
    expect(moved("M0 0C0 1 1 1 2 0S3 4 4 4", [1, 1], [1, 2])).toBe("M0 0 C 0 1 1 2 2 0S3 4 4 4");
    // T takes over the handle of what Q and T before it drew; its own stays, so the next curve says it in full.
    expect(moved("M0 0Q1 1 2 0T4 0T6 0", [2, 0], [2, 1])).toBe("M0 0 Q 1 1 2 1 Q 3 -1 4 0T6 0");
  });

  it("keeps an arc's radii and flags, written together as they may be", () => {
    expect(moved("M0 0a2 1 30 013 0l1 1", [3, 0], [4, 0])).toBe("M0 0 a 2 1 30 0 1 4 0 l 0 1");
  });

  it("of a second subpath moves nothing of the first, and what follows a Z relatively stays", () => {
    expect(moved("m0 0l1 0l0 1zm5 5l1 0", [0, 0], [1, -1])).toBe("m 1 -1 l 0 1l0 1z m 4 6l1 0");
  });
});

const NUMBER = fc.integer({ min: -40, max: 40 }).map((n) => n / 8);
const COMMANDS: Readonly<Record<string, number>> = { L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2 };
const command = fc
  .constantFrom(...Object.keys(COMMANDS))
  .chain((letter) =>
    fc
      .tuple(fc.boolean(), fc.array(NUMBER, { minLength: COMMANDS[letter], maxLength: COMMANDS[letter] }))
      .map(([relative, numbers]) => `${relative ? letter.toLowerCase() : letter}${numbers.join(" ")}`),
  );
const arc = fc
  .tuple(
    fc.boolean(),
    fc.integer({ min: 1, max: 9 }),
    fc.integer({ min: 1, max: 9 }),
    fc.boolean(),
    fc.boolean(),
    NUMBER,
    NUMBER,
  )
  .map(
    ([relative, rx, ry, large, sweep, x, y]) => `${relative ? "a" : "A"}${rx} ${ry} 20 ${+large} ${+sweep} ${x} ${y}`,
  );
const path = fc
  .array(
    fc.oneof(
      { weight: 4, arbitrary: command },
      { weight: 1, arbitrary: arc },
      { weight: 1, arbitrary: fc.constant("zm1 2") },
    ),
    {
      minLength: 3,
      maxLength: 9,
    },
  )
  .map((steps) => `m1 1${steps.join("")}`);

describe("a path changed by hand", () => {
  it("has every other point where it was, whatever is moved", () => {
    fc.assert(
      fc.property(path, fc.nat(), NUMBER, NUMBER, (d, pick, x, y) => {
        const before = read(d);
        const nodes = nodesOf(before);
        const node = nodes[pick % nodes.length];
        const planned = movePoint(before, node, [x, y]);
        const after = read(writePathText(planned));
        expect(after.steps).toHaveLength(before.steps.length);
        after.steps.forEach(({ points }, i) => {
          points.forEach((at, k) => {
            expect(at[0]).toBeCloseTo(planned.steps[i].points[k][0], 7);
            expect(at[1]).toBeCloseTo(planned.steps[i].points[k][1], 7);
          });
          if (Math.abs(i - node.step) > 1 && before.steps[i].points.length > 0 && node.kind === "end") {
            const [end, was] = [points[points.length - 1], before.steps[i].points[before.steps[i].points.length - 1]];
            const twin = was[0] === node.at[0] && was[1] === node.at[1];
            if (!twin) expect([end[0] - was[0], end[1] - was[1]].every((far) => Math.abs(far) < 1e-7)).toBe(true);
          }
        });
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it("draws the same with a point more, wherever it is put", () => {
    fc.assert(
      fc.property(path, fc.nat(), fc.integer({ min: 1, max: 9 }), (d, pick, tenths) => {
        const before = read(d);
        const steps = before.steps.flatMap(({ letter }, i) => (letter === "M" ? [] : [i]));
        const more = writePathText(addPoint(before, steps[pick % steps.length], tenths / 10));
        const length = (text: string) =>
          flattenPath(text, 1e-5).reduce((sum, { points, closed }) => {
            const round = closed ? [...points, points[0]] : points;
            return (
              sum + round.slice(1).reduce((long, [u, v], i) => long + Math.hypot(u - round[i][0], v - round[i][1]), 0)
            );
          }, 0);
        const [was, is] = [length(d), length(more)];
        expect(Math.abs(is - was)).toBeLessThan(2e-3 * Math.max(1, was));
      }),
      { seed: 11, numRuns: 150 },
    );
  });

  it("gets its point where it is asked for", () => {
    const closed = addPoint(read("M0 0L1 0L1 1Z"), 3, 0.5);
    expect(writePathText(closed)).toBe("M0 0L1 0L1 1 L 0.5 0.5Z");
    const curve = addPoint(read("M0 0C0 1 1 1 1 0"), 1, 0.5);
    expect(writePathText(curve)).toBe("M0 0 C 0 0.5 0.25 0.75 0.5 0.75 C 0.75 0.75 1 0.5 1 0");
    expect(startOf(curve, 2)).toEqual([0.5, 0.75]);
    const half = addPoint(read("M-1 0A1 1 0 0 1 1 0"), 1, 0.5);
    expect(nodesOf(half)[1].at[0]).toBeCloseTo(0, 9);
    expect(Math.abs(nodesOf(half)[1].at[1])).toBeCloseTo(1, 9);
  });

  it("loses a point, its beginning too, and is nothing once the last has gone", () => {
    const d = "M0 0L1 0l0 1L0 1Z";
    expect(writePathText(removePoint(read(d), 1) as PathText)).toBe("M0 0 l 1 1L0 1Z");
    expect(writePathText(removePoint(read(d), 0) as PathText)).toBe("M 1 0l0 1L0 1Z");
    expect(removePoint(read("M0 0L1 0"), 1)).toBeUndefined();
    expect(writePathText(removePoint(read("M0 0L1 0M5 5L6 6L7 5Z"), 1) as PathText)).toBe("M5 5L6 6L7 5Z");
  });

  it("tells the nearest of its places, along the closing line too, by millimetres", () => {
    const near = nearestOn(read("M0 0L4 0L4 4Z"), [2, 1.9], [1, 1]);
    expect(near).toMatchObject({ step: 3 });
    expect(near?.share).toBeCloseTo(0.5, 1);
    // Stretched across, the upright side is nearer.
    expect(nearestOn(read("M0 0L4 0L4 4"), [3, 0.5], [1, 10])).toMatchObject({ step: 2 });
    expect(nearestOn(read("M0 0L4 0L4 4"), [3, 0.5], [1, 1])).toMatchObject({ step: 1 });
  });
});
