/**
 * A shape as the document gives it: an expression whose leaves are drawings and whose nodes combine or copy them.
 */
import type { DifferenceShape } from "./difference.js";
import type { GlideShape } from "./glide.js";
import type { IntersectionShape } from "./intersection.js";
import type { LatticeShape } from "./lattice.js";
import type { MirrorShape } from "./mirror.js";
import type { MotifShape } from "./motif-leaf.js";
import type { NamedShape } from "./named.js";
import type { OffsetShape } from "./offset.js";
import type { PathShape } from "./path-leaf.js";
import type { SvgShape } from "./svg-leaf.js";
import type { TrimShape } from "./trim.js";
import type { TurnsShape } from "./turns.js";
import type { UnionShape } from "./union.js";

export type ShapeSpec =
  | PathShape
  | SvgShape
  | MotifShape
  | NamedShape
  | UnionShape<ShapeSpec>
  | IntersectionShape<ShapeSpec>
  | DifferenceShape<ShapeSpec>
  | OffsetShape<ShapeSpec>
  | TrimShape<ShapeSpec>
  | TurnsShape<ShapeSpec>
  | MirrorShape<ShapeSpec>
  | GlideShape<ShapeSpec>
  | LatticeShape<ShapeSpec>;
