// Covers: src/range/axes/*, src/range/names/*
import { describe, expect, it } from "vitest";
import { openPlan } from "../../../src/range/expand/open-plan.js";
import { inName, whyUnsafe } from "../../../src/range/names/safe-name.js";
import { PLAIN } from "../../cli/support.js";

const BASE = { ...PLAIN, name: "Heron" };

const plan = (vary: readonly object[], more: object = {}) => ({ range: 1, base: BASE, vary, ...more });

const namesOf = async (source: unknown, files = {}) =>
  [...(await openPlan(source, files)).variants()].map(({ name }) => name);

const failureOf = (source: unknown, files = {}): Promise<{ code: string; value: unknown }> =>
  openPlan(source, files).then(
    () => expect.fail("nothing was thrown"),
    (error: unknown) => error as { code: string; value: unknown },
  );

const codeOf = async (source: unknown, files = {}) => (await failureOf(source, files)).code;

describe("the variants of a plan", () => {
  it("are every value with every other, the last axis first to change", async () => {
    const vary = [{ size: { system: "iso", from: 50, to: 54, step: 2 } }, { material: ["ag925", "au750-yellow"] }];
    const open = await openPlan(plan(vary), {});
    expect(open.count).toBe(6);
    const found = [...open.variants()].map(({ document: { size, material, profile } }) => [size, material, profile]);
    const sizes = [50, 50, 52, 52, 54, 54].map((value) => ({ system: "iso", value }));
    expect(found).toEqual(sizes.map((size, i) => [size, vary[1].material?.[i % 2], BASE.profile]));
    expect(BASE.size).toEqual({ system: "iso", value: 54 });
  });

  it("are called by all axes, or as the template says, and numbered evenly", async () => {
    const vary = [{ path: "profile.width", values: [4, 4.5] }, { material: ["ag925"] }];
    expect(await namesOf(plan(vary))).toEqual(["Heron-4-ag925", "Heron-4.5-ag925"]);
    const many = [{ path: "profile.width", from: 3, to: 4, step: 0.1 }];
    expect((await namesOf(plan(many, { name: "{n} of {base}" })))[0]).toBe("01 of Heron");
    expect((await openPlan(plan(vary), {})).variant(2).document.name).toBe("Heron-4.5-ag925");
  });

  it.each([
    ["uk", "M", "O", 0.5, ["M", "M½", "N", "N½", "O"]],
    ["us", 6, 7, 0.25, ["6", "6¼", "6½", "6¾", "7"]],
    ["iso", 48, 53, 2, [48, 50, 52]],
    ["diameter", 16, 16.3, 0.1, [16, 16.1, 16.2, 16.3]],
  ])("go through sizes of %s from %s to %s", async (system, from, to, step, labels) => {
    const open = await openPlan(plan([{ size: { system, from, to, step } }]), {});
    const sizes = [...open.variants()].map(({ document: { size } }) => size as Record<string, unknown>);
    const told = sizes.map(({ value, diameter }) => value ?? diameter);
    expect(told.map(String)).toEqual(labels.map(String));
  });

  it("are paired where they are asked to be", async () => {
    const vary = [{ path: "profile.width", values: [4, 5] }, { material: ["ag925", "au750-yellow"] }];
    expect(await namesOf(plan(vary, { together: "paired" }))).toEqual(["Heron-4-ag925", "Heron-5-au750-yellow"]);
    const uneven = [vary[0], { material: ["ag925"] }];
    expect(await codeOf(plan(uneven, { together: "paired" }))).toBe("axes-uneven");
  });

  it("are the same sample for a seed, of different variants, another for another", async () => {
    const vary = ["width", "thickness"].map((key) => ({ path: `profile.${key}`, from: 1, to: 100, step: 1 }));
    const sample = (seed: number) => namesOf(plan(vary, { together: { sampled: 200, seed } }));
    const [one, again, other] = [await sample(1), await sample(1), await sample(2)];
    expect(one).toEqual(again);
    expect(new Set(one).size).toBe(200);
    expect(other.filter((name) => one.includes(name)).length).toBeLessThan(50);
    const whole = plan([vary[0]], { together: { sampled: 500 } });
    expect((await openPlan(whole, {})).count).toBe(100);
  });

  it("spread a sample evenly over a grid of more than 2³² places", async () => {
    const vary = ["width", "thickness"].map((key) => ({ path: `profile.${key}`, from: 0, to: 1e6, step: 1 }));
    const open = await openPlan(plan(vary, { together: { sampled: 400, seed: 3 } }), {});
    const widths = [...open.variants()].map(({ document }) => (document.profile as { width: number }).width);
    const quarters = [0, 1, 2, 3].map((i) => widths.filter((width) => Math.floor(width / 250_000.5) === i).length);
    // 100 each, within four standard deviations of a binomial: √(400 · ¼ · ¾) = 8.7.
    for (const many of quarters) expect(Math.abs(many - 100)).toBeLessThan(35);
  });

  it("take rows from a CSV file; an empty cell leaves the design's own", async () => {
    const csv = '\uFEFFsize,profile.width,name\r\niso:50,4,"a, b"\r\nuk:P,,c\r\n';
    const open = await openPlan(plan([{ rows: "shop.csv" }], { name: "{n}-{name}" }), { "shop.csv": csv });
    const [one, two] = [...open.variants()];
    expect(one).toMatchObject({ name: "1-a-b", document: { size: { system: "iso", value: 50 }, name: "a, b" } });
    expect(two).toMatchObject({ name: "2-c", document: { size: { system: "uk", value: "P" }, profile: BASE.profile } });
  });

  it("come of a base in a file too", async () => {
    const source = plan([{ material: ["ag925"] }], { base: "heron.json" });
    expect(await namesOf(source, { "heron.json": JSON.stringify(BASE) })).toEqual(["Heron-ag925"]);
    expect(await codeOf(source)).toBe("design-file-missing");
    expect(await codeOf(source, { "heron.json": "{" })).toBe("json-malformed");
    expect(await codeOf(source, { "heron.json": "[]" })).toBe("value-invalid");
  });

  it("are refused by their number before any is made", async () => {
    const thousand = (key: string) => ({ path: `profile.${key}`, from: 1, to: 1000, step: 1 });
    const error = await failureOf(plan(["width", "thickness", "rise"].map(thousand)));
    expect(error).toMatchObject({ code: "too-many-variants", value: 1e9 });
    expect(await codeOf(plan([{ path: "profile.width", from: 0, to: 1e300, step: 1e-300 }]))).toBe("too-many-variants");
    const endless = [{ path: "profile.width", from: 0, to: 1e300, step: 1e-300 }];
    expect(await codeOf(plan(endless, { together: { sampled: 5 } }))).toBe("too-many-variants");
  });

  const width = { path: "profile.width", values: [4, 5] };
  it.each<[string, object, string]>([
    ["two variants of one name", plan([{ path: "profile.width", values: [4, 4] }]), "names-alike"],
    [
      "names that differ by their case",
      plan([{ path: "name", values: ["a", "A"] }], { name: "{name}" }),
      "names-alike",
    ],
    ["a name without its axis", plan([width], { name: "heron" }), "names-alike"],
    ["a way out of the folder", plan([width], { name: "../{width}" }), "name-unsafe"],
    ["a folder in a name", plan([width], { name: "a/{width}" }), "name-unsafe"],
    ["a reserved name", plan([{ path: "name", values: ["con"] }], { name: "{name}" }), "name-unsafe"],
    ["a reserved name with an ending", plan([width], { name: "nul.{width}" }), "name-unsafe"],
    ["a name that is an option", plan([width], { name: "-rf {width}" }), "name-unsafe"],
    ["a very long name", plan([{ path: "name", values: ["x".repeat(300)] }], { name: "{name}" }), "name-unsafe"],
    ["a blank that nothing fills", plan([width], { name: "{wdth}" }), "name-unsafe"],
    ["a place that the design has not", plan([{ path: "profile.width.x", values: [1] }]), "change-invalid"],
    ["what is no path", plan([{ path: "profile..width", values: [1] }]), "change-invalid"],
    [
      "a size between the steps",
      plan([{ size: { system: "uk", from: "A", to: "C", step: 0.3 } }]),
      "size-step-invalid",
    ],
    ["sizes backwards", plan([{ size: { system: "iso", from: 60, to: 50, step: 1 } }]), "size-step-invalid"],
    ["a span backwards", plan([{ path: "profile.width", from: 5, to: 4, step: 1 }]), "value-invalid"],
    ["a size that is none", plan([{ size: { system: "uk", from: "?", to: "C", step: 1 } }]), "size-unknown"],
    ["two axes of one name", plan([width, { path: "pattern.width", values: [1] }]), "axes-alike"],
    ["a table that is not there", plan([{ rows: "none.csv" }]), "rows-file-missing"],
  ])("are refused for %s", async (_, source, code) => {
    expect(await codeOf(source)).toBe(code);
  });

  it.each([
    ["a row too short", "size,profile.width\niso:50\n"],
    ["no rows", "size,profile.width\n"],
    ["a column without a path", "size,\niso:50,4\n"],
    ["a column twice", "size,size\niso:50,iso:52\n"],
    ["an open quote", 'size\n"iso:50\n'],
    ["nothing", ""],
  ])("are refused for a table with %s", async (_, csv) => {
    expect(await codeOf(plan([{ rows: "shop.csv" }]), { "shop.csv": csv })).toBe("rows-malformed");
  });

  it("give way to a signal while names are compared", async () => {
    const many = plan([{ path: "profile.width", from: 1, to: 50_000, step: 1 }]);
    await expect(openPlan(many, {}, AbortSignal.abort(new Error("enough")))).rejects.toThrow("enough");
  });
});

describe("names", () => {
  it.each([
    ["7½", "7-1-2"],
    ["Ångström", "Angstrom"],
    ["-0.5", "minus0.5"],
    ["a/../b", "a-..-b"],
    ["…", "none"],
    ["", "none"],
    ["{base}", "base"],
  ])("write %s as %s", (value, name) => {
    expect(inName(value)).toBe(name);
  });

  it.each(["con", "LPT1.stl", "a.", "a ", ".a", " a", "a:b", "a\u0000", "ä", "", "x".repeat(151), "com¹"])(
    "refuse %j",
    (name) => {
      expect(whyUnsafe(name)).toBeDefined();
    },
  );
});
