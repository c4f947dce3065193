// Covers: src/disk/reason-of.ts
import { execFileSync } from "node:child_process";
import { mkdirSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readFile, showBytes } from "../../src/disk/read-file.js";
import { put, tempFolder } from "../cli/support.js";

describe("reading files", () => {
  it("hands back the bytes, also of more than one chunk", () => {
    const folder = tempFolder();
    const text = "0123456789".repeat(20_000);
    expect(Buffer.from(readFile(put(folder, "a.txt", text), 200_000)).toString()).toBe(text);
  });

  it("says what is wrong with a file before reading it", () => {
    const folder = tempFolder();
    const large = put(folder, "large.txt", "");
    truncateSync(large, 100e6);
    mkdirSync(join(folder, "inner"));
    expect(() => readFile(join(folder, "none"), 10)).toThrow(expect.objectContaining({ code: "file-missing" }));
    expect(() => readFile(join(folder, "inner"), 10)).toThrow(expect.objectContaining({ code: "file-is-folder" }));
    expect(() => readFile(large, 99e6)).toThrow(/100\.0 MB[\s\S]*at most 99\.0 MB/);
    writeFileSync(join(folder, "eleven"), "12345678901");
    expect(() => readFile(join(folder, "eleven"), 10)).toThrow(expect.objectContaining({ code: "file-too-large" }));
  });

  // Opening a pipe that nobody writes to would wait for ever.
  it.skipIf(process.platform === "win32")("turns a pipe away at once where a file is wanted", () => {
    const pipe = join(tempFolder(), "sprig.svg");
    execFileSync("mkfifo", [pipe]);
    expect(() => readFile(pipe, 10, "file")).toThrow(/sprig\.svg is a device or a pipe, not a file/);
  });

  it("stops at the limit where there is no size", () => {
    expect(() => readFile("/dev/zero", 100_000)).toThrow(expect.objectContaining({ code: "file-too-large" }));
  });

  it("shows sizes as file managers do", () => {
    expect([0, 999, 1000, 115_284, 31_500_000].map(showBytes)).toEqual([
      "0 B",
      "999 B",
      "1.0 kB",
      "115.3 kB",
      "31.5 MB",
    ]);
  });
});
