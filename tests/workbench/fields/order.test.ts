// Covers: src/workbench/fields/uses.ts
import { describe, expect, it } from "vitest";
import { explain } from "../../../src/workbench/engine/explain-inside.js";
import { orderFields } from "../../../src/workbench/fields/order.js";
import { isUsed } from "../../../src/workbench/fields/uses.js";

const names = (schema: string, owner: Readonly<Record<string, unknown>>, constant?: string) => {
  const { first, more } = orderFields(schema, explain(schema)[0].fields, owner, constant);
  return { first: first.map(({ name }) => name), more: more.map(({ name }) => name) };
};

describe("the order of fields", () => {
  it("has the commonest first, in their own order, and the rest folded", () => {
    expect(names("profile", {})).toEqual({ first: ["width", "thickness", "outside", "bore"], more: ["step", "taper"] });
    expect(names("profile", { taper: { width: 4 } }).first).toContain("taper");
    expect(names("profile.outside.channel", {}, "form")).toEqual({
      first: ["rail", "depth", "crown", "edge"],
      more: ["root"],
    });
  });

  it("hides the document's own marks, and never a field that is written", () => {
    const all = names("", {});
    expect([...all.first, ...all.more]).toContain("stones");
    expect([...all.first, ...all.more]).not.toContain("annulet");
    expect(names("pattern.regions", { mode: "pierced", height: 0.3 }).first).toContain("height");
  });

  it("shows only what the chosen ways use", () => {
    const { first, more } = names("pattern.regions", { mode: "pierced", motif: { name: "star" } });
    expect([...first, ...more]).toContain("broken");
    for (const name of ["height", "depth", "section", "take", "map"]) expect([...first, ...more]).not.toContain(name);
    expect(isUsed("beads", "inset", { along: "rail" })).toBe(false);
    expect(isUsed("beads", "inset", { along: "seat-edge" })).toBe(true);
    expect(isUsed("beads", "inset", { along: "rail", inset: 0.2 })).toBe(true);
    expect(isUsed("pattern.lanes.regions", "depth", { mode: "sunk" })).toBe(true);
    expect(isUsed("profile", "width", {})).toBe(true);
    expect(isUsed("stones", "width", {})).toBe(false);
    expect(isUsed("stones", "width", { cut: "oval" })).toBe(true);
    expect(isUsed("stones", "narrow", { cut: "oval" })).toBe(false);
    expect(isUsed("stones.place.row", "gap", { count: 12 })).toBe(false);
    expect(isUsed("stones.setting.channel", "wall", { rise: 0 })).toBe(false);
    expect(names("stones", { cut: "round" }).first).toEqual(["name", "cut", "size", "gem", "place", "setting"]);
  });
});
