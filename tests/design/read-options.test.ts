// Covers: src/design/option-fields.ts
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { functionField, isBytes, signalField } from "../../src/design/option-fields.js";
import { readOptions } from "../../src/design/read-options.js";
import { failureOf } from "../support/failure-of.js";

const schema = z.strictObject({
  mode: z.enum(["slow", "fast"]).optional().describe("how; default slow"),
  count: z.int().min(1).max(9).optional(),
  inner: z.strictObject({ far: z.number() }).optional(),
  tell: functionField<(text: string) => void>("is told").optional(),
  signal: signalField.optional(),
});

const problemsOf = (given: unknown) =>
  failureOf(() => readOptions(schema, given)).problems.map(({ code, path, hint }) => [code, path, hint]);

describe("options", () => {
  it("are as their schema has them; what is undefined is left out", () => {
    const tell = () => undefined;
    const { signal } = new AbortController();
    expect(readOptions(schema, { mode: "fast", count: undefined, tell, signal })).toEqual({
      mode: "fast",
      tell,
      signal,
    });
    expect(readOptions(schema)).toEqual({});
  });

  it("are a copy, frozen ones too", () => {
    const given = Object.freeze({ inner: Object.freeze({ far: 3 }) });
    const read = readOptions(schema, given);
    expect(read).toEqual(given);
    expect(read.inner).not.toBe(given.inner);
  });

  it("are refused by the name of every object's kin", () => {
    expect(problemsOf(JSON.parse('{"__proto__": {"mode": "fast"}}'))).toEqual([
      ["option-unknown", "__proto__", undefined],
    ]);
    expect(problemsOf({ constructor: 1, toString: 2 }).map(([code]) => code)).toEqual(Array(2).fill("option-unknown"));
  });

  it("may be inherited", () => {
    expect(readOptions(schema, Object.create({ mode: "fast" }))).toEqual({ mode: "fast" });
    expect(problemsOf(Object.create({ mood: "fast" }))).toEqual([["option-unknown", "mood", 'did you mean "mode"?']]);
  });

  it("are refused with everything that is wrong", () => {
    expect(problemsOf({ mode: "fsat", count: 1.5, inner: {}, tell: "me", signal: {}, cuont: 1 })).toEqual([
      ["option-invalid", "mode", 'did you mean "fast"?'],
      ["option-invalid", "count", undefined],
      ["option-missing", "inner.far", undefined],
      ["option-invalid", "tell", undefined],
      ["option-invalid", "signal", undefined],
      ["option-unknown", "cuont", 'did you mean "count"?'],
    ]);
  });

  it.each([null, 3, "fast", true, [], () => undefined, Symbol("none"), 1n])("are an object: %s is none", (given) => {
    expect(failureOf(() => readOptions(schema, given))).toMatchObject({ code: "option-invalid", allowed: "an object" });
  });

  it("say what was met in words", () => {
    expect(failureOf(() => readOptions(schema, () => undefined)).message).toContain("not a function");
    expect(failureOf(() => readOptions(schema, { count: 1n })).message).toContain("a big integer");
    expect(failureOf(() => readOptions(schema, { inner: Symbol("s") })).message).toContain("a symbol");
  });

  it("that cannot be read are refused", () => {
    const trap = {
      get mode(): string {
        throw new RangeError("no");
      },
    };
    expect(failureOf(() => readOptions(schema, trap)).cause).toBeInstanceOf(RangeError);
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    expect(failureOf(() => readOptions(schema, { inner: proxy })).code).toBe("option-invalid");
  });
});

describe("bytes", () => {
  it("are told by what they are, from any realm", () => {
    expect(isBytes(Buffer.from("a"))).toBe(true);
    expect([new Uint16Array(1), new ArrayBuffer(1), [1], "a", null].map(isBytes)).toEqual(Array(5).fill(false));
  });
});
