// Covers: src/workbench/fields/by-place.ts
import { describe, expect, it } from "vitest";
import { byPlace } from "../../../src/workbench/fields/by-place.js";
import { entryOf, fieldOf, inForm, isInside, ROOT_PLACE } from "../../../src/workbench/fields/place.js";

describe("places", () => {
  it("go by the document and by the schema, which passes through lists and names forms", () => {
    const regions = fieldOf(fieldOf(ROOT_PLACE, "pattern"), "regions");
    const section = fieldOf(entryOf(regions, 2), "section");
    const height = fieldOf(inForm(section, "domed"), "height");
    expect(height).toEqual({
      path: ["pattern", "regions", 2, "section", "height"],
      schema: "pattern.regions.section.domed.height",
    });
    expect(inForm(section, undefined)).toEqual(section);
  });

  it("lie inside each other by whole steps", () => {
    expect(isInside(["beads", 1, "pitch"], ["beads", 1])).toBe(true);
    expect(isInside(["beads", 10], ["beads", 1])).toBe(false);
    expect(isInside(["beads"], ["beads", 1])).toBe(false);
    expect(isInside(undefined, [])).toBe(false);
  });

  it("are looked up by their longest end, forms left out where they have no entry", () => {
    const table = {
      edge: "any",
      "regions.edge": "lobes",
      "section.wall": "wall",
      ".size": "finger",
      "domed.rise": "dome",
    };
    expect(byPlace(table, "profile.outside.channel.edge")).toBe("any");
    expect(byPlace(table, "pattern.lanes.regions.edge")).toBe("lobes");
    expect(byPlace(table, "pattern.regions.section.ridge.wall")).toBe("wall");
    expect(byPlace(table, "rules.limits.wall")).toBeUndefined();
    expect(byPlace(table, "size")).toBe("finger");
    expect(byPlace(table, "pattern.regions.texture.size")).toBeUndefined();
    expect(byPlace(table, "profile.outside.domed.rise")).toBe("dome");
    expect(byPlace({}, "constructor")).toBeUndefined();
  });
});
