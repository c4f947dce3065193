// Covers: src/judge/proof/stones/*
import { describe, expect, test } from "vitest";
import type { Point3 } from "../../../../src/base/math/point.js";
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
const ROW: RowOptions = { count: 3, from: 78, to: 102 };
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
    ["prongs of a pear", { cut: "pear", size: 3, level: 1.6, setting: { form: "prongs", count: 3, turn: 0 } }, ONE],
    ["grains of a row of squares", { cut: "princess", size: 1.6, setting: { form: "bead-set", border: 0.3 } }, ROW],
    [
      "prongs that marquises share",
      { cut: "marquise", size: 2, level: 1.2, setting: { form: "prongs", shared: true } },
      ROW,
    ],
  ])("%s", async (_, document, row) => {
    const proof = await prove(setOnFlat(document, row).stones);
    expect(proof).toMatchObject({ agrees: true, astray: [] });
    expect(proof.columns).toBeGreaterThan(600);
    // The bare band's chords alone leave it a thousandth short.
    expect(Math.abs(proof.volume.expected / proof.volume.built - 1)).toBeLessThan(0.002);
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
  const turnedPoint = ([x, y, z]: Point3, angle: number): Point3 => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return [x * cos - y * sin, x * sin + y * cos, z];
  };
  const turned = ({ positions, triangles }: Mesh): Mesh => {
    const moved = Array.from({ length: positions.length / 3 }, (_, i) =>
      turnedPoint([positions[3 * i], positions[3 * i + 1], positions[3 * i + 2]], 0.05),
    );
    return { positions: Float64Array.from(moved.flat()), triangles };
  };
  const withWidth = (placed: PlacedStone, width: number): PlacedStone => ({
    ...placed,
    stone: { ...placed.stone, width, length: width },
  });

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

  test("one of a row that is left out, stands twice, or is another size", async () => {
    const sizes = flush.map((stone, i) => withWidth(stone, 1.5 - 0.08 * i));
    expect((await prove(sizes)).agrees).toBe(true);
    expect((await prove(sizes.slice(1), sizes)).agrees).toBe(false);
    const twice = [...sizes, { ...sizes[0], at: turnedPoint(sizes[0].at, 0.12), out: turnedPoint(sizes[0].out, 0.12) }];
    expect((await prove(twice, sizes)).agrees).toBe(false);
    const wrong = third(sizes, (stone) => withWidth(stone, 1.5));
    expect((await prove(wrong, sizes)).agrees).toBe(false);
  });

  test("a stone that is mirrored, and a prong on the wrong side", async () => {
    const document = { cut: "pear", size: 3, level: 1.6, setting: { form: "prongs", count: 3, turn: 0 } };
    const [pear] = setOnFlat(document, ONE).stones;
    const [x, y, z] = pear.along;
    expect((await prove([{ ...pear, along: [-x, -y, -z] }], [pear])).agrees).toBe(false);
    const aside = { ...pear.setting, turn: 180 } as PlacedStone["setting"];
    expect((await prove([{ ...pear, setting: aside }], [pear])).agrees).toBe(false);
  });
});
