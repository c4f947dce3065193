import { describe, expect, it } from "vitest";
import { sameFiles, takeFiles } from "../../../src/ring/steps/file-contents.js";

const bytes = (...values: number[]) => Uint8Array.from(values);

describe("files that are taken", () => {
  it("are asked for once each, one after the other, and answer as the source did", async () => {
    const asked: string[] = [];
    const { source, known } = await takeFiles(["b", "a", "b"], async (name) => {
      asked.push(name);
      return `content of ${name}`;
    });
    expect(asked).toEqual(["b", "a"]);
    expect(known).toBeUndefined();
    if (typeof source !== "function") throw new Error("a function was given");
    expect([source("a"), source("b")]).toEqual(["content of a", "content of b"]);
    expect(() => source("c")).toThrow("was not asked for");
  });

  it("fail again as they failed", async () => {
    const reason = new Error("no disk");
    const { source } = await takeFiles(["a"], () => Promise.reject(reason));
    expect(() => typeof source === "function" && source("a")).toThrow(reason);
  });

  it("are copies: what the caller's bytes become is another ring's matter", async () => {
    const own = bytes(1, 2);
    const taken = await takeFiles(["a"], { a: own });
    own[0] = 9;
    expect(taken.source).toEqual({ a: bytes(1, 2) });
    expect(taken.known).toEqual(["a"]);
  });

  it("of a list are its own alone, not what every object has", async () => {
    const { outcomes } = await takeFiles(["toString", "a"], { a: "text" });
    expect([...outcomes]).toEqual([
      ["toString", { content: undefined }],
      ["a", { content: "text" }],
    ]);
  });
});

describe("the same files", () => {
  const same = async (names: readonly string[], ...sources: readonly Parameters<typeof takeFiles>[1][]) => {
    const [a, b] = await Promise.all(sources.map((source) => takeFiles(names, source)));
    expect(sameFiles(b, a)).toBe(sameFiles(a, b));
    return sameFiles(a, b);
  };

  it("are those of the same bytes or text, whatever else is there", async () => {
    expect(await same(["a"], { a: bytes(1, 2) }, { a: bytes(1, 2), b: "more" })).toBe(true);
    expect(await same(["a"], { a: "text" }, { a: "text" })).toBe(true);
    expect(await same([], { a: "1" }, { b: "2" })).toBe(true);
  });

  it("are not those with one byte changed, one more, or text in place of bytes", async () => {
    expect(await same(["a"], { a: bytes(1, 2) }, { a: bytes(1, 3) })).toBe(false);
    expect(await same(["a"], { a: bytes(1, 2) }, { a: bytes(1, 2, 0) })).toBe(false);
    expect(await same(["a"], { a: bytes(65) }, { a: "A" })).toBe(false);
    expect(await same(["a"], { a: "x" }, {})).toBe(false);
  });

  it("are not those of a list and of a function, nor of other names", async () => {
    expect(await same(["a"], { a: "x" }, () => "x")).toBe(false);
    const [one, two] = [await takeFiles(["a"], { a: "x", b: "x" }), await takeFiles(["a", "b"], { a: "x", b: "x" })];
    expect([sameFiles(one, two), sameFiles(two, one)]).toEqual([false, false]);
    const [first, second] = [await takeFiles(["a"], { a: "x", b: "x" }), await takeFiles(["b"], { a: "x", b: "x" })];
    expect(sameFiles(first, second)).toBe(false);
  });

  it("that are missing are the same only where as much is there to be named instead", async () => {
    expect(await same(["a"], { b: "1" }, { b: "2" })).toBe(true);
    expect(await same(["a"], { b: "1" }, { b: "1", c: "1" })).toBe(false);
  });

  it("that failed are never the same: they may go well the next time", async () => {
    const broken = () => {
      throw new Error("busy");
    };
    expect(await same(["a"], broken, broken)).toBe(false);
  });
});
