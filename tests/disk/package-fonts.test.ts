import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { filesBeside } from "../../src/cli/design-folder.js";
import { findPackageFont } from "../../src/disk/package-fonts.js";
import { failureOf } from "../support/failure-of.js";
import { nameOf, pathOf } from "../support/fonts.js";

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "annulet-fonts-"));
  const carried = join(folder, "node_modules", "@reed", "type", "bold");
  mkdirSync(carried, { recursive: true });
  mkdirSync(join(folder, "designs"));
  writeFileSync(join(carried, "Reed.ttf"), "reed");
  writeFileSync(join(carried, "secret.txt"), "secret");
  writeFileSync(join(folder, "outside.ttf"), "outside");
  symlinkSync(join(folder, "outside.ttf"), join(carried, "link.ttf"));
});

afterAll(() => rmSync(folder, { recursive: true }));

describe("a font in a package", () => {
  it("is found in the node_modules of a folder above the design", () => {
    const read = filesBeside(join(folder, "designs", "ring.json"));
    expect(new TextDecoder().decode(read("package:@reed/type/bold/Reed.ttf"))).toBe("reed");
  });

  it("is found in annulet's own packages from any folder", () => {
    const read = filesBeside(join(folder, "ring.json"));
    expect(read(nameOf("nunito"))).toEqual(Uint8Array.from(readFileSync(pathOf("nunito"))));
  });

  it.each([
    ["package:@reed/type/bold/secret.txt", "package-font-invalid"],
    ["package:@reed/type/../../../outside.ttf", "package-font-invalid"],
    ["package:@reed/type/bold/link.ttf", "package-font-invalid"],
    ["package:../type/bold/Reed.ttf", "package-font-invalid"],
    ["package:@reed/../bold/Reed.ttf", "package-font-invalid"],
    ["package:", "package-font-invalid"],
    ["package:@reed/type", "package-font-invalid"],
    ["package:@reed/other/bold/Reed.ttf", "package-missing"],
    ["package:@reed/type/bold/None.ttf", "file-missing"],
  ])("%s is refused", (name, code) => {
    expect(failureOf(() => findPackageFont(name, folder))).toMatchObject({ code, value: name });
  });
});

describe("a package's folder that is a link", () => {
  const fontOf = (package_: string) => findPackageFont(`package:${package_}/Reed.ttf`, join(folder, "designs"));

  function linkPackage(name: string, to: string): void {
    mkdirSync(to, { recursive: true });
    writeFileSync(join(to, "Reed.ttf"), "reed");
    mkdirSync(join(folder, "designs", "node_modules"), { recursive: true });
    symlinkSync(to, join(folder, "designs", "node_modules", name));
  }

  it("is refused where it leads out of the folder", () => {
    linkPackage("away", join(folder, "private", "fonts"));
    expect(failureOf(() => fontOf("away"))).toMatchObject({
      code: "package-font-invalid",
      message: expect.stringMatching(/a link that leads out/),
    });
  });

  it.each([
    ["into the folder, as workspaces have it", "work", () => join(folder, "designs", "packages", "work")],
    ["into a store of packages", "stored", () => join(folder, "store", "node_modules", "stored")],
  ])("is followed %s", (_, name, to) => {
    linkPackage(name, to());
    expect(fontOf(name)).toBe(join(folder, "designs", "node_modules", name, "Reed.ttf"));
  });
});

it("a font beside the design may be larger than a drawing, but not without limit", () => {
  const read = filesBeside(join(folder, "ring.json"));
  writeFileSync(join(folder, "big.ttf"), new Uint8Array(20e6));
  writeFileSync(join(folder, "huge.ttf"), new Uint8Array(31e6));
  writeFileSync(join(folder, "big.svg"), new Uint8Array(11e6));
  expect(read("big.ttf").length).toBe(20e6);
  for (const name of ["huge.ttf", "big.svg"]) expect(failureOf(() => read(name)).code).toBe("file-too-large");
});
