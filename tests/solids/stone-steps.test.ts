import { describe, expect, test } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { hollowSpheres, mostStoneUnits, scopesOf } from "../../src/solids/stone-steps.js";
import type { PlacedStone } from "../../src/stones/placed-stone.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { uniteRing } from "../../src/union/union.js";
import { setOnFlat } from "../support/set-group.js";
import { stoneParts } from "../support/stone-parts.js";

const unite = (stones: readonly PlacedStone[], whole = false) => {
  const { parts, warnings } = stoneParts(stones);
  const check = (mesh: Parameters<typeof checkSolid>[0]) => checkSolid(mesh);
  const how = { kernel: manifoldKernel, fallback: manifoldKernel, check };
  const ring = whole ? { steps: parts.steps } : parts;
  return { united: uniteRing(ring, how), warnings };
};
const rows = {
  "bead-set": [{ size: 2.4, setting: { form: "bead-set", border: 0.3 } }, 26],
  channel: [{ size: 2.4, setting: { form: "channel" }, through: true }, 24],
} as const;

describe.each(Object.entries(rows))("a %s row", (_, [document, count]) => {
  const stones = setOnFlat(document, { count }).stones;

  test("is worked on a quarter of one unit, and is what one union of everything makes", async () => {
    const [unit, whole] = [await unite(stones).united, await unite(stones, true).united];
    expect(unit.road).toBe("mirror");
    expect(unit.roadReason).toBe(`a quarter of one of ${count} alike units, mirrored`);
    expect(unit.check).toMatchObject({ closed: true, genus: whole.check.genus });
    expect(unit.check.genus).toBe("through" in document ? 1 + count : 1);
    expect(signedVolume(unit.mesh) / signedVolume(whole.mesh)).toBeCloseTo(1, 6);
  });

  test("of which one stone stands a little aside is not taken for even", async () => {
    const [{ at, ...first }, ...rest] = stones;
    const aside = [{ ...first, at: [at[0] + 0.05, at[1], at[2]] as const }, ...rest];
    const { symmetry } = stoneParts(aside).parts;
    expect(symmetry?.units ?? 1).toBe(1);
  });
});

test("a stone at one place of a ring that comes again is worked on the units that it touches", () => {
  const single = setOnFlat({ size: 2, setting: { form: "flush" } }, { count: 1 }).stones;
  const even = setOnFlat({ size: 1.5, setting: { form: "flush" } }, { count: 20, group: 1 }).stones;
  const scopes = scopesOf([...single, ...even], mostStoneUnits([...single, ...even]));
  expect(scopes.place).toEqual(single);
  expect(scopes.unit).toEqual(even);
  expect(scopesOf(single, 1)).toEqual({ unit: single, place: [] });
});

test("where a ring may be cut is asked of the hollows as of beads", () => {
  const [{ at }] = setOnFlat({ size: 2, setting: { form: "flush" } }, { count: 1 }).stones;
  const [sphere] = hollowSpheres(setOnFlat({ size: 2, setting: { form: "flush" } }, { count: 1 }).stones);
  expect(sphere).toMatchObject({ centre: at, radius: 1.05 });
});
