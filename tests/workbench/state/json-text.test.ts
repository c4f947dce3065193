import { describe, expect, it } from "vitest";
import { changeText, nameOf, pathOf, placeOf, readText, valueAt } from "../../../src/workbench/state/json-text.js";

const TEXT = `{
  "annulet": 1, "name": "Demo",
  "beads": [ { "along": "rail",   "diameter": 0.5 } ]
}
`;

describe("a document's text", () => {
  it("is read, or told where it stops being JSON", () => {
    expect(readText(TEXT)).toEqual({ value: JSON.parse(TEXT) });
    expect(readText('{"a": 1,, }')).toMatchObject({ misread: { at: 8 } });
    expect(readText("[1]")).toMatchObject({ misread: { at: 0 } });
    expect(readText("")).toHaveProperty("misread");
  });

  it("keeps all else as written when one value changes", () => {
    expect(changeText(TEXT, ["beads", 0, "diameter"], 0.4)).toBe(TEXT.replace("0.5", "0.4"));
    expect(JSON.parse(changeText(TEXT, ["name"], undefined))).toEqual({ annulet: 1, beads: JSON.parse(TEXT).beads });
    expect(JSON.parse(changeText(TEXT, ["profile", "outside", "form"], "flat")).profile).toEqual({
      outside: { form: "flat" },
    });
    expect(JSON.parse(changeText(TEXT, ["beads", 1], { along: "edge" })).beads).toHaveLength(2);
  });

  it("tells where a value stands, or the part around it", () => {
    const at = placeOf(TEXT, ["beads", 0, "diameter"]);
    expect(TEXT.slice(at.from, at.to)).toBe("0.5");
    const around = placeOf(TEXT, ["beads", 0, "gap"]);
    expect(JSON.parse(TEXT.slice(around.from, around.to))).toEqual({ along: "rail", diameter: 0.5 });
    expect(placeOf("{", ["a"])).toEqual({ from: 0, to: 1 });
  });

  it("names places as errors do", () => {
    for (const name of ["profile.outside.rail", "pattern.regions[2].height", "beads[0]", "name"]) {
      expect(nameOf(pathOf(name))).toBe(name);
    }
    expect(pathOf("pattern.regions[2].height")).toEqual(["pattern", "regions", 2, "height"]);
    expect(valueAt(JSON.parse(TEXT), ["beads", 0, "along"])).toBe("rail");
    expect(valueAt(JSON.parse(TEXT), ["__proto__", "constructor"])).toBeUndefined();
  });
});
