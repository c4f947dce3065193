/**
 * The kernel interface: what annulet asks of a boolean library, mesh in, mesh out.
 */
import type { HalfSpace } from "../../base/math/half-space.js";
import type { Mesh } from "../../mesh/mesh.js";

/** A boolean library. Any value of this shape will do; the built-in ones have no privilege. */
export interface Kernel {
  /** Short name, told in reports. */
  readonly name: string;
  /**
   * The union of closed parts; a part may be several shells that do not touch. May stop at the signal, with its reason, and
   * may call `onPart` for each part that is in, so that progress can be told.
   */
  readonly union: (parts: readonly Mesh[], signal?: AbortSignal, onPart?: () => void) => Promise<Mesh>;
  /** What is in `body` and not in `tool`. May stop at the signal, as all may. */
  readonly subtract: (body: Mesh, tool: Mesh, signal?: AbortSignal) => Promise<Mesh>;
  /** What of `body` lies in the half space, closed by a cap on its plane. */
  readonly cut: (body: Mesh, keep: HalfSpace, signal?: AbortSignal) => Promise<Mesh>;
}
