import { expect, it } from "vitest";
import { readDesign } from "../../src/design/read.js";
import type { PieceDesign } from "../../src/ring/answers.js";
import { FixedDesign } from "../../src/ring/fixed-design.js";
import { PLAIN } from "../cli/support.js";

const design = (change: object = {}): PieceDesign => ({ ...readDesign({ ...PLAIN, ...change }), lift: 0 });

it("cannot be changed any more, however deep", () => {
  const { value } = new FixedDesign(design());
  expect(() => Object.assign(value.profile, { width: 9 })).toThrow(TypeError);
  expect(() => Object.assign(value.profile.outside, { edge: 1 })).toThrow(TypeError);
  expect(() => value.beads.push(...value.beads, undefined as never)).toThrow(TypeError);
});

it("has the same text for the same field, and another for another value, field by field", () => {
  const [one, same, other] = [{}, {}, { profile: { ...PLAIN.profile, width: 5 } }].map(
    (change) => new FixedDesign(design(change)),
  );
  expect(one.text("profile")).toBe(same.text("profile"));
  expect(one.text("profile")).not.toBe(other.text("profile"));
  expect(one.text("size")).toBe(other.text("size"));
  expect(one.text("size")).not.toBe(one.text("profile"));
  expect(one.text("profile")).toBe(one.text("profile"));
});

it("goes round in what holds itself no second time", () => {
  const round = { ...design(), lift: 0.1 } as PieceDesign & { self?: unknown };
  round.self = round;
  expect(Object.isFrozen(new FixedDesign(round).value)).toBe(true);
});
