// Covers: src/workbench/engine/design-outline.ts, src/workbench/engine/draw-forms.ts, src/workbench/engine/motif-outline.ts, src/workbench/engine/explain-inside.ts, src/workbench/engine/ring-library.ts
import { explainField } from "annulet";
import { describe, expect, it } from "vitest";
import { designOutline } from "../../../src/workbench/engine/design-outline.js";
import { drawForms } from "../../../src/workbench/engine/draw-forms.js";
import { explain, explainInside } from "../../../src/workbench/engine/explain-inside.js";
import { motifOutline } from "../../../src/workbench/engine/motif-outline.js";
import { ringLibrary } from "../../../src/workbench/engine/ring-library.js";

const box = (viewBox: string) => viewBox.split(" ").map(Number);

describe("drawings of forms", () => {
  it("are of every form, each another, as wide and thick as the profile", async () => {
    const drawn = await drawForms("outside", { width: 5, thickness: 2, outside: { form: "domed", rise: 0.3 } });
    expect(drawn.map(({ form }) => form)).toEqual(["flat", "domed", "channel", "bevelled", "concave", "knife", "free"]);
    expect(new Set(drawn.map(({ path }) => path)).size).toBe(7);
    for (const { viewBox } of drawn.slice(0, 3)) expect(box(viewBox)).toEqual([0, 0, 5, 2]);
  });

  it("are of a plain band where the profile would not fit, or is none", async () => {
    const drawn = await drawForms("outside", { width: 0.5, thickness: 0.4, outside: "odd" });
    expect(drawn).toHaveLength(7);
    expect(await drawForms("bore", undefined)).toHaveLength(2);
  });
});

describe("outlines of motifs", () => {
  it("are closed paths within two tiles; none of a name that is none", async () => {
    const lozenge = await motifOutline("lozenge");
    expect(lozenge?.path).toMatch(/^(M[-\d.]+ [-\d.]+(L[-\d.]+ [-\d.]+)+Z)+$/);
    const [left, top, width, height] = box(lozenge?.viewBox ?? "");
    const points = (lozenge?.path.match(/-?[\d.]+ -?[\d.]+/g) ?? []).map((point) => point.split(" ").map(Number));
    expect(
      points.every(([x, y]) => x >= left - 1e-3 && x <= width + 1e-3 && y >= top - 1e-3 && y <= top + height + 1e-3),
    ).toBe(true);
    expect(await motifOutline("none")).toBeUndefined();
  });
});

describe("what the page is told of fields", () => {
  it("is what the library says, with all fields inside", () => {
    expect(explain("profile.width")).toEqual(explainField("profile.width"));
    const { own, inside } = explainInside("profile.outside.channel");
    expect(own[0].fields.map(({ name }) => name)).toEqual(Object.keys(inside));
    expect(inside.rail[0].unit).toBe("mm");
    expect(explainInside("profile.outside").inside).toEqual({});
    expect(() => explainInside("nothing")).toThrow(/no field/);
  });

  it("has the labels of all systems for one bore", () => {
    const labels = ringLibrary.sizeLabels({ system: "iso", value: "55" });
    expect(labels).toHaveLength(8);
    expect(labels.find(({ system }) => system === "swiss")?.label).toBe("15");
  });
});

describe("pictures of designs", () => {
  const band = { annulet: 1, size: { diameter: 17 }, profile: { width: 6, thickness: 2, outside: { form: "flat" } } };

  it("show the pattern, else the section, else nothing", async () => {
    const regions = [{ motif: { name: "lozenge" }, height: 0.3 }];
    const [drawn, plain] = await Promise.all(
      [{ ...band, pattern: { regions } }, band].map((design) => designOutline(JSON.stringify(design), {})),
    );
    expect(drawn?.path.split("M")).toHaveLength(1 + 2);
    expect(box(plain?.viewBox ?? "").slice(2)).toEqual([6, 2]);
    expect(await designOutline("{", {})).toBeUndefined();
    expect(await designOutline("{}", {})).toBeUndefined();
  });
});
