import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changeDocument } from "../../src/design/change-document.js";
import { failureOf } from "../support/failure-of.js";

const text = JSON.stringify({ name: "reed", size: { diameter: 17 }, beads: [{ diameter: 0.4 }], material: "ag925" });

const changed = (path: string, value: unknown) => changeDocument(text, [{ path, value: value as never }]);

describe("a changed document", () => {
  it("has the value at its place, and everything else as it was", () => {
    expect(changed("size.diameter", 18)).toEqual({ ...JSON.parse(text), size: { diameter: 18 } });
    expect(changed("beads[0].diameter", 0.5)).toMatchObject({ beads: [{ diameter: 0.5 }] });
    expect(changed("size", { system: "uk", value: "P" })).toMatchObject({ size: { system: "uk", value: "P" } });
  });

  it("gets what is not there yet: fields, objects on the way, one entry more", () => {
    expect(changed("pattern.fit.repeats", 11)).toMatchObject({ pattern: { fit: { repeats: 11 } } });
    expect(changed("beads[1].diameter", 0.6)).toMatchObject({ beads: [{ diameter: 0.4 }, { diameter: 0.6 }] });
    expect(changed("marks[0].text", "a")).toMatchObject({ marks: [{ text: "a" }] });
  });

  it("takes changes one after the other", () => {
    const both = changeDocument(text, [
      { path: "beads[1].diameter", value: 0.6 },
      { path: "beads[1].diameter", value: 0.7 },
      { path: "beads[2]", value: {} },
    ]);
    expect(both.beads).toEqual([{ diameter: 0.4 }, { diameter: 0.7 }, {}]);
  });

  it("says of every path that leads nowhere what is in the way", () => {
    const error = failureOf(() =>
      changeDocument(
        text,
        ["beads[3].diameter", "beads.diameter", "name.first", "size[0]", "size..x", "", "a[b]"].map((path) => ({
          path,
          value: 1,
        })),
      ),
    );
    expect(error.problems.map(({ message }) => message)).toEqual([
      "beads has no entry [3]",
      "beads has no fields",
      "name has no fields",
      "size is no list",
      "size..x is no path in a document",
      " is no path in a document",
      "a[b] is no path in a document",
    ]);
    expect(error.problems[0].allowed).toBe("[0], or [1] to add one");
  });

  it("keeps keys that mean something to JavaScript as keys", () => {
    const made = changed("__proto__.polluted", true);
    expect(Object.keys(made)).toContain("__proto__");
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
    expect(Object.getPrototypeOf(made)).toBe(Object.prototype);
    expect(changed("constructor.name", 1)).toMatchObject({ constructor: { name: 1 } });
  });

  it("is refused where the text is no document", () => {
    expect(() => changeDocument("{", [])).toThrow(/ends too early/);
    expect(() => changeDocument('{"a": 1, "a": 2}', [])).toThrow(/twice/);
    expect(() => changeDocument("3", [])).toThrow(/a design is an object/);
  });

  it("reads back what it wrote, at any path of keys", () => {
    const keys = fc.array(fc.string({ minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(keys, fc.jsonValue(), (path, value) => {
        const written = path.map((key) => `[${JSON.stringify(key)}]`).join("");
        const made = changeDocument("{}", [{ path: written, value: value as never }]);
        const read = path.reduce((inner: unknown, key) => (inner as Record<string, unknown>)[key], made);
        expect(JSON.stringify(read)).toBe(JSON.stringify(value));
      }),
      { numRuns: 200 },
    );
  });
});
