import { describe, expect, it } from "vitest";
import { beadSizes } from "../../src/beads/bead-sizes.js";

const grown = { diameter: 0.3, to: 0.5 };
const at = (line: Parameters<typeof beadSizes>[1], shares: readonly number[]) =>
  shares.map((share) => Number(beadSizes(grown, line).at(share, 0).toFixed(12)));

describe("sizes along a line", () => {
  it("grow from end to end of an open line", () => {
    expect(at({ kind: "open", even: false }, [0, 0.25, 0.5, 1])).toEqual([0.3, 0.35, 0.4, 0.5]);
  });

  it("grow to the middle and back where a symmetry turns the line, or it closes", () => {
    expect(at({ kind: "open", even: false, reverses: true }, [0, 0.25, 0.5, 1])).toEqual([0.3, 0.4, 0.5, 0.3]);
    expect(at({ kind: "loop", even: false }, [0, 0.25, 0.5, 0.75, 1.25])).toEqual([0.3, 0.4, 0.5, 0.4, 0.4]);
    expect(at({ kind: "strand", even: false }, [0, 0.5])).toEqual([0.3, 0.5]);
  });

  it("do so twice where only even numbers are symmetric", () => {
    expect(at({ kind: "loop", even: true }, [0, 0.25, 0.5, 0.75])).toEqual([0.3, 0.5, 0.3, 0.5]);
  });

  it("take turns", () => {
    const sizes = beadSizes({ diameter: 0.4, alternate: 0.25 }, { kind: "loop", even: false });
    expect([0, 1, 2].map((i) => sizes.at(0.3, i))).toEqual([0.4, 0.25, 0.4]);
    expect(sizes.density(0, 1)).toBeCloseTo(1 / 0.325, 12);
    expect(sizes).toMatchObject({ least: 0.25, most: 0.4, alternating: true, constant: false });
  });

  it("are one where nothing else is asked, or nothing different", () => {
    for (const other of [{}, { to: 0.4 }, { alternate: 0.4 }]) {
      expect(beadSizes({ diameter: 0.4, ...other }, { kind: "loop", even: false }).constant).toBe(true);
    }
  });

  it("are as dense as the mean of 1 / d, which of a line that grows is ln(b / a) / (b − a)", () => {
    const sizes = beadSizes(grown, { kind: "open", even: false });
    expect(sizes.density(0, 1)).toBeCloseTo(Math.log(0.5 / 0.3) / 0.2, 4);
  });
});
