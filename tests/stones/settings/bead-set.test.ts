// Covers: src/stones/settings/beside.ts, src/stones/settings/bright-cut.ts, src/stones/settings/link.ts, src/stones/settings/neighbours.ts, src/stones/settings/post.ts, src/stones/settings/group.ts, src/stones/settings/set-group.ts, src/stones/settings/parts-of-setting.ts, src/stones/settings/frame.ts, src/stones/set-stones.ts
import { describe, expect, test } from "vitest";
import { TURN } from "../../../src/base/units.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { meshBounds } from "../../../src/mesh/bounds.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { fromSpace } from "../../../src/stones/frame.js";
import { ROOM } from "../../../src/stones/settings/hollow.js";
import { fromOutline } from "../../../src/stones/settings/neighbours.js";
import { setOnFlat } from "../../support/set-group.js";

const BEAD_SET = { size: 1.5, setting: { form: "bead-set", border: 0.4 } };

describe("a bead-set row all round", () => {
  const { set, parts, unheld } = setOnFlat(BEAD_SET, { count: 42 });
  const grains = parts("grains");

  test("has two grains between each two stones, none of them twice", () => {
    expect(grains.length).toBe(84);
    expect(unheld).toEqual([]);
    const middles = grains.map(middleOf);
    middles.forEach((a, i) => {
      for (const b of middles.slice(i + 1)) expect(Math.hypot(...a.map((x, k) => x - b[k]))).toBeGreaterThan(0.375);
    });
  });

  test("has its grains beside the girdles, one room away", () => {
    const [{ frame, shape }] = set;
    const near = grains
      .map((grain) => fromSpace(frame, middleOf(grain)))
      .filter(([, , z]) => z > -1)
      .map(([x, y]) => Math.hypot(x, y) - 0.1875 - shape.width / 2);
    const touching = near.filter((gap) => gap < 0.2);
    expect(touching.length).toBe(4);
    // Seen along the stone's own axis, from which a neighbour leans by 4°.
    for (const gap of touching) expect(Math.abs(gap - ROOM - 0.02)).toBeLessThan(0.02);
  });

  test("has grains of a dome on a post, in closed form", () => {
    const radius = 0.1875;
    const post = Math.PI * radius ** 2 * (0.15 + 0.6 * radius);
    const dome = (2 / 3) * Math.PI * radius ** 3;
    for (const grain of grains.slice(0, 3)) {
      expect(checkSolid(grain)).toMatchObject({ closed: true, genus: 0 });
      expect(Math.abs(signedVolume(grain) / (post + dome) - 1)).toBeLessThan(0.02);
    }
  });

  test("cuts one bright cut along the row and a link wherever hollows would leave a leaf of metal", () => {
    const hollows = parts("hollows");
    expect(hollows.length).toBe(1 + 42 + 42);
    expect(hollows.every((hollow) => checkSolid(hollow).closed)).toBe(true);
    expect(setOnFlat(BEAD_SET, { count: 38 }).parts("hollows").length).toBe(1 + 38);
  });

  test("gives a sector what reaches into it", () => {
    const wide = TURN / 42;
    expect(parts("grains", { from: Math.PI / 2, to: Math.PI / 2 + wide }).length).toBe(2);
    expect(parts("grains", { from: Math.PI / 2, to: Math.PI / 2 + wide, upper: true }).length).toBe(1);
    expect(parts("grains", { from: Math.PI / 2 - wide / 2, to: Math.PI / 2 + wide / 2 }).length).toBe(4);
  });
});

describe("a stone by itself", () => {
  test.each([2, 3, 4])("has %s grains of its own", (grains) => {
    const { parts, unheld } = setOnFlat({ size: 2, setting: { form: "bead-set", grains } }, { count: 1 });
    expect(parts("grains").length).toBe(grains);
    expect(unheld).toEqual([]);
  });

  test("has a bright plate round it, in closed form", () => {
    const { parts, set } = setOnFlat({ size: 2, setting: { form: "bead-set", border: 0.3 } }, { count: 1 });
    const [plate] = parts("hollows");
    const { surface, above } = set[0].around;
    const [a, b] = [1 + ROOM + 0.02 + 0.5, 1 + ROOM + 0.02 + 0.5 + 0.3];
    const cone = (Math.PI * surface * (a * a + a * b + b * b)) / 3;
    const volume = cone + Math.PI * b * b * (above - surface);
    expect(signedVolume(plate)).toBeGreaterThan(volume);
    expect(signedVolume(plate) / volume).toBeLessThan(1.02);
  });
});

test("grains of stones of other shapes stand beside their outlines", () => {
  const { parts, set } = setOnFlat(
    { cut: "princess", size: 2, setting: { form: "bead-set" } },
    { count: 5, from: 70, to: 118 },
  );
  const [{ shape, frame }] = set;
  for (const grain of parts("grains")) {
    const [x, y] = fromSpace(frame, middleOf(grain));
    expect(fromOutline(shape.girdle, [x, y])).toBeGreaterThan(0.25 + ROOM - 0.01);
  }
});

test("a stone beside which no grain finds room is told", () => {
  const row = { count: 3, from: 81.5, to: 98.5 };
  const four = { size: 1.5, setting: { form: "bead-set", grains: 3, grain: 0.5 } };
  const { unheld, parts } = setOnFlat(four, row);
  expect(unheld).toEqual([1]);
  expect(parts("grains").length).toBeLessThan(9);
});

function middleOf(mesh: Parameters<typeof meshBounds>[0]): [number, number, number] {
  const { min, max } = meshBounds(mesh);
  return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
}
