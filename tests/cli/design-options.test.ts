import { describe, expect, it } from "vitest";
import { changesOf } from "../../src/cli/design-options.js";
import { failureOf } from "../support/failure-of.js";
import { annulet, PLAIN, put, TILED, tempFolder } from "./support.js";

describe("the changes that options ask for", () => {
  it("are JSON values, or text where they are none", () => {
    const set = ["pattern.fit.repeats=11", "name=Reed = 2", 'name="12"', "beads=[]", "material=ag925", "a= 1 "];
    expect(changesOf({ set }).map(({ path, value }) => [path, value])).toEqual([
      ["pattern.fit.repeats", 11],
      ["name", "Reed = 2"],
      ["name", "12"],
      ["beads", []],
      ["material", "ag925"],
      ["a", 1],
    ]);
  });

  it("put the size first, in any system or in mm", () => {
    expect(changesOf({ size: "uk:P", set: ["name=a"] })[0]).toEqual({
      path: "size",
      value: { system: "uk", value: "P" },
    });
    expect(changesOf({ size: " US : 6 1/2 " })[0].value).toEqual({ system: "us", value: "6 1/2" });
    expect(changesOf({ size: "diameter:17.3" })[0].value).toEqual({ diameter: 17.3 });
    expect(changesOf({ size: "circumference:54" })[0].value).toEqual({ circumference: 54 });
  });

  it("are refused all at once", () => {
    const { problems } = failureOf(() => changesOf({ size: "diameter:wide", set: ["name", "=3", "a=1"] }));
    expect(problems.map(({ value }) => value)).toEqual(["diameter:wide", "name", "=3"]);
  });
});

describe("a command line with --set and --size", () => {
  it("works on the changed design and leaves the file as it is", async () => {
    const folder = tempFolder();
    const path = put(folder, "ring.json", TILED);
    const other = put(folder, "other.json", {
      ...TILED,
      size: { system: "uk", value: "P" },
      pattern: { fit: { repeats: 11 } },
    });
    const { out } = await annulet(["fit", path, "--json", "--size", "uk:P", "--set", "pattern.fit.repeats=11"]);
    expect(out).toBe((await annulet(["fit", other, "--json"])).out);
    expect(JSON.parse(out).repeats).toBe(11);
    expect((await annulet(["fit", path, "--json"])).out).not.toBe(out);
  });

  it("says where in the design a value is wrong, and which systems there are", async () => {
    const stdin = JSON.stringify(PLAIN);
    const wide = await annulet(["make", "-", "--json", "--set", "profile.widht=4"], { stdin });
    expect(wide.code).toBe(2);
    expect(wide.err).toMatch(/profile\.widht.*\n.*\n.*width/);
    const size = await annulet(["weigh", "-", "--size", "ku:P"], { stdin });
    expect(size).toMatchObject({ code: 2, err: expect.stringContaining("size.system") });
  });
});
