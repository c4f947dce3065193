import { Readable, Writable } from "node:stream";
import { describe, expect, it } from "vitest";
import { readStdin } from "../../src/cli/files.js";

describe("standard input", () => {
  const ioOf = (...chunks: readonly (Uint8Array | string)[]) => {
    const stdout = new Writable();
    return { stdin: Readable.from(chunks), stdout, stderr: stdout, env: {} };
  };

  it("is one array, whatever its chunks are", async () => {
    expect(Buffer.from(await readStdin(ioOf(Buffer.from("12"), "34é"), 100)).toString()).toBe("1234é");
  });

  it("stops at the limit, as it has no size", async () => {
    await expect(readStdin(ioOf(Buffer.alloc(8), "12345678"), 15)).rejects.toMatchObject({ code: "file-too-large" });
  });
});
