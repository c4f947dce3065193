// Covers: src/output/report/mark-lines.ts
import { describe, expect, it } from "vitest";
import { openRing } from "../../src/index.js";
import { fontOfMark, nameMark, placeMark, workOfMark } from "../../src/output/report/mark-lines.js";
import { PLAIN } from "../cli/support.js";
import { bytesOf } from "../support/fonts.js";

const marked = {
  ...PLAIN,
  tolerance: 0.05,
  profile: { ...PLAIN.profile, width: 8 },
  lettering: [
    { text: "II", at: "bore", height: 2, angle: 40, v: 1.5 },
    { text: "IIII", at: "seat", height: 2, mode: "raised", relief: 0.3 },
  ],
  hallmark: { at: "seat", angle: 270, width: 4, height: 2, depth: 0 },
};

describe("marks in the report", () => {
  it("tell what stands where, how it is made and how long it is", async () => {
    const { marks } = await openRing(marked, { files: () => bytesOf("nunito") }).report();
    expect(marks).toMatchObject([
      {
        kind: "lettering",
        text: "II",
        at: "bore",
        side: null,
        angle: 40,
        v: 1.5,
        mode: "sunk",
        depth: 0.25,
        height: 2,
      },
      { kind: "lettering", text: "IIII", at: "seat", mode: "raised", depth: 0.3, height: 2 },
      {
        kind: "hallmark",
        text: null,
        font: null,
        at: "seat",
        angle: 270,
        mode: "plain",
        depth: 0,
        height: 2,
        length: 4,
      },
    ]);
    // Two more letters are two more advances: twice those between the two of the first text.
    const [two, four] = marks.map(({ length }) => length);
    expect(two).toBeGreaterThan(0.5);
    expect(four).toBeGreaterThan(2 * two);
    expect(four).toBeLessThan(5 * two);
  });

  it("are told in words", async () => {
    const { marks } = await openRing(marked, { files: () => bytesOf("nunito") }).report();
    expect(marks.map((mark) => [nameMark(mark), placeMark(mark), workOfMark(mark), fontOfMark(mark)])).toEqual([
      ['"II"', "in the bore at 40°, v 1.5 mm", "sunk 0.25 mm", "Nunito_800ExtraBold.ttf"],
      ['"IIII"', "on the seat at 90°", "raised 0.3 mm", "Nunito_800ExtraBold.ttf"],
      ["field for a hallmark", "on the seat at 270°", "level", undefined],
    ]);
  });

  it("are none where the design has none", async () => {
    expect((await openRing(PLAIN).report()).marks).toEqual([]);
  });
});
