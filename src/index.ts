/** annulet's public names. */

export type { SprueReport } from "./add-sprue.js";
export type { PieceTime } from "./apply-casting.js";
export { BENCH_SHEET_DEFAULTS, type BenchSheet, type BenchSheetOptions, benchSheet } from "./bench-sheet.js";
export { BUILD_DEFAULTS, type BuildOptions, type BuildResult, build } from "./build.js";
export { type CheckDesignOptions, checkDesign, type DesignCheck } from "./check-design.js";
export type { Decimation } from "./checks/decimate-solid.js";
export type { Fault, FaultCode } from "./checks/faults.js";
export type { Finding, FindingPlace, RuleResult } from "./checks/finding.js";
export { checkForm, type FormCheck } from "./checks/form.js";
export { assertSolid, checkSolid, describeFault, type SolidCheck, type SolidOptions } from "./checks/gate.js";
export { findRuleSet, ruleSets } from "./checks/rules/catalogue.js";
export type { RuleLimit, RuleName, RuleSet, Severity } from "./checks/rules/rule-set.js";
export { checkWalls, type Wall, type WallCheck, type WallOptions } from "./checks/walls.js";
export { designJsonSchema } from "./design/json-schema.js";
export { materialsOf } from "./design/materials.js";
export { readDesign } from "./design/read.js";
export { type Design, type DesignInput, designSchema } from "./design/schema.js";
export {
  AnnuletError,
  type AnnuletErrorOptions,
  describeProblem,
  type Problem,
  type Warn,
  type Warning,
} from "./errors.js";
export { formatForFile, formats } from "./export/catalogue.js";
export { type Chunks, type EncodeOptions, encodeMesh, type FileMaterial, type Format } from "./export/format.js";
export { type GeometryOptions, toBufferGeometry } from "./export/geometry.js";
export { readableEndings, readMesh, requireReadable } from "./export/read.js";
export type { FileSource } from "./files.js";
export { type FitDesignOptions, fitDesign } from "./fit-design.js";
export {
  type FlatBead,
  type FlatRegion,
  type FlatTile,
  type FlatTileOptions,
  flatTile,
  type TilePart,
} from "./flat-tile.js";
export type { HalfSpace } from "./math/half-space.js";
export {
  type AxisScale,
  type CastingAllowance,
  type CastingSpec,
  castingAllowance,
  type Finishing,
  type Shrinkage,
  scaleAgainst,
} from "./measure/allowances/allowance.js";
export type { AllowanceColumn, Allowances, PieceSizes } from "./measure/allowances/columns.js";
export type { Alloy, Certainty } from "./measure/alloys/alloy.js";
export { alloys, findAlloy } from "./measure/alloys/catalogue.js";
export { type Look, lookOf } from "./measure/alloys/look.js";
export { type MixPart, mixDensity } from "./measure/alloys/mix.js";
export { type OwnAlloy, ownAlloy } from "./measure/alloys/own.js";
export { metalFromWax } from "./measure/alloys/wax-to-metal.js";
export { type Bore, type BoreOptions, findBore } from "./measure/bore/bore.js";
export { massOf, toPennyweights, toTroyOunces } from "./measure/mass.js";
export { type Measure, measureMesh, surfaceArea } from "./measure/measure.js";
export {
  type PieceVolumes,
  type WeightOptions,
  type WeightRow,
  type WeightTable,
  weighPiece,
} from "./measure/weights/weight-table.js";
export { type Bounds, meshBounds } from "./mesh/bounds.js";
export { type Decimated, type DecimateOptions, decimate } from "./mesh/decimate.js";
export { concatMeshes, type Mesh, triangleCount, vertexCount } from "./mesh/mesh.js";
export { reverseMesh, transformMesh } from "./mesh/transform.js";
export { type WeldOptions, weldMesh } from "./mesh/weld.js";
export type { Fit, FitCandidate, LaneFit } from "./pattern/fit.js";
export { listMotifs, type MotifEntry, type MotifParameterEntry } from "./pattern/motifs/list.js";
export type { MotifAspects, MotifRibbon } from "./pattern/motifs/motif.js";
export { type SampleOptions, sampleDesign } from "./pattern/motifs/sample.js";
export { type FriezeGroup, friezeGroups, type TileOperation } from "./pattern/symmetry.js";
export { type FundamentalRegion, type SymmetryElements, symmetryElements } from "./pattern/symmetry-elements.js";
export type { Stance, View } from "./picture/camera.js";
export { type Finish, PICTURE_DEFAULTS, type PictureGround, type PictureOptions } from "./picture/options.js";
export { openStudio, type Picture, takePicture } from "./picture/picture.js";
export { encodePng } from "./picture/png.js";
export { turntable, type ViewName, views } from "./picture/views.js";
export { type PlanBeadsOptions, planBeads } from "./plan-beads.js";
export { type PrintFigures, printFigures, type UndersideFigures } from "./print/figures.js";
export { layDown } from "./print/lay-down.js";
export {
  PRINT_DEFAULTS,
  PRINT_STANCES,
  type PrintSettings,
  type PrintStance,
  printSettings,
} from "./print/settings.js";
export { findUndersides, type UndersideOptions, type UndersidePlace, type Undersides } from "./print/undersides.js";
export { bandSurface, bandVolume } from "./profile/moments.js";
export { buildProfile, type Profile, type ProfileSpec } from "./profile/profile.js";
export { allowanceRows } from "./report/allowance-rows.js";
export { type Caution, cautions } from "./report/cautions.js";
export { drawFindings, type FindingsDrawing } from "./report/findings-drawing.js";
export { drawFriezeGroups } from "./report/frieze-drawing.js";
export { drawMotifs, type MotifSample } from "./report/motif-drawing.js";
export type { FitReport, Report } from "./report/report.js";
export { drawTile, type TileDrawingOptions } from "./report/tile-drawing.js";
export { findSizeSystem, sizeSystems } from "./sizing/catalogue.js";
export { type Scale, scaleSystem } from "./sizing/scale.js";
export { type ResolvedSize, resolveSize, type SizeSpec } from "./sizing/size.js";
export { sizeAdvice } from "./sizing/size-advice.js";
export type { SizeSystem } from "./sizing/size-system.js";
export { type SizeRow, sizeTable } from "./sizing/size-table.js";
export type { BeadChoice, BeadRunReport } from "./solids/bead-report.js";
export { type Detail, type DetailLevel, detailLevels } from "./solids/detail.js";
export type { Progress } from "./stages.js";
export { bvhKernel } from "./union/kernels/bvh.js";
export type { Kernel } from "./union/kernels/kernel.js";
export { manifoldKernel } from "./union/kernels/manifold.js";
export type { Develop } from "./wrap/develop.js";
export type { StretchRange, StretchReport } from "./wrap/stretch.js";
export { makeWrap, type Wrap, type WrapOptions } from "./wrap/wrap.js";
