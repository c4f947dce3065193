import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDecimal } from "../../../../src/output/files/reading/read-decimal.js";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readDecimal(bytesOf(`x${text}x`), 1, 1 + text.length);

describe("readDecimal", () => {
  it("reads what the engine reads, bit for bit", () => {
    const anyNumber = fc.double({ noNaN: true, noDefaultInfinity: true });
    const written = fc.oneof(
      anyNumber.map(String),
      anyNumber.map((value) => value.toExponential(8)),
      fc.double({ min: -1000, max: 1000, noNaN: true }).map((value) => value.toFixed(6)),
      fc.float({ noNaN: true, noDefaultInfinity: true }).map(String),
      fc.tuple(fc.bigInt(0n, 10n ** 20n), fc.integer({ min: -30, max: 30 })).map(([m, e]) => `+${m}E${e}`),
    );
    fc.assert(
      fc.property(written, (text) => {
        expect(read(text)).toBe(Number(text));
      }),
      { seed: 20261127, numRuns: 20_000 },
    );
  });

  it.each(["0", "-0", "1.", ".5", "+3", "007", "0.000000000000000001", "1e+2", "9007199254740993", "1e400"])(
    "reads %s",
    (text) => {
      expect(read(text)).toBe(Number(text));
    },
  );

  it.each(["", "-", ".", "e5", "1e", "1e+", "1.2.3", "1,5", "nan", "inf", "0x10", "1 2", "--1"])(
    "finds no number in %j",
    (text) => {
      expect(read(text)).toBeNaN();
    },
  );
});
