import { readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { explain, explainInside } from "../../../src/workbench/engine/explain-inside.js";
import { FieldBook } from "../../../src/workbench/fields/field-book.js";
import { changeForm, newEntry, newValue } from "../../../src/workbench/fields/new-value.js";
import { waysOf } from "../../../src/workbench/fields/ways.js";
import { pathOf } from "../../../src/workbench/state/json-text.js";

const book = new FieldBook(async (schema) => explainInside(schema));
const place = (schema: string) => ({ path: pathOf(schema), schema });
const ways = (schema: string) => waysOf(explain(schema)[0]);

const design = (parts: Readonly<Record<string, unknown>>) => ({
  annulet: 1,
  size: { system: "iso", value: "54" },
  profile: { width: 6, thickness: 2, outside: { form: "channel" } },
  ...parts,
});

describe("what a part begins with", () => {
  it("is read as a design, in every form of outside and bore", async () => {
    for (const part of ["outside", "bore"]) {
      for (const way of ways(`profile.${part}`)) {
        const value = await newValue(place(`profile.${part}`), way, book);
        const profile = { width: 6, thickness: 2, outside: { form: "flat" }, [part]: value };
        expect(() => readDesign(design({ profile })), JSON.stringify(value)).not.toThrow();
      }
    }
  });

  it("is read as a design, in every form of section, end, line of beads and size", async () => {
    for (const way of ways("pattern.regions.section")) {
      const section = await newValue(place("pattern.regions.section"), way, book);
      const regions = [{ motif: { name: "lozenge" }, section }];
      expect(() => readDesign(design({ pattern: { regions } })), JSON.stringify(section)).not.toThrow();
    }
    for (const way of ways("pattern.ends")) {
      const ends = await newValue(place("pattern.ends"), way, book);
      expect(() => readDesign(design({ pattern: { cover: 200, ends } })), JSON.stringify(ends)).not.toThrow();
    }
    for (const way of ways("beads.along")) {
      const along = await newValue(place("beads.along"), way, book);
      const document = design({ beads: [{ along, diameter: 0.4 }] });
      if (along !== "step") expect(() => readDesign(document), JSON.stringify(along)).not.toThrow();
    }
    for (const [field, other] of [
      ["place", { setting: { form: "flush" } }],
      ["setting", { place: { form: "single" } }],
    ] as const) {
      for (const way of ways(`stones.${field}`)) {
        const value = await newValue(place(`stones.${field}`), way, book);
        const document = design({ pattern: {}, stones: [{ size: 1, ...other, [field]: value }] });
        expect(() => readDesign(document), JSON.stringify(value)).not.toThrow();
      }
    }
    for (const field of ["along", "over"]) {
      for (const way of ways(`stones.place.row.${field}`)) {
        const row = { form: "row", [field]: await newValue(place(`stones.place.row.${field}`), way, book) };
        const document = design({ stones: [{ size: 1, place: row, setting: { form: "flush" } }] });
        expect(() => readDesign(document), JSON.stringify(row)).not.toThrow();
      }
    }
    for (const way of ways("size")) {
      const size = await newValue(place("size"), way, book);
      expect(() => readDesign(design({ size })), JSON.stringify(size)).not.toThrow();
    }
  });

  it("is read as a design, for entries of lists and for parts that are switched on", async () => {
    const [regions, beads, lettering, alloys, stones, gems] = await Promise.all(
      ["pattern.regions", "beads", "lettering", "alloys", "stones", "gems"].map((schema) =>
        newEntry(place(schema), book),
      ),
    );
    expect(() =>
      readDesign(
        design({
          pattern: { regions: [regions] },
          beads: [beads],
          lettering: [lettering],
          alloys: [alloys],
          stones: [stones],
          gems: [gems],
        }),
      ),
    ).not.toThrow();
    for (const schema of [
      "pattern",
      "hallmark",
      "sprue",
      "casting",
      "costing",
      "rules",
      "print",
      "profile.taper",
      "profile.step",
    ]) {
      const value = await newValue(place(schema), ways(schema)[0], book);
      const own = schema.startsWith("profile.")
        ? { profile: { width: 6, thickness: 2, outside: { form: "channel" }, [schema.slice(8)]: value } }
        : { [schema]: value };
      expect(() => readDesign(design(own)), `${schema} ${JSON.stringify(value)}`).not.toThrow();
    }
    expect(await newValue(place("profile.taper"), ways("profile.taper")[0], book)).toEqual({ width: 4 });
  });
});

describe("another form", () => {
  const to = (schema: string, form: string, value: unknown) => {
    const way = ways(schema).find((one) => one.kind === "object" && one.form?.name === form);
    if (way === undefined) throw new Error(form);
    return changeForm(value, place(schema), way, book);
  };

  it("keeps fields of the same name and drops the others", async () => {
    expect(await to("profile.outside", "channel", { form: "domed", rise: 0.4, edge: 0.3 })).toEqual({
      form: "channel",
      edge: 0.3,
    });
    expect(await to("pattern.regions.section", "hollow", { form: "domed", height: 0.7, wall: 0.1 })).toEqual({
      form: "hollow",
      height: 0.7,
      dip: 0.15,
    });
  });

  it("keeps no value that the other form would not take", async () => {
    const line = await to("pattern.ends", "line", { form: "fade", length: 2, width: "wide" });
    expect(line).toEqual({ form: "line", width: 0.6, height: 0.4 });
    expect(await to("profile.outside", "flat", undefined)).toEqual({ form: "flat" });
    expect(await to("profile.outside", "flat", { form: "channel", constructor: 1 })).toEqual({ form: "flat" });
  });
});
