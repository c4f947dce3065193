import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FriezeGroup, friezeGroups, type TileOperation } from "../../../src/base/frieze/symmetry.js";
import { symmetryElements } from "../../../src/base/frieze/symmetry-elements.js";

const SEED = 20261125;

const apply = ({ flipX, flipY, shift }: TileOperation, [x, y]: readonly [number, number]): [number, number] => [
  (flipX ? -x : x) + shift,
  flipY ? -y : y,
];
const whole = (x: number) => Math.abs(x - Math.round(x)) < 1e-12;

describe("elements of the frieze groups", () => {
  // International Tables for Crystallography, vol. E: what each group's symbol names.
  it.each([
    ["p1", [], "none", []],
    ["p11g", [], "glide", []],
    ["p1m1", [0, 0.5], "none", []],
    ["p2", [], "none", [0, 0.5]],
    ["p11m", [], "mirror", []],
    ["p2mg", [0, 0.5], "glide", [0.25, 0.75]],
    ["p2mm", [0, 0.5], "mirror", [0, 0.5]],
  ])("%s", (name, mirrors, middle, centres) => {
    const group = friezeGroups.find((one) => one.name === name) as FriezeGroup;
    expect(symmetryElements(group)).toMatchObject({ mirrors, middle, centres });
  });

  it.each(friezeGroups.map((group) => [group.name, group] as const))(
    "%s: are what its operations leave alone",
    (_, g) => {
      const { mirrors, centres } = symmetryElements(g);
      const group: FriezeGroup = g;
      for (const x of mirrors) {
        const operation = group.operations.find(({ flipX, flipY }) => flipX && !flipY) as TileOperation;
        expect(whole(apply(operation, [x, 0.2])[0] - x)).toBe(true);
      }
      for (const x of centres) {
        const operation = group.operations.find(({ flipX, flipY }) => flipX && flipY) as TileOperation;
        expect(whole(apply(operation, [x, 0])[0] - x)).toBe(true);
      }
    },
  );

  it.each(friezeGroups.map((group) => [group.name, group] as const))(
    "%s: images of the fundamental region cover every place once",
    (_, g) => {
      const group: FriezeGroup = g;
      const { region } = symmetryElements(group);
      const inRegion = ([x, y]: readonly [number, number]) => {
        const turned = x - Math.floor(x);
        return turned > region.x[0] && turned < region.x[1] && y > region.y[0] && y < region.y[1];
      };
      fc.assert(
        fc.property(
          fc.double({ min: 0.001, max: 0.249, noNaN: true }),
          fc.integer({ min: 0, max: 3 }),
          fc.double({ min: 0.001, max: 0.499, noNaN: true }),
          fc.boolean(),
          (offset, quarter, height, below) => {
            const place = [quarter / 4 + offset, below ? -height : height] as const;
            return group.operations.filter((operation) => inRegion(apply(operation, place))).length === 1;
          },
        ),
        { seed: SEED },
      );
      const area = (region.x[1] - region.x[0]) * (region.y[1] - region.y[0]);
      expect(area).toBe(1 / group.operations.length);
    },
  );
});
