// Across: how much of a file writers hold
/**
 * Writers hold no more of a file than a chunk.
 */
import { describe, expect, it } from "vitest";
import { torus } from "../../../benchmarks/torus.js";
import { type Chunks, encodeMesh, type Format } from "../../../src/output/files/format.js";
import { obj } from "../../../src/output/files/formats/obj.js";
import { stlAscii } from "../../../src/output/files/formats/stl-ascii.js";
import { stlBinary } from "../../../src/output/files/formats/stl-binary.js";

const MEBIBYTE = 2 ** 20;

/** Bytes of the whole file, and of typed arrays made meanwhile at most. */
async function take(chunks: Chunks) {
  const before = process.memoryUsage().arrayBuffers;
  let bytes = 0;
  let largest = 0;
  let held = 0;
  for await (const chunk of chunks) {
    bytes += chunk.length;
    largest = Math.max(largest, chunk.length);
    held = Math.max(held, process.memoryUsage().arrayBuffers - before);
  }
  return { bytes, largest, held };
}

describe("two million triangles", () => {
  const mesh = torus(2000, 500);

  it.each<[Format, number]>([
    [stlBinary, 84 + 50 * 2_000_000],
    [stlAscii, 300 * MEBIBYTE],
    [obj, 80 * MEBIBYTE],
  ])(
    "are written as $name within 8 MiB",
    async (format, atLeast) => {
      const { bytes, largest, held } = await take(format.write(mesh, { name: "torus" }));
      expect(bytes).toBeGreaterThanOrEqual(atLeast);
      expect(largest).toBeLessThanOrEqual(MEBIBYTE);
      expect(held).toBeLessThan(8 * MEBIBYTE);
    },
    60_000,
  );
});

describe("encodeMesh", () => {
  it("keeps chunks that their writer writes over", async () => {
    const reuses: Format = {
      name: "reuses",
      extensions: [".reuses"],
      unit: "none",
      *write() {
        const buffer = new Uint8Array(2);
        for (let i = 0; i < 6; i++) yield buffer.fill(i).subarray(0, 1 + (i % 2));
      },
    };
    expect([...(await encodeMesh(reuses, torus(3, 3), { name: "" }))]).toEqual([0, 1, 1, 2, 3, 3, 4, 5, 5]);
  });

  it("takes writers that wait", async () => {
    const waits: Format = {
      name: "waits",
      extensions: [".waits"],
      unit: "none",
      async *write() {
        yield Uint8Array.of(1);
        yield await Promise.resolve(Uint8Array.of(2));
      },
    };
    expect([...(await encodeMesh(waits, torus(3, 3), { name: "" }))]).toEqual([1, 2]);
  });
});
