import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { listMotifs } from "../../../src/design/motifs/list.js";
import { ofClass, parseSvg } from "../../output/drawing/raster.js";
import { annulet, tempFolder } from "../support.js";

describe("annulet motifs", () => {
  it("lists every motif with what it shows", async () => {
    const { code, out } = await annulet(["motifs"]);
    expect(code).toBe(0);
    for (const { name, group, summary } of listMotifs()) {
      expect(out.split("\n").some((line) => [name, group, summary].every((text) => line.includes(text)))).toBe(true);
    }
  });

  it("shows one with its parameters, and what to write", async () => {
    const { out } = await annulet(["motifs", "fan"]);
    expect(out).toMatch(/^ {2}ribs: ribs, 3 to 5; default 5$/m);
    expect(out).toMatch(/"motif": \{"name":"fan","ribs":5/);
  });

  it("prints the same as JSON", async () => {
    expect(JSON.parse((await annulet(["motifs", "--json"])).out)).toEqual(listMotifs());
    expect(JSON.parse((await annulet(["motifs", "reed", "--json"])).out)).toMatchObject([{ name: "reed" }]);
  });

  it("draws the sheet", async () => {
    const output = join(tempFolder(), "motifs.svg");
    expect(await annulet(["motifs", "-o", output])).toMatchObject({ code: 0, err: "" });
    const sheet = parseSvg(readFileSync(output, "utf8"));
    for (const { name } of listMotifs()) expect(ofClass(sheet, name)).toHaveLength(1);
  });

  it.each([
    [["motifs", "fam"], /no motif of the name "fam"[\s\S]*fan/],
    [["motifs", "-o", "motifs.png"], /The sheet is SVG/],
    [["motifs", "-o", "motifs.svg", "--json"], /either/],
  ])("refuses %j", async (words, message) => {
    const { code, out, err } = await annulet(words);
    expect(code).toBe(2);
    if (words.includes("--json")) expect(Object.keys(JSON.parse(out))).toEqual(["errors"]);
    else expect(out).toBe("");
    expect(err).toMatch(message);
    expect(existsSync("motifs.svg")).toBe(false);
  });
});
