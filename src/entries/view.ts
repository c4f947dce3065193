/**
 * `annulet/view`: a built ring as objects of three, for the scene of any app: metal, stones, a cut, dimension lines, findings.
 * three is the app's own; its types are those of `@types/three`.
 */

export type { Look } from "../measure/alloys/look.js";
export type { Buffers } from "../mesh/normals.js";
export type { Finish } from "../output/picture/options.js";
export type { FlatStone, StoneBodyInView, StoneInView, StonesInView } from "../output/stones/stones-in-view.js";
export { type Dimension, makeDimensionLine } from "../view/dimension-line.js";
export { FindingMarks, type PlacedFinding } from "../view/finding-marks.js";
export type { HatchColours } from "../view/hatch.js";
export type { Drawn, Pen } from "../view/label.js";
export { lookOf } from "../view/look-of.js";
export { cornersOf, type Kept, meetRay, type Ray, type RayHit } from "../view/meet-ray.js";
export { PartMarks } from "../view/part-marks.js";
export {
  DimensionLines,
  dimensionsOf,
  type RingSizes,
  type WriteLength,
  writeLength,
} from "../view/ring-dimensions.js";
export { type Dress, RingMetal } from "../view/ring-metal.js";
export {
  type DrawnStone,
  type DrawnStoneBody,
  RingStones,
  type StoneHit,
  type StonesToDraw,
} from "../view/ring-stones.js";
export { SectionCut } from "../view/section-cut.js";
export { studioTexture } from "../view/studio-texture.js";
