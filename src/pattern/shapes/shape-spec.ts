/**
 * A shape as the document gives it: an expression whose leaves are drawings and whose nodes combine or copy them.
 */
import type { DifferenceShape } from "./difference.js";
import type { MotifShape } from "./motif-leaf.js";
import type { NamedShape } from "./named.js";
import type { PathShape } from "./path-leaf.js";
import type { TurnsShape } from "./turns.js";
import type { UnionShape } from "./union.js";

export type ShapeSpec = PathShape | MotifShape | NamedShape | UnionShape | DifferenceShape | TurnsShape;
