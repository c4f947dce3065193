import { defaultFont, fileSource } from "annulet/node";
import { describe, expect, it } from "vitest";
import { build } from "../../src/ring/build.js";
import { PLAIN, put, tempFolder } from "../cli/support.js";

const lettered = {
  ...PLAIN,
  tolerance: 0.1,
  lettering: [{ text: "reed", at: "bore", height: 1.6 }],
};

describe("the default font", () => {
  it("is handed over by its name, and makes the ring that a folder's files make", async () => {
    const { name, bytes } = defaultFont();
    const handed = await build(lettered, { detail: "draft", files: { [name]: bytes } });
    const found = await build(lettered, { detail: "draft", files: fileSource(tempFolder()) });
    expect(handed.mesh).toEqual(found.mesh);
    expect(handed.report.marks).toHaveLength(1);
  });
});

describe("files of a folder", () => {
  it("are those beside the current folder where none is named", () => {
    expect(new TextDecoder().decode(fileSource()("LICENSE"))).toMatch(/MIT/);
  });

  it("are read when they are asked for", () => {
    const folder = tempFolder();
    const files = fileSource(folder);
    expect(() => files("later.svg")).toThrow(/no file/);
    put(folder, "later.svg", "<svg/>");
    expect(new TextDecoder().decode(files("later.svg"))).toBe("<svg/>");
  });
});
