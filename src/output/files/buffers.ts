/**
 * The mesh as plain arrays with normals, as every viewer takes them.
 */
import { numberFrom, type OptionRules, requireOptions } from "../../base/options.js";
import type { Mesh } from "../../mesh/mesh.js";
import { creasedNormals, DEFAULT_CREASE } from "../../mesh/normals.js";
import { requireSound } from "../../mesh/sound.js";

/** How a mesh is shaded. */
export interface ShadingOptions {
  /**
   * Edges where the surface turns by more than this are drawn sharp, radians, 0 to π. 0 shades flat. Default
   * `DEFAULT_CREASE`, 30°.
   */
  readonly crease?: number | undefined;
}

const RULES: OptionRules<ShadingOptions> = { crease: numberFrom(0, Math.PI, "radians") };

const SHADING_DEFAULTS = { crease: DEFAULT_CREASE } as const;

/** A mesh for a viewer. There are no texture coordinates. */
export interface Buffers {
  /** x, y, z of each vertex in turn, mm. */
  readonly positions: Float32Array;
  /** Unit normal of each vertex; x, y, z in turn. */
  readonly normals: Float32Array;
  /** Three vertices of each triangle, counter-clockwise seen from outside. */
  readonly triangles: Uint32Array;
}

/**
 * Positions in mm, normals and indices, as a viewer's buffers take them. Vertices are split at creases.
 *
 * @throws AnnuletError `mesh-malformed`; as `requireOptions`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const { positions, normals, triangles } = toBuffers(mesh); // three numbers a vertex; three indices a triangle
 */
export function toBuffers(mesh: Mesh, options: ShadingOptions = {}): Buffers {
  requireOptions(options, RULES);
  requireSound(mesh);
  const shaded = creasedNormals(mesh, options.crease ?? SHADING_DEFAULTS.crease);
  return {
    positions: new Float32Array(shaded.positions),
    normals: new Float32Array(shaded.normals),
    triangles: shaded.triangles,
  };
}
