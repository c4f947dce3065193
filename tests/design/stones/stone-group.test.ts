// Covers: src/design/stones/*, src/design/stones/settings/*
/**
 * Groups of stones in the document: defaults, and what does not go together.
 */
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { readDesign } from "../../../src/design/read.js";
import { CUT_NAMES } from "../../../src/gems/stone.js";
import { plainBand } from "../documents.js";

const flush = { form: "flush" };
const single = { form: "single" };
const stone = { size: 1.5, place: single, setting: flush };

const read = (group: object) => readDesign({ ...plainBand, stones: [group] }).stones[0];

function problemsOf(group: object): string[] {
  try {
    read(group);
  } catch (error) {
    return (error as AnnuletError).problems.map(({ path, message }) => `${path}: ${message}`);
  }
  throw new Error("the group was taken");
}

describe("a group of stones", () => {
  it("has every default filled in", () => {
    expect(read(stone)).toEqual({
      cut: "round",
      size: 1.5,
      gem: "diamond",
      proportions: "usual",
      place: { form: "single", angle: 90, v: 0, turn: 0 },
      setting: { form: "flush", ready: "full", pilot: 0.6 },
      through: false,
    });
  });

  it("may be of any cut", () => {
    for (const cut of CUT_NAMES) expect(read({ ...stone, cut }).cut).toBe(cut);
  });

  it("fills in what each setting needs", () => {
    const setting = (form: string) => read({ ...stone, setting: { form } }).setting;
    expect(setting("bead-set")).toMatchObject({ grains: 4, grain: 0.25, shared: true, border: 0 });
    expect(setting("channel")).toMatchObject({ cover: 0.06, bearing: 75, rise: 0, wall: 0.8 });
    expect(setting("bezel")).toMatchObject({ wall: 0.5, height: 0.35, ledge: 0.3 });
    expect(setting("prongs")).toMatchObject({ count: 4, tip: 0.6, height: 0.7, notch: 0.4, shared: false });
  });

  it("fills in a row", () => {
    const place = { form: "row" };
    expect(read({ ...stone, place }).place).toEqual({ form: "row", along: "middle", over: "round", turn: 0 });
  });

  const row = (more: object) => ({ ...stone, place: { form: "row", ...more } });
  it.each([
    ["a round one with a width of its own", { ...stone, width: 1 }, "width: does not belong to round"],
    ["one wider than long", { ...stone, cut: "oval", width: 2 }, "width: is more than the length"],
    ["a narrow end of another cut", { ...stone, narrow: 1 }, "narrow: belongs to tapered-baguette"],
    [
      "a narrow end that is wider",
      { ...stone, cut: "tapered-baguette", width: 1, narrow: 1.2 },
      "narrow: is more than the width",
    ],
    [
      "Tolkowsky's proportions of an oval",
      { ...stone, cut: "oval", proportions: "tolkowsky" },
      "proportions: is Tolkowsky's",
    ],
    [
      "a crown told twice",
      { ...stone, proportions: { crownAngle: 34, crownHeight: 0.15 } },
      "proportions: has crownAngle and crownHeight",
    ],
    [
      "a pavilion told twice",
      { ...stone, proportions: { pavilionAngle: 41, pavilionDepth: 0.43 } },
      "proportions: has pavilionAngle and pavilionDepth",
    ],
    ["a line along nothing", { ...stone, place: { form: "line" } }, "place: needs a path or a shape"],
    ["a gap and a count", row({ gap: 0.1, count: 5 }), "place.count: is given instead of a gap"],
    ["an arc backwards", row({ over: { from: 150, to: 30 } }), "place.over: goes from an angle to a larger one"],
    ["a negative gap", row({ gap: -0.1 }), "place.gap: must be at least 0"],
    ["an unknown form", { ...stone, setting: { form: "tension" } }, "setting.form"],
  ])("refuses %s", (_, group, problem) => {
    const problems = problemsOf(group);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(`stones[0].${problem}`);
  });

  it("says all that is wrong with all groups at once", () => {
    const stones = [{ ...stone, width: 1 }, { ...stone, narrow: 1 }, row({ gap: -1 })];
    try {
      readDesign({ ...plainBand, stones });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(AnnuletError);
      const { problems } = error as AnnuletError;
      expect(problems.map(({ path }) => path)).toEqual(["stones[0].width", "stones[1].narrow", "stones[2].place.gap"]);
    }
  });
});
