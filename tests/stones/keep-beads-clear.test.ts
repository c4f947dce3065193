import { expect, test } from "vitest";
import type { Bead } from "../../src/beads/bead.js";
import { intoSpace } from "../../src/stones/frame.js";
import { keepBeadsClear } from "../../src/stones/keep-beads-clear.js";
import { setOnFlat } from "../support/set-group.js";

const { stones } = setOnFlat({ size: 1.5, setting: { form: "flush" } }, { count: 3, from: 70, to: 110 });
const beadAt = (x: number, z = 0.2): Bead => ({
  centre: intoSpace(stones[1], [0, x, z]),
  radius: 0.2,
  outward: stones[1].out,
});

test("beads that reach into a stone's hollow are left out, with their number told", () => {
  const warnings: unknown[] = [];
  const how = { tolerance: 0.01, warn: (warning: unknown) => warnings.push(warning) };
  const beads = [beadAt(0.9), beadAt(1.01), beadAt(1.03), beadAt(0.5, -1.5), beadAt(2)];
  expect(keepBeadsClear(beads, stones, how)).toEqual(beads.slice(2));
  expect(warnings).toMatchObject([{ code: "beads-cleared", value: 2, path: "stones" }]);
});

test("nothing is told where no bead is near", () => {
  const how = { tolerance: 0.01, warn: () => expect.unreachable() };
  expect(keepBeadsClear([beadAt(2)], stones, how).length).toBe(1);
  expect(keepBeadsClear([beadAt(0)], [], how).length).toBe(1);
});
