/**
 * Buffers as a geometry of three, the very arrays.
 */
import { BufferAttribute, BufferGeometry, Sphere, Vector3 } from "three";
import type { Buffers } from "../mesh/normals.js";

export function geometryOf({ positions, normals, triangles }: Buffers): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(positions, 3));
  geometry.setAttribute("normal", new BufferAttribute(normals, 3));
  geometry.setIndex(new BufferAttribute(triangles, 1));
  geometry.boundingSphere = ballAbout(positions);
  return geometry;
}

/** About the origin, where a ring's middle is: three's own search takes several times as long. */
function ballAbout(positions: Float32Array): Sphere {
  let square = 0;
  for (let i = 0; i < positions.length; i += 3) {
    const x = positions[i];
    const y = positions[i + 1];
    const z = positions[i + 2];
    square = Math.max(square, x * x + y * y + z * z);
  }
  return new Sphere(new Vector3(), Math.sqrt(square));
}
