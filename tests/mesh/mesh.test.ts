import { expect, it } from "vitest";
import { concatMeshes, triangleCount, vertexCount } from "../../src/mesh/mesh.js";
import { box, meshOf } from "../support/meshes.js";

it("counts threes", () => {
  expect([vertexCount(box()), triangleCount(box())]).toEqual([8, 12]);
  expect([vertexCount(meshOf([], [])), triangleCount(meshOf([], []))]).toEqual([0, 0]);
});

it("lays meshes side by side, each with its own corners, and merges nothing", () => {
  const bodies = [box(), meshOf([], []), box([2, 2, 2]), meshOf([[7, 8, 9]], [[0, 0, 0]])];
  const all = concatMeshes(bodies);
  expect([vertexCount(all), triangleCount(all)]).toEqual([17, 25]);
  const corners = (mesh: ReturnType<typeof box>) =>
    [...mesh.triangles].map((vertex) => [...mesh.positions.subarray(3 * vertex, 3 * vertex + 3)]);
  expect(corners(all)).toEqual(bodies.flatMap(corners));
  expect(concatMeshes([])).toEqual(meshOf([], []));
});
