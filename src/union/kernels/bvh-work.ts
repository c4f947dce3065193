/**
 * What the pure JavaScript kernel does by three-bvh-csg: loaded, with three itself, where that kernel is first used.
 *
 * The library is used with its CDT splitter, which splits both sides of a cut alike, and its result is welded; even so it
 * may leave open edges, so whoever uses it checks the result.
 */
import { Box3, BoxGeometry, BufferAttribute, BufferGeometry, Matrix4, Quaternion, Vector3 } from "three";
// The package's main entry is a UMD bundle; its source is the ES module.
import { ADDITION, Brush, type CSGOperation, Evaluator, INTERSECTION, SUBTRACTION } from "three-bvh-csg/src/index.js";
import type { HalfSpace } from "../../base/math/half-space.js";
import type { Mesh } from "../../mesh/mesh.js";
import { weldMesh } from "../../mesh/weld.js";

/** Points of a cut's two sides differ by less than this, mm; measured, see DEVELOPERS.md. */
const WELD_REACH = 2e-3;

/** One step of a union. */
export function add(a: Mesh, b: Mesh): Mesh {
  return evaluate(a, b, ADDITION);
}

export function subtract(body: Mesh, tool: Mesh): Mesh {
  return evaluate(body, tool, SUBTRACTION);
}

/** What of a body lies in a half space. */
export function cut(body: Mesh, { normal, offset }: HalfSpace): Mesh {
  return evaluate(body, halfSpaceBox(body, normal, offset), INTERSECTION);
}

function evaluate(a: Mesh, b: Mesh, operation: CSGOperation): Mesh {
  const evaluator = Object.assign(new Evaluator(), { useCDTClipping: true, useGroups: false });
  evaluator.attributes = ["position"];
  const [left, right] = [toBrush(a), toBrush(b)];
  const result = evaluator.evaluate(left, right, operation);
  const mesh = fromGeometry(result.geometry);
  for (const brush of [left, right, result]) {
    brush.disposeCacheData();
    brush.geometry.dispose();
  }
  return mesh;
}

function toBrush(mesh: Mesh): Brush {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(Float32Array.from(mesh.positions), 3));
  geometry.setIndex(new BufferAttribute(mesh.triangles.slice(), 1));
  const brush = new Brush(geometry);
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
