import { describe, expect, it } from "vitest";
import { explain } from "../../../src/workbench/engine/explain-inside.js";
import { isObject, keysOfForm, kindsIn, wayOf, waysOf } from "../../../src/workbench/fields/ways.js";
import { schemaPlaces } from "../../support/schema-places.js";

const waysAt = (schema: string) => waysOf(explain(schema)[0]);

describe("ways of giving a field", () => {
  it.each([
    ["number", ["number"]],
    ["true or false", ["true or false"]],
    ["word or whole number", ["word", "whole number"]],
    ["list of texts or objects", ["list of texts or objects"]],
    ["list of whole numbers or object", ["list of whole numbers", "object"]],
    ["list of 2: number or word", ["list of 2: number", "word"]],
  ])("%s", (words, kinds) => expect(kindsIn(words)).toEqual(kinds));

  it("are those of the schema", () => {
    expect(waysAt("profile.width")).toEqual([{ kind: "number", whole: false, limits: { above: 0, most: 1000 } }]);
    expect(waysAt("pattern.fit.repeats").map(({ kind }) => kind)).toEqual(["word", "number"]);
    expect(waysAt("profile.outside").length).toBe(7);
    expect(waysAt("beads.along").map(({ kind }) => kind)).toEqual([
      "word",
      "word",
      "word",
      "object",
      "object",
      "object",
    ]);
    expect(waysAt("casting.shrinkage").map(({ kind }) => kind)).toEqual(["number", "object"]);
    expect(waysAt("pattern.regions")).toEqual([{ kind: "objects" }]);
    expect(waysAt("proud")).toEqual([{ kind: "switch" }]);
  });

  it("leave to the text only lists of points and of lines", () => {
    const written = [...schemaPlaces()].filter(([, reference]) =>
      waysOf(reference).some(({ kind }) => kind === "written"),
    );
    const kinds = new Set(written.map(([, { kind }]) => kind));
    expect([...kinds].sort()).toEqual(["1", "list of 2: list of 2: number", "list of list of 2: number"]);
  });

  it("are told apart by what is written", () => {
    const formOf = (value: unknown, schema: string) => {
      const ways = waysAt(schema);
      const way = ways[wayOf(value, ways)];
      return way?.kind === "object" ? way.form?.name : way?.kind;
    };
    expect(formOf({ form: "channel", rail: 1 }, "profile.outside")).toBe("channel");
    expect(formOf({ form: "nonsense" }, "profile.outside")).toBeUndefined();
    expect(formOf({ system: "us", value: 7 }, "size")).toBe("{system, value}");
    expect(formOf({ diameter: 17 }, "size")).toBe("{diameter}");
    expect(formOf("rail", "beads.along")).toBe("word");
    expect(formOf({ v: 1 }, "beads.along")).toBe("{v}");
    expect(formOf({ name: "lozenge" }, "pattern.regions.motif")).toBe("lozenge");
    expect(formOf("auto", "pattern.fit.repeats")).toBe("word");
    expect(formOf(12, "pattern.fit.repeats")).toBe("number");
    expect(formOf(undefined, "size")).toBeUndefined();
  });

  it("know the fields of a form without a name", () => {
    expect(keysOfForm("{system, value}")).toEqual(["system", "value"]);
    expect(keysOfForm("channel")).toBeUndefined();
    expect([{}, [], null, "a"].map(isObject)).toEqual([true, false, false, false]);
  });
});
