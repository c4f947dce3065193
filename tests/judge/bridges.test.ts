import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import { geodesicSphere } from "../../src/beads/bead.js";
import { type Ball, findBridges } from "../../src/judge/bridges.js";
import { checkSolid } from "../../src/judge/gate.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { box } from "../support/meshes.js";

const REACH = 0.01;

const ballMesh = ({ centre: [x, y, z], radius: r }: Ball) =>
  transformMesh(geodesicSphere(REACH / r), [r, 0, 0, 0, 0, r, 0, 0, 0, 0, r, 0, x, y, z, 1]);

/** A block with a groove 0.6 wide and 1 deep along x at the middle of its top, y = 0, z = 0. */
const grooved = manifoldKernel.subtract(box([10, 6, 3], [-5, -3, -3]), box([12, 0.6, 2], [-6, -0.3, -1]));

async function withBalls(balls: readonly Ball[]) {
  const mesh = await manifoldKernel.union([await grooved, ...balls.map(ballMesh)]);
  return { genus: checkSolid(mesh).genus, found: findBridges(mesh, balls, REACH) };
}

const at = (x: number, y: number, z = 0, radius = 0.3): Ball => ({ centre: [x, y, z] as Point3, radius });

describe("bridges", () => {
  it("are not made by beads on one side of a groove", async () => {
    expect(await withBalls([at(-2, -0.8), at(0, 0.8), at(2, -0.8)])).toEqual({ genus: 0, found: [] });
  });

  it("are the beads that touch both sides: a handle each", async () => {
    const across = [at(-2, 0, 0, 0.5), at(2, 0, 0, 0.5)];
    const { genus, found } = await withBalls([at(-4, 1), across[0], at(0, -1), across[1]]);
    expect(genus).toBe(2);
    expect(found).toEqual(across);
  });

  it("are not made by a bead in a groove's corner", async () => {
    expect(await withBalls([at(0, -0.3)])).toEqual({ genus: 0, found: [] });
  });

  it("are one for two beads that meet over the groove", async () => {
    // Each leans out from its own side; they overlap in the middle.
    const pair = [at(0, -0.25, 0, 0.3), at(0, 0.25, 0, 0.3)];
    const { genus, found } = await withBalls(pair);
    expect(genus).toBe(1);
    expect(found.length).toBeGreaterThan(0);
    for (const ball of found) expect(pair).toContain(ball);
  });

  it("are none where there are no beads", async () => {
    expect(findBridges(await grooved, [], REACH)).toEqual([]);
  });
});
