import { readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { withoutStone, withStone } from "../../../src/workbench/strip/add-stone.js";

const oval = {
  name: "big",
  cut: "oval",
  size: 3,
  width: 2,
  gem: "ruby",
  place: { form: "single", angle: 90 },
  setting: { form: "bezel", wall: 0.5 },
};

describe("a stone that is put down", () => {
  it("is a small one where none is chosen, and reads as a design", () => {
    const stones = withStone({}, { at: [0.5, 0.1], lane: "", selected: undefined });
    expect(stones).toEqual([{ size: 1.2, place: { form: "tile", at: [0.5, 0.1] }, setting: { form: "flush" } }]);
    const profile = { width: 6, thickness: 2, outside: { form: "flat" } };
    expect(() => readDesign({ annulet: 1, size: { diameter: 17 }, profile, pattern: {}, stones })).not.toThrow();
  });

  it("is alike the group that is chosen but for its name and place", () => {
    const chosen = { at: [0, 0] as const, lane: "", selected: ["stones", 0, "size"] };
    const [, added] = withStone({ stones: [oval] }, chosen);
    const { name: _, place: __, ...alike } = oval;
    expect(added).toEqual({ ...alike, place: { form: "tile", at: [0, 0] } });
    const beside = withStone({ stones: [oval] }, { ...chosen, selected: ["beads", 0] });
    expect(beside[1]).toMatchObject({ size: 1.2, setting: { form: "flush" } });
  });

  it("names its lane where the pattern has several, and no other", () => {
    const document = { pattern: { lanes: [{ name: "low" }, {}] } };
    const [added] = withStone(document, { at: [0, 0], lane: "lane 2", selected: undefined });
    expect(added).toMatchObject({ place: { lane: "lane 2" } });
  });

  it("is taken away with its group, and the list with the last", () => {
    expect(withoutStone({ stones: [oval, { size: 1 }] }, 0)).toEqual([{ size: 1 }]);
    expect(withoutStone({ stones: [oval] }, 0)).toBeUndefined();
    expect(withoutStone({}, 0)).toBeUndefined();
  });
});
