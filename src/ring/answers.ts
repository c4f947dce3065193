/**
 * What a ring is asked for: every answer with its type, and the options that it may depend on.
 */
import type { ImageRegions } from "../art/image/load-images.js";
import type { Picture as Image } from "../art/image/read-picture.js";
import type { SvgName } from "../art/shapes/svg-names.js";
import type { Drawing } from "../art/svg/drawing.js";
import type { FontUse } from "../art/text/load-fonts.js";
import type { Typeface } from "../art/text/typeface.js";
import type { Band } from "../band/band.js";
import type { Fit } from "../band/fit/fit.js";
import type { FitPattern } from "../band/fit/fit-band.js";
import type { StretchReport } from "../band/surface/stretch.js";
import type { BandSurface } from "../band/surface/surface.js";
import type { FileSource } from "../base/files.js";
import type { PlacedRuns } from "../beads/place-runs.js";
import type { RailFoot } from "../beads/seat-edge.js";
import type { SpruedRing, SprueReport } from "../casting/add-sprue.js";
import type { CastingAllowance } from "../casting/allowances/allowance.js";
import type { Allowances } from "../casting/allowances/columns.js";
import type { PieceTime } from "../casting/piece.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import type { PrintSettings } from "../design/print-settings.js";
import type { RuleSet } from "../design/rules/rule-set.js";
import type { Design } from "../design/schema.js";
import type { Judgement } from "../judge/castability/judge.js";
import type { CrossingCheck } from "../judge/check-crossings.js";
import type { Decimation } from "../judge/decimate-solid.js";
import type { UnrolledBand } from "../judge/details/unrolled-band.js";
import type { SolidCheck } from "../judge/gate.js";
import type { RingParts } from "../judge/parts/ring-parts.js";
import type { Compare, Proof } from "../judge/proof/prove.js";
import type { Marks } from "../marks/marks.js";
import type { Alloy } from "../measure/alloys/alloy.js";
import type { Look } from "../measure/alloys/look.js";
import type { Measure } from "../measure/measure.js";
import type { WeightTable } from "../measure/weights/weight-table.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Turned } from "../mesh/turned.js";
import type { DrawnTile, LaneTiles, TileQuestion } from "../output/drawing/drawn-tile.js";
import type { PictureOptions } from "../output/picture/options.js";
import type { Picture, Studio } from "../output/picture/picture.js";
import type { PrintFigures } from "../output/print/figures.js";
import type { Facts } from "../output/report/report.js";
import type { SheetPicture } from "../output/sheet/sheet.js";
import type { Pattern } from "../pattern/laid-out.js";
import type { TileRunList } from "../pattern/pattern.js";
import type { FlatBody } from "../relief/flat-body.js";
import type { ResolvedSize } from "../size/size.js";
import type { Detail } from "../solids/detail.js";
import type { Parts } from "../solids/parts.js";
import type { PlacedStones } from "../stones/place-stones.js";
import type { Kernel } from "../union/kernels/kernel.js";
import type { UnionResult } from "../union/union.js";
import type { FileContents } from "./steps/file-contents.js";

/** A piece as it is built: the design, with what its relief is lifted by beyond the design's heights, mm. */
export interface PieceDesign extends Design {
  readonly lift: number;
}

/** What an answer may depend on beside the design. */
export interface RingOptions {
  readonly files: FileSource;
  readonly kernel: Kernel;
  /** Most beads that are built. */
  readonly maxBeads: number;
  /** mm that the surface may be moved by to take fewer triangles. */
  readonly decimate: number;
  readonly detail: Detail;
  readonly piece: PieceTime;
  readonly print: Partial<PrintSettings>;
  /** Undefined: what the design says. */
  readonly rules: string | RuleSet | undefined;
  readonly tile: TileQuestion;
  readonly picture: Omit<PictureOptions, "marked">;
  /** Pixels; 0 for none. */
  readonly pictureWidth: number;
}

/** The united ring, decimated where that was asked for. */
export interface Thinned {
  readonly mesh: Mesh;
  readonly decimation: Decimation | undefined;
  readonly check: SolidCheck;
  /** The unit of which it was seen to be made, with its turned images; undefined where it is not. */
  readonly turned: Turned | undefined;
}

/** Every answer, in the order in which they are worked out. Lengths in mm, masses in g. */
export interface Answers {
  readonly deviation: number;
  readonly printSettings: PrintSettings;
  readonly size: ResolvedSize;
  readonly boreRadius: number;
  readonly fitPattern: FitPattern | undefined;
  readonly fit: Fit | undefined;
  /** Band width as built. */
  readonly width: number;
  readonly profile: Band;
  /** Whether tiles keep their size where the band tapers. */
  readonly keepsSize: boolean;
  readonly seat: SeatFacts;
  readonly fontUses: readonly FontUse[];
  readonly fontFiles: FileContents;
  readonly fonts: ReadonlyMap<string, Typeface>;
  readonly drawingUses: readonly SvgName[];
  readonly drawingFiles: FileContents;
  readonly drawings: ReadonlyMap<string, Drawing>;
  readonly imageUses: readonly ImageRegions[];
  readonly imageFiles: FileContents;
  readonly images: ReadonlyMap<string, Image>;
  readonly tileRuns: TileRunList;
  /** mm, of bodies. */
  readonly bodyTolerance: number;
  /** As drawn, before finishing's share is laid on. */
  readonly drawnPattern: Pattern;
  /** As the function of the name. */
  readonly coverStop: number | undefined;
  readonly filling: FlatBody | undefined;
  readonly pattern: Pattern;
  /** Whether something stands on the seat, which then must be smooth. */
  readonly seatCarries: boolean;
  readonly wrap: BandSurface;
  readonly marks: Marks;
  readonly beads: PlacedRuns;
  /** The pattern without its art, for stones that stand in its tiles; undefined where there are no stones. */
  readonly stoneTiles: PatternSpec | undefined;
  readonly stones: PlacedStones;
  readonly parts: Parts;
  readonly headroom: number | undefined;
  readonly prove: Compare;
  readonly ringParts: RingParts;
  readonly union: UnionResult<SolidCheck, Proof>;
  readonly asUnited: Thinned;
  readonly decimated: Thinned;
  readonly thinned: Thinned;
  readonly genus: number;
  readonly gate: SolidCheck & { readonly genus: number };
  /** The ring of this design, without any allowance. */
  readonly solid: Mesh;
  readonly uncrossed: CrossingCheck;
  readonly turned: Turned | undefined;
  readonly measure: Measure;
  /** Farthest point of the solid from the finger axis, mm. */
  readonly outermost: number;
  readonly notices: undefined;
  readonly stretch: StretchReport;
  readonly metal: Alloy;
  readonly facts: Facts;
  readonly rules: RuleSet;
  readonly judgement: Judgement;
  readonly unrolledBand: UnrolledBand;
  readonly tile: DrawnTile;
  readonly laneTiles: readonly LaneTiles[];
  readonly allowance: CastingAllowance;
  readonly patternMetal: Alloy;
  readonly allowances: Allowances;
  readonly weights: WeightTable;
  readonly sprued: SpruedRing | undefined;
  readonly sprue: SprueReport | null;
  readonly castPiece: Mesh;
  readonly masterPiece: Mesh;
  readonly piece: Mesh;
  /** What was seen of each of the pieces. */
  readonly castTurned: Turned | undefined;
  readonly masterTurned: Turned | undefined;
  readonly pieceTurned: Turned | undefined;
  readonly printed: Mesh;
  readonly printFigures: PrintFigures;
  readonly studio: Studio;
  readonly look: Look;
  readonly picture: Picture;
  readonly sheetPictures: readonly SheetPicture[];
}

/** What the flat pattern depends on of the band. */
export interface SeatFacts {
  readonly seatLength: number;
  /** There on a band that has rails: how they rise from the seat, at the top of the ring. */
  readonly rails: RailFoot | undefined;
  /** As `seatLengths` where tiles keep their size on a band that tapers, else undefined. */
  readonly lengths: readonly number[] | undefined;
}

/** Some answers, handed to a stage. */
export type From<Name extends keyof Answers> = Pick<Answers, Name>;

/** Some fields of the design, handed to a stage. */
export interface OfDesign<Field extends keyof PieceDesign> {
  readonly design: Pick<PieceDesign, Field>;
}

/** Some options, handed to a stage. */
export interface OfOption<Name extends keyof RingOptions> {
  readonly option: Pick<RingOptions, Name>;
}
