/** annulet's public names. */

export type { Fit, FitCandidate, LaneFit } from "./band/fit/fit.js";
export type { Ledge, Rails } from "./band/profile/outline.js";
export { buildProfile, type Profile } from "./band/profile/profile.js";
export type { Develop } from "./band/surface/develop.js";
export { type RevolvedOptions, revolvedSurface } from "./band/surface/revolved.js";
export type { StretchRange, StretchReport } from "./band/surface/stretch.js";
export type { BandSurface, LocalStretch, SurfaceLine } from "./band/surface/surface.js";
export type { Certainty } from "./base/certainty.js";
export type { PlainError } from "./base/errors/plain-error.js";
export {
  AnnuletError,
  type AnnuletErrorOptions,
  type Problem,
  type ProblemCode,
  type Warn,
  type Warning,
} from "./base/errors.js";
export type { FileContent, FileSource } from "./base/files.js";
export type { FriezeGroup, TileOperation } from "./base/frieze/symmetry.js";
export type { Limits } from "./base/limits.js";
export type { Arc, Line, Segment } from "./base/math/curve.js";
export type { HalfSpace } from "./base/math/half-space.js";
export type { Point2, Point3 } from "./base/math/point.js";
export type { Phase, Timings } from "./base/phases.js";
export type { WasmPlace, WasmPlaces } from "./base/wasm-places.js";
export type { BeadChoice, BeadRunReport } from "./beads/bead-report.js";
export type { SprueReport } from "./casting/add-sprue.js";
export type { AxisScale, Finishing } from "./casting/allowances/allowance.js";
export type { AllowanceColumn, Allowances, PieceSizes } from "./casting/allowances/columns.js";
export type { PieceTime } from "./casting/piece.js";
export type { CastingSpec, FinishingSpec, Shrinkage } from "./design/casting-spec.js";
export type {
  EdgeInput,
  EndsInput,
  MaterialName,
  MedallionInput,
  MotifInput,
  MotifName,
  PlaceInput,
  RegionInput,
  RibbonInput,
  SectionInput,
  ShapeInput,
  ShrinkageInput,
  TakeInput,
  TextureInput,
} from "./design/design-input.js";
export { designJsonSchema, type JsonSchema } from "./design/json-schema.js";
export type { MotifAspects, MotifRibbon } from "./design/motifs/facts.js";
export { listMotifs, type MotifEntry, type MotifParameterEntry } from "./design/motifs/list.js";
export type { MotifSpec } from "./design/motifs/motif.js";
export type { PrintSettings, PrintStance } from "./design/print-settings.js";
export type { ProfileSpec } from "./design/profile/profile.js";
export { readDesign } from "./design/read.js";
export { explainField } from "./design/reference/explain-field.js";
export type { FieldLine, FieldReference, FormReference } from "./design/reference/field-reference.js";
export { ruleSets } from "./design/rules/catalogue.js";
export type { RuleLimit, RuleName, RuleSet, Severity } from "./design/rules/rule-set.js";
export type { Design, DesignInput } from "./design/schema.js";
export type { FormCheck } from "./judge/check-form.js";
export type { Decimation } from "./judge/decimate-solid.js";
export type { UnrolledBand } from "./judge/details/unrolled-band.js";
export type { Fault, FaultCode } from "./judge/faults.js";
export type { Finding, FindingPlace, RuleResult } from "./judge/finding.js";
export { checkSolid, type SolidCheck, type SolidOptions } from "./judge/gate.js";
export type { RingPart, SurfacePlace } from "./judge/parts/ring-parts.js";
export type { ProofFigure } from "./judge/proof/prove.js";
export { checkWalls, type Wall, type WallCheck, type WallOptions } from "./judge/walls.js";
export type { MarkReport } from "./marks/mark-report.js";
export type { Alloy } from "./measure/alloys/alloy.js";
export { alloys } from "./measure/alloys/catalogue.js";
export type { Look } from "./measure/alloys/look.js";
export { type OwnAlloy, ownAlloy } from "./measure/alloys/own.js";
export { type Bore, type BoreOptions, findBore } from "./measure/bore/bore.js";
export { massOf } from "./measure/mass.js";
export { type Measure, measureMesh } from "./measure/measure.js";
export type { PieceVolumes, WeightOptions, WeightRow, WeightTable } from "./measure/weights/weight-table.js";
export type { Bounds } from "./mesh/bounds.js";
export { type Decimated, type DecimateOptions, decimate } from "./mesh/decimate.js";
export type { Mesh } from "./mesh/mesh.js";
export type { Buffers } from "./mesh/normals.js";
export type { DrawnTile, FlatBead, FlatRegion, FlatTile, TilePart, TileQuestion } from "./output/drawing/drawn-tile.js";
export { drawTile, type TileDrawingOptions } from "./output/drawing/tile-drawing.js";
export { type ShadingOptions, toBuffers } from "./output/files/buffers.js";
export { formatForFile, formats } from "./output/files/catalogue.js";
export type { FileGem, FileStone } from "./output/files/file-stone.js";
export { type Chunks, type EncodeOptions, encodeMesh, type FileMaterial, type Format } from "./output/files/format.js";
export { readMesh } from "./output/files/read-mesh.js";
export type { LookAt } from "./output/picture/aim.js";
export type { Stance, View } from "./output/picture/camera.js";
export type { Finish, PictureGround, PictureOptions } from "./output/picture/options.js";
export { openStudio, type Picture, type Studio, takePicture } from "./output/picture/picture.js";
export { encodePng } from "./output/picture/png.js";
export { turntable, type ViewName, views } from "./output/picture/views.js";
export type { PrintFigures, UndersideFigures } from "./output/print/figures.js";
export { layDown } from "./output/print/lay-down.js";
export {
  findUndersides,
  type UndersideOptions,
  type UndersidePlace,
  type Undersides,
} from "./output/print/undersides.js";
export type { BandSizes, PlaceSizes } from "./output/report/band-sizes.js";
export { type Caution, cautions } from "./output/report/cautions.js";
export type { FitReport, ProofReport, Report, ReportedFile } from "./output/report/report.js";
export { reportJsonSchema } from "./output/report/report-json-schema.js";
export type { FlatStone, StoneBodyInView, StoneInView, StonesInView } from "./output/stones/stones-in-view.js";
export type { FlatRings } from "./relief/tile-outlines.js";
export type { Asker, OnStage } from "./ring/asker.js";
export { type BenchSheetOptions, benchSheet } from "./ring/bench-sheet.js";
export { type BuildOptions, type BuildResult, build } from "./ring/build.js";
export { type CheckDesignOptions, checkDesign } from "./ring/check-design.js";
export { type FitDesignOptions, fitDesign } from "./ring/fit-design.js";
export { type FlatTileOptions, flatTile } from "./ring/flat-tile.js";
export {
  type Asking,
  type DesignCheck,
  type Made,
  openRing,
  type PieceAsking,
  type PrintAsking,
  type Ring,
  type RingSetup,
  type SheetQuestion,
} from "./ring/open-ring.js";
export type { Piece } from "./ring/plan.js";
export { type PlanBeadsOptions, planBeads } from "./ring/plan-beads.js";
export type { Progress } from "./ring/progress.js";
export type { BenchSheet } from "./ring/steps/put-sheet.js";
export type { RingStones } from "./ring/stone-plan.js";
export type { SizeSystemOptions } from "./size/catalogue.js";
export { sizeSystems } from "./size/catalogue.js";
export type { ChartEntry } from "./size/interpolation.js";
export type { PublishedChart } from "./size/published-chart.js";
export { type Scale, scaleSystem } from "./size/scale.js";
export { type ResolvedSize, resolveSize, type SizeSpec } from "./size/size.js";
export type { SizeSystem } from "./size/size-system.js";
export { type SizeRow, sizeTable } from "./size/size-table.js";
export type { SizeSystemName } from "./size/system-names.js";
export type { Detail, DetailLevel } from "./solids/detail.js";
export type { StoneOrder } from "./stones/order-stones.js";
export type {
  StoneChoice,
  StoneGroupReport,
  StoneRowReport,
  StoneSizeReport,
  StonesReport,
  StoneTotals,
} from "./stones/stone-report.js";
export { bvhKernel } from "./union/kernels/bvh.js";
export type { KernelName } from "./union/kernels/catalogue.js";
export type { Kernel } from "./union/kernels/kernel.js";
export { manifoldKernel } from "./union/kernels/manifold.js";
