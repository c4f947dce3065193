import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { artBytes, writeArt } from "../../../src/cli/open/art-on-disk.js";
import { PLAIN, put, tempFolder } from "../support.js";

const bytes = (text: string) => new TextEncoder().encode(text);

it("takes plain names of art alone", () => {
  expect(["a.svg", "Blatt 2.PNG", "ä–.woff2", "a..svg"].map(artBytes)).toEqual([5e6, 10e6, 30e6, 5e6]);
  const wrong = ["../a.svg", "b/a.svg", "b\\a.svg", ".a.svg", "a.json", "svg", "", "c:a.svg", "a\u0000.svg", "a\n.svg"];
  expect(wrong.filter((name) => artBytes(name) !== undefined)).toEqual([]);
  expect(artBytes(`${"ä".repeat(126)}.svg`)).toBeUndefined();
});

it("adds files, and writes over none: not through links, not over folders", () => {
  const folder = tempFolder();
  const design = put(folder, "ring.json", PLAIN);
  expect(writeArt(design, "leaf.svg", bytes("<svg/>"))).toBe(true);
  expect(writeArt(design, "leaf.svg", bytes("<svg/>"))).toBe(true);
  expect(writeArt(design, "leaf.svg", bytes("other"))).toBe(false);
  expect(readFileSync(join(folder, "leaf.svg"), "utf8")).toBe("<svg/>");
  const outside = join(tempFolder(), "outside.svg");
  symlinkSync(outside, join(folder, "link.svg"));
  expect(writeArt(design, "link.svg", bytes("x"))).toBe(false);
  expect(existsSync(outside)).toBe(false);
  mkdirSync(join(folder, "folder.svg"));
  expect(writeArt(design, "folder.svg", bytes("x"))).toBe(false);
  // Nothing is left of what was written first.
  expect(readdirSync(folder).sort()).toEqual(["folder.svg", "leaf.svg", "link.svg", "ring.json"]);
  expect(() => writeArt(join(folder, "none", "ring.json"), "a.svg", bytes("x"))).toThrow(/ENOENT/);
});
