import { expect, it } from "vitest";
import { joinChunks } from "../../src/base/join-chunks.js";

it("puts pieces one after the other, in memory of their own", () => {
  const pool = Buffer.from([1, 2, 3]);
  const all = joinChunks([pool.subarray(0, 2), new Uint8Array(), pool.subarray(2)]);
  pool.fill(9);
  expect(all).toEqual(Uint8Array.from([1, 2, 3]));
  expect(all.buffer.byteLength).toBe(3);
  expect(joinChunks([])).toEqual(new Uint8Array());
});
