// Covers: src/judge/proof/stones/*
import { describe, expect, test } from "vitest";
import { checkSolid } from "../../../../src/judge/gate.js";
import { proofOf } from "../../../../src/judge/proof/prove.js";
import type { Mesh } from "../../../../src/mesh/mesh.js";
import type { Step } from "../../../../src/mesh/step.js";
import { signedVolume } from "../../../../src/mesh/volume.js";
import type { PlacedStone } from "../../../../src/stones/placed-stone.js";
import { manifoldKernel } from "../../../../src/union/kernels/manifold.js";
import { uniteRing } from "../../../../src/union/union.js";
import { setOnFlat } from "../../../support/set-group.js";
import type { RowOptions } from "../../../support/set-stones.js";
import { FLAT_BAND } from "../../../support/set-stones.js";
import { bodiesOf } from "../../../support/stages.js";
import { stoneParts } from "../../../support/stone-parts.js";

const PART: RowOptions = { count: 5, from: 70, to: 110 };
const ONE: RowOptions = { count: 1 };
const { profile, wrap, pattern } = bodiesOf(FLAT_BAND);

/** Compares a ring made with some stones with what others should make of it. */
async function prove(built: readonly PlacedStone[], drawn = built, change = (step: Step): Step => step) {
  const { parts } = stoneParts(built);
  const steps = parts.steps.map(change);
  const symmetry = steps.every((step, i) => step === parts.steps[i]) ? parts.symmetry : undefined;
  const how = { kernel: manifoldKernel, fallback: manifoldKernel, check: (mesh: Mesh) => checkSolid(mesh) };
  const { mesh, road } = await uniteRing({ steps, symmetry }, how);
  const marks = { marks: [], field: undefined };
  const compare = proofOf({
    band: profile,
    wrap,
    pattern,
    marks,
    beads: [],
    stones: drawn,
    tolerance: 0.01,
    beadDeviation: 0.04,
  });
  return compare(mesh, { volume: signedVolume(mesh) }, { units: road === "whole" ? 1 : (symmetry?.units ?? 1) });
}

describe("what is drawn is found", () => {
  test.each<[string, Record<string, unknown>, RowOptions]>([
    ["flush", { size: 1.5, through: true, setting: { form: "flush" } }, { count: 12 }],
    ["bead-set, shared", { size: 1.5, setting: { form: "bead-set", border: 0.4 } }, { count: 42 }],
    ["bead-set, alone", { size: 1.5, setting: { form: "bead-set", border: 0.3, grains: 3 } }, ONE],
    [
      "channel with raised walls",
      { size: 1.8, level: 0.5, through: true, setting: { form: "channel", rise: 0.6, wall: 0.5 } },
      PART,
    ],
    ["bezel", { cut: "emerald", size: 3, level: 1, through: true, setting: { form: "bezel" } }, ONE],
    ["prongs", { size: 3, level: 1.6, through: true, setting: { form: "prongs" } }, ONE],
  ])("%s", async (_, document, row) => {
    const proof = await prove(setOnFlat(document, row).stones);
    expect(proof).toMatchObject({ agrees: true, astray: [] });
    expect(proof.columns).toBeGreaterThan(600);
  });
});

describe("what is not as drawn is found", () => {
  const flush = setOnFlat({ size: 1.5, setting: { form: "flush" } }, PART).stones;
  // So far apart that a grain moved by half a millimetre stands clear of all others.
  const apart = { count: 3, from: 75, to: 105 };
  const beads = setOnFlat({ size: 1.5, setting: { form: "bead-set", border: 0.3 } }, apart).stones;
  const third = (stones: readonly PlacedStone[], change: (stone: PlacedStone) => PlacedStone) =>
    stones.map((stone, i) => (i === 2 ? { ...change(stone), group: 1, row: undefined } : stone));
  const grains = (change: (all: readonly Mesh[]) => readonly Mesh[]) => (step: Step) =>
    step.name === "grains" ? { ...step, bodies: () => change(step.bodies()) } : step;
  const turned = ({ positions, triangles }: Mesh): Mesh => {
    const [cos, sin] = [Math.cos(0.05), Math.sin(0.05)];
    const moved = positions.map((value, i) => {
      const [x, y] = [positions[i - (i % 3)], positions[i - (i % 3) + 1]];
      return i % 3 === 0 ? x * cos - y * sin : i % 3 === 1 ? x * sin + y * cos : value;
    });
    return { positions: moved, triangles };
  };

  test("one bearing that is missing", async () => {
    const built = third(flush, (stone) => ({ ...stone, setting: { ...stone.setting, ready: "pilot" } }));
    expect((await prove(built, flush)).agrees).toBe(false);
  });

  test("one stone's hollow that is shifted by 0.1 mm", async () => {
    const built = third(flush, (stone) => ({ ...stone, at: [stone.at[0] + 0.1, stone.at[1], stone.at[2]] }));
    expect((await prove(built, flush)).agrees).toBe(false);
  });

  test("one pilot that is not through", async () => {
    const drawn = flush.map((stone) => ({ ...stone, through: true as const }));
    const built = third(drawn, (stone) => ({ ...stone, through: false }));
    expect((await prove(built, drawn)).agrees).toBe(false);
  });

  test("a grain that stands twice, and one that is missing", async () => {
    const twice = await prove(
      beads,
      beads,
      grains((all) => [...all, turned(all[0])]),
    );
    expect(twice.agrees).toBe(false);
    const missing = await prove(
      beads,
      beads,
      grains((all) => all.slice(1)),
    );
    expect(missing.agrees).toBe(false);
  });

  test("a wall on the wrong side", async () => {
    const [bezel] = setOnFlat({ size: 2, level: 1, setting: { form: "bezel" } }, { count: 1, v: 0.4 }).stones;
    const [x, y, z] = bezel.at;
    expect((await prove([{ ...bezel, at: [x, y, -z] }], [bezel])).agrees).toBe(false);
  });
});
