import { describe, expect, it } from "vitest";
import type { Warning } from "../../src/base/errors.js";
import { readDesign } from "../../src/design/read.js";
import type { Answer } from "../../src/ring/answer-store.js";
import type { RingOptions } from "../../src/ring/answers.js";
import { RING_DEFAULTS } from "../../src/ring/open-ring.js";
import { Pieces } from "../../src/ring/pieces.js";
import { Walk } from "../../src/ring/walk.js";
import { plainBand } from "../design/documents.js";

const pieces = new Pieces(readDesign({ ...plainBand, casting: { finishing: 0.05 } }));

/** A walk through the finished piece and its casting, whose stages say what is given for them. */
function walkSaying(said: Readonly<Record<string, readonly Warning[]>>) {
  const texts: string[] = [];
  const optionText = (name: string) => {
    texts.push(name);
    return name;
  };
  const walk = new Walk(["allowances"], RING_DEFAULTS as RingOptions, pieces, optionText);
  for (const node of walk.order) {
    const answer: Answer = { outcome: { value: node.id }, mark: node.id, warnings: said[node.id] ?? [], ms: 1 };
    walk.take(node, answer);
  }
  return { walk, texts };
}

const warning = (code: string, path: string, message: string): Warning => ({ code, path, message });

describe("what is said on a walk", () => {
  const thin = warning("wall-thin", "profile", "the wall is 0.3 mm");

  it("of the casting is what was not said of the finished piece", () => {
    const { walk } = walkSaying({ "finished profile": [thin], "cast profile": [thin] });
    expect(walk.told().warnings).toEqual([thin]);
  });

  it.each([
    ["another figure", { ...thin, message: "the wall is 0.2 mm" }],
    ["another place", { ...thin, path: "profile.bore" }],
    ["another kind", { ...thin, code: "wall-uneven" }],
  ])("of the casting with %s is said too, and that it is of the casting", (_, other) => {
    const { walk } = walkSaying({ "finished profile": [thin], "cast profile": [other, other] });
    const [first, ...others] = walk.told().warnings;
    expect(first).toEqual(thin);
    expect(others).toHaveLength(1);
    expect(others[0]).toMatchObject({ code: other.code, path: other.path });
    expect(others[0].message).toBe(`with casting.finishing added, before it is taken off: ${other.message}`);
  });
});

describe("the key of a stage", () => {
  it("is all that it reads, and made once", () => {
    const { walk, texts } = walkSaying({});
    const node = walk.order.find(({ id }) => id === "finished union");
    if (node === undefined) throw new Error("no union on the walk");
    const key = walk.key(node);
    expect(key.split("\n")).toEqual(["kernel", "detail", "finished parts", "finished headroom", "finished prove"]);
    expect(walk.key(node)).toBe(key);
    expect(texts).toEqual(["kernel", "detail"]);
  });

  it("tells the casting from the finished piece", () => {
    const { walk } = walkSaying({});
    const keys = ["finished profile", "cast profile"].map((id) => {
      const node = walk.order.find((one) => one.id === id);
      return node === undefined ? undefined : walk.key(node);
    });
    expect(keys[0]).toBeDefined();
    expect(keys[1]).not.toBe(keys[0]);
  });
});
