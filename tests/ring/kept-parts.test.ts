// Across: parts of a stage's work that a changed ring takes over: lines that beads follow, and columns of the proof
import { describe, expect, it } from "vitest";
import { openInside } from "../../src/ring/open-ring.js";

const LOZENGE = "M 0.2 0 L 0.5 0.3 L 0.8 0 L 0.5 -0.3 Z";

const design = () => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.8, depth: 0.75, edge: 0.15 } },
  pattern: {
    fit: { repeats: 6, hold: "band" },
    symmetry: "p2mm",
    cover: 360,
    regions: [
      {
        path: LOZENGE,
        height: 0.4,
        beneath: false,
        beads: { diameter: 0.4, on: "border" as string | number },
      },
      { path: "M 0 0.42 H 1", ribbon: { width: 0.4 }, height: 0.4, beads: { diameter: 0.3 } },
    ],
  },
  hallmark: undefined as object | undefined,
});

type Design = ReturnType<typeof design>;
type Edit = (copy: Design) => void;

/** Each changes one thing of which what is taken over depends, or on which it must not. */
const edits: readonly (readonly [what: string, edit: Edit])[] = [
  ["beads' diameter", ({ pattern }) => (pattern.regions[0].beads.diameter = 0.45)],
  ["where beads stand", ({ pattern }) => (pattern.regions[0].beads.on = 0.3)],
  ["a height", ({ pattern }) => (pattern.regions[0].height = 0.3)],
  [
    "raised to sunk",
    ({ pattern }) => Object.assign(pattern.regions[0], { mode: "sunk", height: undefined, depth: 0.3 }),
  ],
  ["an outline", ({ pattern }) => (pattern.regions[0].path = LOZENGE.replaceAll("0.3", "0.25"))],
  ["a ribbon's width", ({ pattern }) => (pattern.regions[1].ribbon = { width: 0.5 })],
  ["copies that run beneath the rails", ({ pattern }) => (pattern.regions[0].beneath = true)],
  ["the number of tiles", ({ pattern }) => (pattern.fit.repeats = 5)],
  ["the group", ({ pattern }) => (pattern.symmetry = "p1")],
  ["the wall", ({ profile }) => (profile.thickness = 2.2)],
  ["the tolerance", (copy) => (copy.tolerance = 0.06)],
  ["a hallmark's field", (copy) => (copy.hallmark = { at: "seat", width: 3, height: 1.5 })],
];

const startOf = (cover: number): Design => {
  const copy = design();
  copy.pattern.cover = cover;
  return copy;
};

const found = async (ring: ReturnType<typeof openInside>) => {
  const { answers } = await ring.ask(["pattern", "union"], { detail: "draft" });
  return { lines: answers.pattern?.beadLines ?? [], proof: answers.union.proof };
};

describe("parts that a changed ring takes over", () => {
  it.each([
    [360, edits],
    // What stops has lines of its own for each size of beads.
    [200, edits.slice(0, 2)],
  ] as const)("are those of a ring opened anew, over %d°, after each edit", async (cover, some) => {
    const start = openInside(startOf(cover), {});
    await found(start);
    for (const [what, edit] of some) {
      const copy = startOf(cover);
      edit(copy);
      expect(await found(start.change(copy)), what).toEqual(await found(openInside(copy, {})));
    }
  });

  it("are the same lines for beads of another size all round, and not where the pattern stops", async () => {
    for (const [cover, isSame] of [
      [360, true],
      [200, false],
    ] as const) {
      const start = openInside(startOf(cover), {});
      const copy = startOf(cover);
      copy.pattern.regions[0].beads.diameter = 0.45;
      const [one, other] = [await found(start), await found(start.change(copy))].map(({ lines }) => lines[0].lines);
      if (isSame) expect(other).toBe(one);
      else expect(other).not.toBe(one);
    }
  });
});
