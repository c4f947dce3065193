/**
 * The mesh as plain arrays with normals, as every viewer takes them.
 */
import { numberFrom, type OptionRules, requireOptions } from "../../base/options.js";
import type { Mesh } from "../../mesh/mesh.js";
import { type Buffers, creasedNormals, DEFAULT_CREASE } from "../../mesh/normals.js";
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
  return creasedNormals(mesh, options.crease ?? SHADING_DEFAULTS.crease);
}
