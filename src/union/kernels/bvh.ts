/**
 * The pure JavaScript kernel: three-bvh-csg, for places where WebAssembly is not allowed.
 *
 * It is used with its CDT splitter, which splits both sides of a cut alike, and its result is welded; even so it may
 * leave open edges, so whoever uses it checks the result.
 */
import { Box3, BoxGeometry, BufferAttribute, BufferGeometry, Matrix4, Quaternion, Vector3 } from "three";
// The package's main entry is a UMD bundle; its source is the ES module.
import type { Brush, CSGOperation } from "three-bvh-csg/src/index.js";
import { pause } from "../../base/pause.js";
import type { Mesh } from "../../mesh/mesh.js";
import { weldMesh } from "../../mesh/weld.js";
import type { Kernel } from "./kernel.js";

/** Points of a cut's two sides differ by less than this, mm; measured, see DEVELOPERS.md. */
const WELD_REACH = 2e-3;

type Library = typeof import("three-bvh-csg/src/index.js");

/**
 * The boolean kernel in plain JavaScript, for places where WebAssembly is not allowed. Slower, and closes less often.
 *
 * @example
 * const { report } = await build(document, { kernel: bvhKernel, detail: "draft" });
 * console.log(report.kernel); // the kernel whose result is taken: manifold where bvh's does not close
 */
export const bvhKernel: Kernel = {
  name: "bvh",
  async union([first, ...others], signal) {
    const library = await load();
    let sum = first;
    for (const other of others) {
      await pause();
      signal?.throwIfAborted();
      sum = evaluate(library, sum, other, library.ADDITION);
    }
    return sum;
  },
  async subtract(body, tool) {
    const library = await load();
    return evaluate(library, body, tool, library.SUBTRACTION);
  },
  async cut(body, { normal, offset }) {
    const library = await load();
    return evaluate(library, body, halfSpaceBox(body, normal, offset), library.INTERSECTION);
  },
};

/** Loaded when it is first asked for: most builds never are. */
function load(): Promise<Library> {
  return import("three-bvh-csg/src/index.js");
}

function evaluate(library: Library, a: Mesh, b: Mesh, operation: CSGOperation): Mesh {
  const evaluator = Object.assign(new library.Evaluator(), { useCDTClipping: true, useGroups: false });
  evaluator.attributes = ["position"];
  const [left, right] = [toBrush(library, a), toBrush(library, b)];
  const result = evaluator.evaluate(left, right, operation);
  const mesh = fromGeometry(result.geometry);
  for (const brush of [left, right, result]) {
    brush.disposeCacheData();
    brush.geometry.dispose();
  }
  return mesh;
}

function toBrush(library: Library, mesh: Mesh): Brush {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(Float32Array.from(mesh.positions), 3));
  geometry.setIndex(new BufferAttribute(mesh.triangles.slice(), 1));
  const brush = new library.Brush(geometry);
  brush.updateMatrixWorld();
  return brush;
}

function fromGeometry(geometry: BufferGeometry): Mesh {
  const flat = geometry.index === null ? geometry : geometry.toNonIndexed();
  const { start, count } = flat.drawRange;
  const points = flat.getAttribute("position");
  const used = Math.min(points.count - start, count);
  const positions = new Float64Array(3 * used);
  for (let i = 0; i < used; i++)
    positions.set([points.getX(start + i), points.getY(start + i), points.getZ(start + i)], 3 * i);
  const triangles = Uint32Array.from({ length: used }, (_, i) => i);
  return weldMesh({ positions, triangles }, { tolerance: WELD_REACH });
}

/**
 * How far the half space's box is moved along its plane, as shares of its size: no line of the box may run through the
 * axis or along a plane of symmetry, where the body's own edges lie.
 */
const ASIDE = [0.0713, 0.1371] as const;

/** A box that fills the half space as far as the body reaches. */
function halfSpaceBox(body: Mesh, normal: readonly [number, number, number], offset: number): Mesh {
  const bounds = new Box3().setFromArray(body.positions);
  const size = 4 * bounds.getSize(new Vector3()).length() + 4 * bounds.getCenter(new Vector3()).length();
  const axis = new Vector3(...normal);
  const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 0, 1), axis);
  const box = new BoxGeometry(size, size, size).applyMatrix4(
    new Matrix4().compose(
      new Vector3(ASIDE[0] * size, ASIDE[1] * size, offset - size / 2).applyQuaternion(turn),
      turn,
      new Vector3(1, 1, 1),
    ),
  );
  return fromGeometry(box);
}
