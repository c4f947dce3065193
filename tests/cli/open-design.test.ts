// Covers: src/cli/design-file.ts, src/ring/named-files.ts
/**
 * No command writes over what its design is made of.
 */
import { linkSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { encode } from "fast-png";
import { describe, expect, it } from "vitest";
import { readDesign } from "../../src/index.js";
import { namedFiles } from "../../src/ring/named-files.js";
import { annulet, namesIn, PLAIN, put, tempFolder } from "./support.js";

const SPRIG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><path d="M1 1H3V3H1Z"/></svg>';

/** A folder with a design of a drawing, a height map and a font, and what they hold. */
function workshop() {
  const folder = tempFolder();
  const bed = encode({ width: 2, height: 2, data: Uint8Array.of(0, 255, 255, 0), channels: 1, depth: 8 });
  writeFileSync(join(folder, "bed.png"), bed);
  put(folder, "sprig.svg", SPRIG);
  put(folder, "Reed.ttf", "no font at all");
  const design = put(folder, "ring.json", {
    ...PLAIN,
    pattern: {
      regions: [
        { svg: "sprig.svg", height: 0.2 },
        { image: "bed.png", height: 0.1 },
      ],
    },
    lettering: [{ text: "reed", at: "bore", height: 1, font: "Reed.ttf" }],
  });
  const before = namesIn(folder).map((name) => [name, readFileSync(join(folder, name)).toString("hex")]);
  const now = () => namesIn(folder).map((name) => [name, readFileSync(join(folder, name)).toString("hex")]);
  return { folder, design, before, now };
}

it("the files that a design names are listed, each once", () => {
  const { design } = workshop();
  expect([...namedFiles(readDesign(readFileSync(design, "utf8")))].sort()).toEqual([
    "Reed.ttf",
    "bed.png",
    "sprig.svg",
  ]);
});

describe("an output that is one of the design's files is refused, and everything stays", () => {
  it.each([
    ["tile", "sprig.svg"],
    ["check", "sprig.svg"],
    ["sheet", "sprig.svg"],
    ["picture", "bed.png"],
    ["print", "bed.png"],
  ])("%s -o %s", async (command, name) => {
    const { folder, design, before, now } = workshop();
    const { code, out, err } = await annulet([command, design, "-o", join(folder, name)]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(new RegExp(`${name} is a file that the design names: it would be lost`));
    expect(now()).toEqual(before);
  });

  it("by a link to it or by a second name", async () => {
    const { folder, design } = workshop();
    symlinkSync(join(folder, "sprig.svg"), join(folder, "link.svg"));
    linkSync(join(folder, "sprig.svg"), join(folder, "twin.svg"));
    for (const name of ["link.svg", "twin.svg"]) {
      expect(await annulet(["tile", design, "-o", join(folder, name)])).toMatchObject({ code: 2, out: "" });
    }
    expect(readFileSync(join(folder, "sprig.svg"), "utf8")).toBe(SPRIG);
  });
});
