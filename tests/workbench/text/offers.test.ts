// Covers: src/workbench/text/spot.ts
import { describe, expect, it } from "vitest";
import { explainInside } from "../../../src/workbench/engine/explain-inside.js";
import { FieldBook } from "../../../src/workbench/fields/field-book.js";
import { offersAt, referenceAt, schemaOf } from "../../../src/workbench/text/offers.js";
import { spotAt } from "../../../src/workbench/text/spot.js";

const book = new FieldBook(async (schema) => explainInside(schema));

/** A text with | where the caret stands. */
async function offered(marked: string, document: unknown = {}) {
  const offset = marked.indexOf("|");
  const spot = spotAt(marked.replace("|", ""), offset);
  return { spot, labels: (await offersAt(spot, document, book)).map(({ label }) => label) };
}

describe("what is offered in the text", () => {
  it("are keys that are not written yet, with what is typed of one replaced", async () => {
    const { spot, labels } = await offered('{ "profile": { "width": 6, "th|" } }', { profile: { width: 6 } });
    expect(spot).toEqual({ path: ["profile"], at: "key", from: 27, to: 31, hasColon: false });
    expect(labels).toContain("thickness");
    expect(labels).not.toContain("width");
  });

  it("are keys of the form that is written, of any where none is", async () => {
    const channel = { profile: { outside: { form: "channel" } } };
    const text = '{ "profile": { "outside": { "form": "channel", | } } }';
    expect((await offered(text, channel)).labels).toEqual(["rail", "depth", "crown", "edge", "root"]);
    expect((await offered('{ "profile": { "outside": { | } } }', {})).labels).toEqual(
      expect.arrayContaining(["form", "rail", "dip"]),
    );
  });

  it("are words, switches, defaults and forms as values", async () => {
    expect((await offered('{ "proud": | }')).labels).toEqual(["false", "true"]);
    expect((await offered('{ "pattern": { "symmetry": "p|" } }')).labels).toContain('"p2mm"');
    const section = await offered('{ "pattern": { "regions": [{ "section": | }] } }');
    expect(section.spot.path).toEqual(["pattern", "regions", 0, "section"]);
    expect(section.labels).toContain('{"form":"domed"}');
    expect((await offered('{ "size": | }')).labels).toContain('{"system":"","value":""}');
  });

  it("is nothing where the document has no such field, and what is written is no colon twice", async () => {
    expect((await offered('{ "nothing": { "| } }')).labels).toEqual([]);
    const { spot } = await offered('{ "na|": "ring" }');
    const [name] = (await offersAt(spot, {}, book)).filter(({ label }) => label === "name");
    expect(name.text).toBe('"name"');
  });

  it("tells of a field by its place", async () => {
    expect(schemaOf(["pattern", "regions", 2, "height"])).toBe("pattern.regions.height");
    expect((await referenceAt(["profile", "width"], book))?.unit).toBe("mm");
    expect(await referenceAt(["nothing"], book)).toBeUndefined();
  });
});
