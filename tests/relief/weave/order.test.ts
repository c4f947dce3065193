import { describe, expect, it } from "vitest";
import { failureOf } from "../../flat/strips.js";
import { dowker, lineOf, loopOf, sequence, trefoil, woven } from "./knots.js";

/** A strand of a plait of three: a cosine three tiles long, a tile 6 mm. */
const withy = (phase: number) =>
  lineOf(
    Array.from({ length: 1001 }, (_, i): [number, number] => {
      const u = -12 + i * 0.03;
      return [u, Math.cos((2 * Math.PI * (u + phase)) / 18)];
    }),
  );

const alternates = (list: readonly boolean[]) => list.every((over, i) => i === 0 || over !== list[i - 1]);

describe("the order of a weave", () => {
  it("makes the trefoil's alternating diagram: 4 6 2 in Dowker's notation, over and under by turns", () => {
    const found = woven([trefoil]);
    // Knot 3_1 in any table of knots, as in Rolfsen, "Knots and Links", 1976.
    expect(dowker(trefoil, found.crossings)).toEqual([4, 6, 2]);
    const [list] = sequence([trefoil], found);
    expect(list).toHaveLength(6);
    expect(alternates([...list, list[0]])).toBe(true);
  });

  it("makes the figure-eight knot's: 4 6 8 2", () => {
    const knot = loopOf((t) => [
      3 + 0.5 * (2 + Math.cos(2 * t)) * Math.cos(3 * t),
      0.5 * (2 + Math.cos(2 * t)) * Math.sin(3 * t),
    ]);
    const found = woven([knot]);
    const [list] = sequence([knot], found);
    expect(alternates([...list, list[0]])).toBe(true);
    if (found.crossings.length === 4) expect(dowker(knot, found.crossings)).toEqual([4, 6, 8, 2]);
  });

  it("makes the plait of three: each strand over and under by turns, in every tile alike", () => {
    const strands = [withy(0), withy(6), withy(12)];
    const found = woven(strands);
    for (const list of sequence(strands, found)) {
      expect(list.length).toBeGreaterThan(5);
      expect(alternates(list)).toBe(true);
    }
    // The braid σ₁ σ₂⁻¹: of the crossings above the middle the falling strand passes over, below it the rising one, or
    // the other way about (E. Artin, "Theory of braids", 1947).
    const falling = found.crossings.map(({ at: [, v], passes }, i) => {
      const over = passes[found.order[i]];
      return over.angle > Math.PI / 2 === v > 0;
    });
    expect(new Set(falling).size).toBe(1);
  });

  it("lets the later region pass over where that is asked for", () => {
    const strands = [
      lineOf(
        [
          [0, 0],
          [6, 0],
        ],
        1,
      ),
      lineOf(
        [
          [1, -1],
          [2, 1],
          [3, -1],
          [4, 1],
        ],
        0,
      ),
    ];
    const found = woven(strands, { later: true });
    expect(sequence(strands, found)).toEqual([
      [true, true, true],
      [false, false, false],
    ]);
    const own = failureOf(() => woven([trefoil], { later: true, names: ["eddy"] }));
    expect([own.code, own.path]).toEqual(["weave-own", "weave.over"]);
    expect(own.message).toMatch(/eddy/);
  });

  it("that cannot be names the strand and says what would do", () => {
    // A line all the way round that crosses one other in each tile.
    const level = lineOf([
      [-12, 0],
      [18, 0],
    ]);
    const bars = [-2, -1, 0, 1, 2].map((n) =>
      lineOf(
        [
          [6 * n + 1, -1],
          [6 * n + 2, 1],
        ],
        1,
      ),
    );
    const error = failureOf(() => woven([level, ...bars], { names: ["level", "bar"] }));
    expect([error.code, error.path]).toEqual(["weave-no-order", "weave.over"]);
    expect(error.message).toMatch(/level/);
    expect(error.hint).toMatch(/"cycle": 2/);
    expect(woven([level, ...bars], { names: ["level", "bar"], cycle: 2 }).crossings).toHaveLength(5);
  });

  it.each(["p1m1", "p2mm"] as const)("contradicts the mirrors of %s through a crossing", (symmetry) => {
    const strands = [
      lineOf([
        [2, -1],
        [4, 1],
      ]),
      lineOf([
        [2, 1],
        [4, -1],
      ]),
    ];
    const error = failureOf(() => woven(strands, { symmetry }));
    expect([error.code, error.value]).toEqual(["weave-mirror", symmetry]);
    expect(error.allowed).toMatch(symmetry === "p1m1" ? /here "p1"$/ : /here "p1" or "p2"$/);
    expect(error.hint).toMatch(symmetry === "p1m1" ? /^say "symmetry": "p1" / : /^say "symmetry": "p2" /);
    expect(woven(strands, { symmetry: "p2" }).order).toHaveLength(1);
  });

  it("is as symmetric as its pattern", () => {
    const wave = (sign: number) =>
      lineOf(
        Array.from({ length: 601 }, (_, i): [number, number] => [
          i * 0.05 - 12,
          sign * Math.cos((Math.PI * (i * 0.05 - 12)) / 3),
        ]),
      );
    const strands = [wave(1), wave(-1)];
    const twist = woven(strands, { symmetry: "p2" });
    for (const list of sequence(strands, twist)) expect(alternates(list)).toBe(true);
    // A glide brings each strand of a twist on to itself and would turn the twist the other way; a plait of three it keeps.
    for (const symmetry of ["p11g", "p2mg"] as const) {
      expect(failureOf(() => woven(strands, { symmetry })).code).toBe("weave-mirror");
    }
    const plait = [withy(0), withy(6), withy(12)];
    for (const list of sequence(plait, woven(plait, { symmetry: "p11g" }))) expect(alternates(list)).toBe(true);
  });

  it("has no answer where three cross in a point", () => {
    const star = [0, 1, 2].map((k) => {
      const [x, y] = [Math.cos(k), Math.sin(k)];
      return lineOf([
        [3 - x, -y],
        [3 + x, y],
      ]);
    });
    expect(failureOf(() => woven(star)).code).toBe("weave-triple");
  });
});
