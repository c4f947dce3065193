import { expect, it } from "vitest";
import { boundsCentre, meshBounds } from "../../src/mesh/bounds.js";
import { box, meshOf } from "../support/meshes.js";

it("is the box itself for a box, wherever it lies", () => {
  const bounds = meshBounds(box([1, 2, 3], [-5, 0.5, 7]));
  expect(bounds).toEqual({ min: [-5, 0.5, 7], max: [-4, 2.5, 10] });
  expect(boundsCentre(bounds)).toEqual([-4.5, 1.5, 8.5]);
});

it("passes over coordinates that are not finite, one by one", () => {
  const { min, max } = meshBounds(
    meshOf(
      [
        [Number.NaN, 1, 2],
        [3, Number.POSITIVE_INFINITY, -4],
      ],
      [],
    ),
  );
  expect([min, max]).toEqual([
    [3, 1, -4],
    [3, 1, 2],
  ]);
});

it("of nothing is empty, with its middle at the origin", () => {
  const bounds = meshBounds(meshOf([], []));
  expect(bounds.min[0]).toBe(Number.POSITIVE_INFINITY);
  expect(boundsCentre(bounds)).toEqual([0, 0, 0]);
});

it("has a finite middle however large it is", () => {
  const most = Number.MAX_VALUE;
  expect(boundsCentre({ min: [most / 2, 0, 0], max: [most, 0, 0] })[0]).toBe(most * 0.75);
});
