// Covers: src/cli/example-designs.ts
import { describe, expect, it } from "vitest";
import { explainField } from "../../../src/design/reference/explain-field.js";
import { annulet } from "../support.js";

describe("annulet explain", () => {
  it("shows the document's fields without a path", async () => {
    const { code, out } = await annulet(["explain"]);
    expect(code).toBe(0);
    for (const { name } of explainField("")[0].fields)
      expect(out).toMatch(new RegExp(`^ {2}${name.replace("$", "\\$")} {2}\\(`, "m"));
  });

  it("shows unit, range, default and an example of a number", async () => {
    const { out } = await annulet(["explain", "profile.outside.rail"]);
    expect(out).toMatch(/^profile\.outside\.rail of channel: number; mm; above 0; default 0\.9$/m);
    expect(out).toMatch(/^From examples\/[a-z-]+\.json:\n {2}\d/m);
  });

  it("shows forms with their fields", async () => {
    const { out } = await annulet(["explain", "profile.outside"]);
    for (const { name } of explainField("profile.outside")[0].forms) expect(out).toMatch(new RegExp(`^${name}$`, "m"));
  });

  it("keeps to 80 columns, examples apart", async () => {
    const { out } = await annulet(["explain", "size"]);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  it("prints the same as JSON", async () => {
    const { out } = await annulet(["explain", "pattern.cover", "--json"]);
    const { fields, example } = JSON.parse(out);
    expect(fields).toMatchObject([
      { path: "pattern.cover", kind: "number", unit: "degrees", range: "5 to 360", default: 360 },
    ]);
    expect(example.value).toBeTypeOf("number");
  });

  it("says what is known where a field is not", async () => {
    const { code, err } = await annulet(["explain", "pattern.regions.sectoin"]);
    expect(code).toBe(2);
    expect(err).toMatch(/pattern\.regions has no field "sectoin"[\s\S]*did you mean "section"\?/);
  });
});
