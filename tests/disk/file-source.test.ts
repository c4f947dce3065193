// Covers: src/disk/paths.ts, src/cli/design-folder.ts
/** Files named by a design: beside it and below, nowhere else. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { filesBeside } from "../../src/cli/design-folder.js";
import { failureOf } from "../flat/strips.js";

let folder: string;
let design: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "annulet-files-"));
  mkdirSync(join(folder, "designs/art"), { recursive: true });
  design = join(folder, "designs/ring.json");
  writeFileSync(join(folder, "designs/leaf.svg"), "leaf");
  writeFileSync(join(folder, "designs/art/reed.svg"), "reed");
  writeFileSync(join(folder, "secret.svg"), "secret");
  symlinkSync(join(folder, "secret.svg"), join(folder, "designs/link.svg"));
  symlinkSync(join(folder, "designs/leaf.svg"), join(folder, "designs/art/near.svg"));
});

afterAll(() => rmSync(folder, { recursive: true }));

describe("files named by a design", () => {
  const read = (name: string) => new TextDecoder().decode(filesBeside(design)(name));

  it("are found in its folder and below", () => {
    expect(read("leaf.svg")).toBe("leaf");
    expect(read("art/reed.svg")).toBe("reed");
    expect(read("art/../leaf.svg")).toBe("leaf");
    expect(read("art/near.svg")).toBe("leaf");
  });

  it("are not looked for outside it", () => {
    for (const name of ["../secret.svg", "art/../../secret.svg", join(folder, "designs/leaf.svg"), "link.svg", ".."]) {
      expect(failureOf(() => read(name)).code, name).toBe("file-outside-folder");
    }
  });

  it("are missed by name, and no folder is a file", () => {
    expect(failureOf(() => read("fern.svg")).code).toBe("file-missing");
    expect(failureOf(() => read("art")).code).toBe("file-is-folder");
  });

  it("are not read where they are too large", () => {
    writeFileSync(join(folder, "designs/large.svg"), new Uint8Array(5_000_001));
    expect(failureOf(() => read("large.svg")).code).toBe("file-too-large");
  });
});
