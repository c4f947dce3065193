import { describe, expect, it } from "vitest";
import type { Point3 } from "../../../src/base/math/point.js";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { transformMesh } from "../../../src/mesh/transform.js";
import { KeptSums } from "../../../src/union/kernels/kept-sums.js";
import { manifoldKernel } from "../../../src/union/kernels/manifold.js";
import { box, sphere } from "../../support/meshes.js";

const copyOf = ({ positions, triangles }: Mesh): Mesh => ({
  positions: positions.slice(),
  triangles: triangles.slice(),
});

const ball = (radius: number, [x, y, z]: Point3): Mesh =>
  transformMesh(sphere(radius, 8, 12), [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, y, z, 1]);

class Solid {
  deleted = 0;
  delete(): void {
    this.deleted++;
  }
}

describe("KeptSums", () => {
  const [a, b, c, d] = [0, 1, 2, 3].map(() => box([1, 1, 1]));

  it("hands out the sum of as many first parts as it has, once", () => {
    const kept = new KeptSums<Solid>(100);
    const [one, two] = [new Solid(), new Solid()];
    kept.keep([a], one, 12);
    kept.keep([a, b], two, 24);
    expect(kept.take([a, d])).toEqual({ count: 1, solid: one });
    expect(kept.take([a, b, d])).toEqual({ count: 2, solid: two });
    expect(kept.take([a, b, d])).toBeUndefined();
    kept.keep([a, b], two, 24);
    expect(kept.take([a, b])).toEqual({ count: 2, solid: two });
    expect([one.deleted, two.deleted]).toEqual([0, 0]);
  });

  it("takes no part for another that only looks like it, nor in another order", () => {
    const kept = new KeptSums<Solid>(100);
    kept.keep([a, b], new Solid(), 24);
    expect(kept.take([copyOf(a), b, c])).toBeUndefined();
    expect(kept.take([b, a, c])).toBeUndefined();
    expect(kept.take([a, c, b])).toBeUndefined();
  });

  it("deletes the oldest for newer ones, what is replaced, and what is too large", () => {
    const kept = new KeptSums<Solid>(100);
    const solids = [0, 1, 2, 3, 4].map(() => new Solid());
    kept.keep([a], solids[0], 40);
    kept.keep([a, b], solids[1], 40);
    kept.keep([a, c], solids[2], 40);
    expect(kept.size).toEqual({ solids: 2, triangles: 80 });
    kept.keep([a, c], solids[3], 30);
    expect(kept.size).toEqual({ solids: 2, triangles: 70 });
    kept.keep([d], solids[4], 101);
    expect(solids.map(({ deleted }) => deleted)).toEqual([1, 0, 1, 0, 1]);
    expect(kept.size).toEqual({ solids: 2, triangles: 70 });
  });
});

describe("the manifold kernel", () => {
  const parts = [box([2, 2, 2]), box([2, 2, 2], [1, 1, 1]), ball(0.7, [-1, 0, 0.1]), ball(0.6, [1, 0.2, 1.3])];
  const other = ball(0.8, [0.4, -1, 0.3]);

  it("makes the same of parts, the first of which it united before, as of parts that it never saw", async () => {
    await manifoldKernel.union(parts);
    const changed: readonly (readonly Mesh[])[] = [
      [...parts.slice(0, 3), other],
      [...parts.slice(0, 2), other, parts[3]],
      [parts[0], other, ...parts.slice(2)],
      [...parts, other],
      parts,
      [parts[1], parts[0], other],
    ];
    for (const list of changed) {
      expect(await manifoldKernel.union(list)).toEqual(await manifoldKernel.union(list.map(copyOf)));
    }
  });

  it("unites the same parts twice at one time", async () => {
    const lists = [parts, [...parts.slice(0, 3), other], parts];
    const alone = [];
    for (const list of lists) alone.push(await manifoldKernel.union(list.map(copyOf)));
    expect(await Promise.all(lists.map((list) => manifoldKernel.union(list)))).toEqual(alone);
  });

  it("goes on soundly after a union that was stopped half way", async () => {
    const stop = new AbortController();
    const list = parts.map(copyOf);
    const run = manifoldKernel.union(list, stop.signal);
    setTimeout(() => stop.abort(new Error("enough")), 0);
    await run.catch(() => undefined);
    expect(await manifoldKernel.union(list)).toEqual(await manifoldKernel.union(parts.map(copyOf)));
  });
});
