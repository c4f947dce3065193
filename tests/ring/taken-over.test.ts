// Across: parts of a stage's work that a changed ring takes over
/**
 * What a change would leave as it was if a part of a stage's work were taken over by less than all that it depends on: in
 * each case one thing differs, and the changed ring is held against one that is opened anew.
 */
import { describe, expect, it } from "vitest";
import { canonicalText } from "../../src/base/canonical.js";
import { openInside } from "../../src/ring/open-ring.js";

/** A floor of 3.5 mm between rails; and a band without rails that has that floor for its outside, at the same radius. */
const CHANNEL = {
  width: 5,
  thickness: 1.75,
  bore: { form: "flat", edge: 0 },
  outside: { form: "channel", rail: 0.75, depth: 0.5, edge: 0 },
};
const FLOOR = {
  width: 3.5,
  thickness: 1.25,
  bore: { form: "flat", edge: 0 },
  outside: { form: "flat", edge: 0 },
};

/** Outsides that lean one way and the other: as long a seat at the same mean radius. */
const leaning = (low: number, high: number) => ({
  ...FLOOR,
  thickness: 1.3,
  outside: { form: "free", path: `M -1 ${low} L 1 ${high}` },
});

const RAISED = { path: "M 0.1 -0.1 H 0.3 V 0.1 H 0.1 Z", height: 0.3 };
const TO_THE_EDGE = { path: "M 2.5 0 H 3.5 V 1.75 H 2.5 Z", unit: "mm", height: 0.3 };
const DISC = { path: "M 0.4 0 A 0.1 0.1 0 0 1 0.2 0 A 0.1 0.1 0 0 1 0.4 0 Z", height: 0.3 };
const HOLE = { path: "M 0.4 -0.1 H 0.5 V 0.1 H 0.4 Z", mode: "pierced" };
const PIT = { path: "M 0.75 -0.1 H 0.85 V 0.1 H 0.75 Z", mode: "sunk", depth: 0.2 };

type Document = Record<string, unknown>;

const ring = (regions: readonly object[], others: Document = {}, pattern: Document = {}): Document => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.1,
  profile: CHANNEL,
  pattern: { fit: { repeats: 10, hold: "band" }, regions, ...pattern },
  ...others,
});

const cases: Readonly<Record<string, readonly [before: Document, after: Document]>> = {
  "rails beside the same seat": [ring([TO_THE_EDGE]), ring([TO_THE_EDGE], { profile: FLOOR })],
  "a section's height": [ring([RAISED]), ring([{ ...RAISED, height: 0.35 }])],
  "a section's rounding": [ring([RAISED]), ring([{ ...RAISED, round: 0.05 }])],
  "a pit's depth": [ring([PIT]), ring([{ ...PIT, depth: 0.25 }])],
  "a region's mode": [ring([RAISED]), ring([{ path: RAISED.path, mode: "sunk", depth: 0.3 }])],
  "a hole's broken edges": [ring([HOLE]), ring([{ ...HOLE, broken: 0.1 }])],
  "a region's name": [ring([RAISED, HOLE]), ring([RAISED, HOLE].map((one) => ({ ...one, name: "leaf" })))],
  "a region's place in the list": [ring([RAISED, HOLE]), ring([HOLE, RAISED])],
  "the size of a region's beads": [
    ring([{ ...RAISED, beads: { diameter: 0.3, on: "border" } }]),
    ring([{ ...RAISED, beads: { diameter: 0.4, on: "border" } }]),
  ],
  "where a region's beads go": [
    ring([{ ...RAISED, beads: { diameter: 0.3, on: "border" } }]),
    ring([{ ...RAISED, beads: { diameter: 0.3, on: 0.1 } }]),
  ],
  "the tolerance": [ring([DISC]), ring([DISC], { tolerance: 0.02 })],
  "the length of a fade": [
    ring([RAISED], {}, { cover: 180, ends: { form: "fade", length: 2 } }),
    ring([RAISED], {}, { cover: 180, ends: { form: "fade", length: 3 } }),
  ],
  "the way the seat leans beneath beads": [
    ring([RAISED], { profile: leaning(1.1, 1.3), beads: [{ along: { path: "M 0 0.2 H 1" }, diameter: 0.3 }] }),
    ring([RAISED], { profile: leaning(1.3, 1.1), beads: [{ along: { path: "M 0 0.2 H 1" }, diameter: 0.3 }] }),
  ],
};

describe("of the ring before, a ring takes over what is not touched by a change of", () => {
  it.each(Object.entries(cases))("%s", async (_, [before, after]) => {
    const first = openInside(before);
    const told = await laidOut(first);
    const changed = await laidOut(first.change(after));
    expect(changed).toBe(await laidOut(openInside(after)));
    expect(changed).not.toBe(told);
  });
});

/** The flat pattern and the placed beads as text. */
async function laidOut(opened: ReturnType<typeof openInside>): Promise<string> {
  const { pattern, beads } = (await opened.ask(["pattern", "beads"])).answers;
  return canonicalText(plain({ pattern, beads }));
}

/** Without functions. */
function plain(value: unknown): unknown {
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array);
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== "object" || value === null) return typeof value === "function" ? "function" : value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
}
