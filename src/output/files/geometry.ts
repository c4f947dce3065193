/**
 * The mesh as a geometry of three, for viewers.
 */
import { BufferAttribute, BufferGeometry } from "three";
import { numberFrom, type OptionRules, requireOptions } from "../../base/options.js";
import type { Mesh } from "../../mesh/mesh.js";
import { creasedNormals, DEFAULT_CREASE } from "../../mesh/normals.js";
import { requireSound } from "../../mesh/sound.js";

export type { BufferGeometry } from "three";

/** How a geometry is shaded. */
export interface GeometryOptions {
  /**
   * Edges where the surface turns by more than this are drawn sharp, radians, 0 to π. 0 shades flat. Default
   * `DEFAULT_CREASE`, 30°.
   */
  readonly crease?: number;
}

const RULES: OptionRules<GeometryOptions> = { crease: numberFrom(0, Math.PI, "radians") };

const GEOMETRY_DEFAULTS = { crease: DEFAULT_CREASE } as const;

/**
 * An indexed geometry with float32 positions in mm and normals. Vertices are split at creases.
 *
 * @throws AnnuletError `mesh-malformed`; as `requireOptions`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const geometry = toBufferGeometry(mesh); // for a three Mesh
 */
export function toBufferGeometry(mesh: Mesh, options: GeometryOptions = {}): BufferGeometry {
  requireOptions(options, RULES);
  requireSound(mesh);
  const shaded = creasedNormals(mesh, options.crease ?? GEOMETRY_DEFAULTS.crease);
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(shaded.positions), 3));
  geometry.setAttribute("normal", new BufferAttribute(new Float32Array(shaded.normals), 3));
  geometry.setIndex(new BufferAttribute(shaded.triangles, 1));
  return geometry;
}
