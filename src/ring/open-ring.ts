/**
 * A ring that is opened once, answers by need and remembers; and after a change works out again only what the change
 * concerns.
 */
import type { Fit } from "../band/fit/fit.js";
import type { Profile } from "../band/profile/profile.js";
import type { Warning } from "../base/errors.js";
import type { FileSource } from "../base/files.js";
import type { Limits } from "../base/limits.js";
import type { Timings } from "../base/phases.js";
import type { WasmPlaces } from "../base/wasm-places.js";
import type { BeadRunReport } from "../beads/bead-report.js";
import { MAX_BEADS } from "../beads/place-runs.js";
import type { SprueReport } from "../casting/add-sprue.js";
import type { Allowances } from "../casting/allowances/columns.js";
import type { PieceTime } from "../casting/piece.js";
import { digestOf } from "../design/digest.js";
import type { PrintSettings } from "../design/print-settings.js";
import type { RuleSet } from "../design/rules/rule-set.js";
import type { Design } from "../design/schema.js";
import type { Judgement } from "../judge/castability/judge.js";
import type { UnrolledBand } from "../judge/details/unrolled-band.js";
import type { RingPart, SurfacePlace } from "../judge/parts/ring-parts.js";
import type { WeightTable } from "../measure/weights/weight-table.js";
import type { Mesh } from "../mesh/mesh.js";
import type { FlatTile, TileQuestion } from "../output/drawing/drawn-tile.js";
import type { FileStone } from "../output/files/file-stone.js";
import type { PictureOptions } from "../output/picture/options.js";
import type { Picture, Studio } from "../output/picture/picture.js";
import type { PrintFigures } from "../output/print/figures.js";
import { makeReport, type Report } from "../output/report/report.js";
import type { ResolvedSize } from "../size/size.js";
import type { Detail } from "../solids/detail.js";
import { reportStones, type StoneTotals } from "../stones/stone-report.js";
import type { KernelName } from "../union/kernels/catalogue.js";
import type { Kernel } from "../union/kernels/kernel.js";
import { manifoldKernel } from "../union/kernels/manifold.js";
import { AnswerStore } from "./answer-store.js";
import type { RingOptions } from "./answers.js";
import type { Asker, OnStage } from "./asker.js";
import { Engine } from "./engine.js";
import {
  type EngineSetup,
  orThrow,
  outcomeOf,
  readPicture,
  readQuestion,
  readTileQuestion,
} from "./options/questions.js";
import { pieceStones } from "./piece-stones.js";
import type { StageName } from "./stage.js";
import { type BenchSheet, putSheet } from "./steps/put-sheet.js";
import { type RingStones, ringStones } from "./stone-plan.js";
import type { Told } from "./walk.js";

/** What a ring is opened with beside its document. What is undefined counts as left out. */
export interface RingSetup {
  /**
   * The files that the design names, drawings, images and fonts: name → text or bytes, or a function that gives one.
   * Default none. Each is asked for once, when it is first needed; a ring that this one is changed into asks again.
   */
  readonly files?: FileSource | undefined;
  /**
   * Boolean library: a built-in one by its name, or your own. Default manifold. It is also the fallback where another
   * kernel's result does not close.
   */
  readonly kernel?: Kernel | KernelName | undefined;
  /**
   * Where the WebAssembly files of uniting and lettering are, as addresses or bytes, where they do not lie beside the
   * library. Each is loaded once a process. Default beside it.
   */
  readonly wasm?: WasmPlaces | undefined;
  /** Most beads that are built. Default 20 000. */
  readonly maxBeads?: number | undefined;
  /** How far the surface may lie from what was built, mm, 0 or more, so that it takes fewer triangles. Default 0. */
  readonly decimate?: number | undefined;
  /**
   * What each question may cost: seconds, triangles, corners. Beyond it the question rejects with AnnuletError `too-long`,
   * `too-many-triangles` or `too-many-corners`, which name the part of the document. Answers do not depend on it. Default
   * 1 800 s, 5 million triangles, 4 million corners.
   */
  readonly limits?: Partial<Limits> | undefined;
  /** Is told of each stage that works, and for which piece; not of what is remembered. */
  readonly onStage?: OnStage | undefined;
}

/** Who asks, and how fine. */
export interface Asking extends Asker {
  /** `draft` for looking at a design while it changes: a coarser mesh of the same ring, closed too. Default full. */
  readonly detail?: Detail | undefined;
}

/** Which piece is asked for. */
export interface PieceAsking extends Asking {
  /** The finished piece, the casting before it is finished, or the master with all allowances. */
  readonly piece?: PieceTime | undefined;
}

/** How the piece is turned for the printer, in place of the document's `print`. */
export interface PrintAsking extends PieceAsking {
  readonly print?: Partial<PrintSettings> | undefined;
}

/** The piece as it is written, with its report. */
export interface Made {
  readonly mesh: Mesh;
  /** Equal designs and options give equal reports, to the byte as JSON. */
  readonly report: Report;
  /** Phase → milliseconds, of the runs that made the answers. */
  readonly timings: Timings;
  /** The document with its defaults filled in. */
  readonly design: Design;
  /** Where the stones stand in the mesh, which holds none of them: one entry a stone. */
  readonly stones: readonly FileStone[];
}

/**
 * An opened ring. Lengths in mm, masses in g. Answers are shared by all who ask, so they must not be written to.
 *
 * Every question rejects with AnnuletErrors: with everything that is wrong in the document, with what is wrong in the
 * ring where that is found, or with the signal's reason. What was wrong is remembered like an answer; an abort is not.
 */
export interface Ring {
  /** The document with its defaults filled in: a copy of your own. */
  design(): Promise<Design>;
  /** The bore that the size means, mm. */
  size(asker?: Asker): Promise<ResolvedSize>;
  /** The fit with its candidates; undefined where the design has no pattern. */
  fit(asker?: Asker): Promise<Fit | undefined>;
  /** The cross-section as it is built. */
  profile(asker?: Asker): Promise<Profile>;
  /** What each bead run comes to. */
  beads(asker?: Asker): Promise<readonly BeadRunReport[]>;
  /** The stones: where each stands on the finished piece, its body for views, what to order. None where there are none. */
  stones(asker?: Asker): Promise<RingStones>;
  /** The flat tile. @throws AnnuletError `no-pattern`, `no-such-lane`, `no-such-part`, `tiles-out-of-range` */
  tile(question?: TileQuestion, asker?: Asker): Promise<FlatTile>;
  /** The closed solid as it stands in the design's coordinates. Default the finished piece. */
  solid(asking?: PieceAsking): Promise<Mesh>;
  /** What is to be known of a piece, stage by stage, before it is worn, cast or sold. Default the finished piece. */
  warnings(asking?: PieceAsking): Promise<readonly Warning[]>;
  /** The solid as it is written, turned for the printer, with its report. Default the master. */
  make(asking?: PrintAsking): Promise<Made>;
  /** What was measured on the ring. Default of the master's file. */
  report(asking?: PrintAsking): Promise<Report>;
  /** The part of the document that a place on the finished piece comes from: `pattern.regions[2]`, `profile.bore`. */
  partAt(place: SurfacePlace, asking?: Asking): Promise<RingPart>;
  /**
   * Lines on the finished piece along the edges of a part of the document, whose place is given as errors name it: segments, six
   * numbers each, mm. None where nothing of the part is seen on the ring.
   */
  partLines(part: Pick<RingPart, "path">, asking?: Asking): Promise<Float32Array>;
  /** Castability of the finished piece, by the design's rules or by others. @throws AnnuletError `rules-unknown` */
  check(asking?: Asking & { readonly rules?: string | RuleSet | undefined }): Promise<DesignCheck>;
  /** Sizes and weights of the finished piece, the casting and the master. */
  allowances(asking?: Asking): Promise<Allowances>;
  /** Weight and cost in every material, and what its stones weigh beside that; undefined where there are none. */
  weights(asking?: Asking): Promise<WeightTable & { readonly stones?: StoneTotals }>;
  /** The sprue on the casting; null where the design draws none. */
  sprue(asking?: Asking): Promise<SprueReport | null>;
  /** How a piece lies for the printer. Default the master. */
  printFigures(asking?: PrintAsking): Promise<PrintFigures>;
  /** The bench sheet of the finished piece. */
  sheet(asking?: Asking & SheetQuestion): Promise<BenchSheet>;
  /** A picture of the finished piece in its own material, unless told otherwise. */
  picture(options?: Omit<PictureOptions, "marked">, asking?: Asking): Promise<Picture>;
  /** Takes any number of pictures of the finished piece, one after the other. */
  studio(asking?: Asking): Promise<Studio>;
  /**
   * Another ring, of another document, which takes over every answer whose inputs are the same. Both may be asked
   * afterwards. Together they keep at most 8 answers of each stage and 256 MB of meshes and pictures.
   *
   * @param setup what is other than it was for this ring; where that was wrong, what comes of it is too
   */
  change(document: unknown, setup?: RingSetup): Ring;
}

/** Castability of a finished piece. */
export interface DesignCheck extends Judgement {
  readonly name: string;
  readonly rules: Pick<RuleSet, "name" | "summary">;
  /** What the drawing of findings shows. */
  readonly band: UnrolledBand;
  readonly warnings: readonly Warning[];
}

/** What a sheet is asked for with. */
export interface SheetQuestion {
  /** Program and version for the sheet's foot. Default annulet. */
  readonly tool?: string | undefined;
  /** Width of each picture, pixels; 0 leaves them out. Default 640: 58 mm at 280 pixels an inch. */
  readonly pictureWidth?: number | undefined;
}

/** Defaults of a ring. */
export const RING_DEFAULTS = {
  files: {},
  kernel: manifoldKernel,
  maxBeads: MAX_BEADS,
  decimate: 0,
  detail: "full",
  piece: "master",
  print: {},
  rules: undefined,
  tile: {},
  picture: {},
  pictureWidth: 640,
  tool: "annulet",
} as const satisfies RingOptions & Required<SheetQuestion>;

/**
 * Opens a ring. Document, setup and the record of files are read at once and may change afterwards; what is wrong with them
 * is told by every question. What a function of yours throws, `onProgress` say, goes on as it is.
 *
 * @example
 * const ring = openRing(document);
 * const draft = await ring.solid({ detail: "draft" });
 * const heavier = ring.change({ ...document, material: "au750-yellow" });
 * const { mass } = await heavier.report({ detail: "draft" }); // no geometry is worked out again
 *
 * @param document the design document: an object, or JSON text
 */
export function openRing(document: unknown, setup: RingSetup = {}): Ring {
  return openInside(document, setup);
}

/** The same with what the library's own tests and measurements ask. */
export function openInside(document: unknown, setup: RingSetup = {}): OpenRing {
  return new OpenRing(
    document,
    outcomeOf(() => readQuestion("setup", setup)),
    new AnswerStore(),
  );
}

export class OpenRing implements Ring {
  readonly store: AnswerStore;
  readonly #setup: EngineSetup;
  readonly #engine: Engine;
  /** The document's text, for its digest; undefined where it cannot be read. */
  readonly #text: string | undefined;
  /** Of the design, once it was asked for. */
  #digest: string | undefined;

  constructor(document: unknown, setup: EngineSetup, store: AnswerStore) {
    this.store = store;
    this.#setup = setup;
    this.#engine = new Engine(document, RING_DEFAULTS, store, setup);
    this.#text = typeof document === "string" ? document : this.#engine.valid ? JSON.stringify(document) : undefined;
  }

  /** Any answers, with what was said while they were worked out. */
  ask<Name extends StageName>(
    names: readonly Name[],
    { signal, onProgress, ...chosen }: Asker & Partial<RingOptions> = {},
  ): Promise<Told<Name>> {
    return this.#engine.ask(names, chosen, { signal, onProgress });
  }

  async design(): Promise<Design> {
    return structuredClone(this.#engine.design);
  }

  async size(asker?: Asker): Promise<ResolvedSize> {
    return (await this.ask(["size"], readQuestion("asker", asker))).answers.size;
  }

  async fit(asker?: Asker): Promise<Fit | undefined> {
    return (await this.ask(["fit"], readQuestion("asker", asker))).answers.fit;
  }

  async profile(asker?: Asker): Promise<Profile> {
    return (await this.ask(["profile"], readQuestion("asker", asker))).answers.profile;
  }

  async beads(asker?: Asker): Promise<readonly BeadRunReport[]> {
    return (await this.ask(["beads"], readQuestion("asker", asker))).answers.beads.reports;
  }

  async stones(asker?: Asker): Promise<RingStones> {
    return ringStones((await this.ask(["stones"], readQuestion("asker", asker))).answers.stones);
  }

  async tile(question?: TileQuestion, asker?: Asker): Promise<FlatTile> {
    const tile = readTileQuestion(question);
    const { answers, warnings } = await this.ask(["tile"], { ...readQuestion("asker", asker), tile });
    return { ...answers.tile, warnings };
  }

  async solid(given?: PieceAsking): Promise<Mesh> {
    const { piece = "finished", ...asking } = readQuestion("piece", given);
    return (await this.ask(["piece"], { ...asking, piece })).answers.piece;
  }

  async warnings(given?: PieceAsking): Promise<readonly Warning[]> {
    const { piece = "finished", ...asking } = readQuestion("piece", given);
    return (await this.ask(["piece", "notices"], { ...asking, piece })).warnings;
  }

  async make(given?: PrintAsking): Promise<Made> {
    const asking = readQuestion("print", given);
    const told = await this.ask([...MADE, ...REPORT, ...sprueOf(asking)], asking);
    const { answers, timings } = told;
    const { printed: mesh, piece, stones: placed, printSettings: print, allowance } = answers;
    const scale = (asking.piece ?? RING_DEFAULTS.piece) === "master" ? allowance.scale : TRUE_SIZE;
    const stones = pieceStones(placed, { piece, scale, print });
    return { mesh, report: this.#report(told, asking), timings, design: await this.design(), stones };
  }

  async report(given?: PrintAsking): Promise<Report> {
    const asking = readQuestion("print", given);
    return this.#report(await this.ask([...REPORT, ...sprueOf(asking)], asking), asking);
  }

  async partAt(place: SurfacePlace, asking?: Asking): Promise<RingPart> {
    const where = readQuestion("surfacePlace", place);
    return (await this.ask(["ringParts"], readQuestion("asking", asking))).answers.ringParts.at(where);
  }

  async partLines(part: Pick<RingPart, "path">, asking?: Asking): Promise<Float32Array> {
    const { path } = readQuestion("part", part);
    return (await this.ask(["ringParts"], readQuestion("asking", asking))).answers.ringParts.lines(path);
  }

  async check(given?: Parameters<Ring["check"]>[0]): Promise<DesignCheck> {
    const asking = readQuestion("rules", given);
    const { answers, warnings } = await this.ask(["facts", "uncrossed", "rules", "judgement", "unrolledBand"], asking);
    const { facts, rules, judgement, unrolledBand: band } = answers;
    const { name, summary } = rules;
    // Handles are a finding with their places.
    const others = warnings.filter(({ code }) => code !== "genus-differs");
    return { name: facts.design.name, rules: { name, summary }, ...judgement, band, warnings: others };
  }

  async allowances(asking?: Asking): Promise<Allowances> {
    return (await this.ask(["allowances"], readQuestion("asking", asking))).answers.allowances;
  }

  async weights(asking?: Asking): Promise<WeightTable & { readonly stones?: StoneTotals }> {
    const { weights, stones } = (await this.ask(["weights", "stones"], readQuestion("asking", asking))).answers;
    const told = reportStones(stones);
    if (told === undefined) return weights;
    const { count, carats, grams } = told;
    return { ...weights, stones: { count, carats, grams } };
  }

  async sprue(asking?: Asking): Promise<SprueReport | null> {
    return (await this.ask(["sprue"], readQuestion("asking", asking))).answers.sprue;
  }

  async printFigures(asking?: PrintAsking): Promise<PrintFigures> {
    return (await this.ask(["printFigures"], readQuestion("print", asking))).answers.printFigures;
  }

  async sheet(given?: Asking & SheetQuestion): Promise<BenchSheet> {
    const { tool = RING_DEFAULTS.tool, pictureWidth, ...asking } = readQuestion("sheet", given);
    const how = { piece: "master" } as const;
    const told = await this.ask([...REPORT, ...SHEET, ...sprueOf(how)], { ...asking, ...how, pictureWidth });
    const report = this.#report(told, how);
    return putSheet({ ...told.answers, report, design: await this.design(), text: this.#text ?? "", tool });
  }

  async picture(options?: Omit<PictureOptions, "marked">, asking?: Asking): Promise<Picture> {
    const picture = readPicture(options);
    return (await this.ask(["picture"], { ...readQuestion("asking", asking), picture })).answers.picture;
  }

  async studio(asking?: Asking): Promise<Studio> {
    const { answers } = await this.ask(["studio", "look"], readQuestion("asking", asking));
    const { studio, look: material } = answers;
    return (options = {}) => studio({ ...options, material: options.material ?? material });
  }

  change(document: unknown, setup?: RingSetup): OpenRing {
    const changed = outcomeOf(() => ({ ...orThrow(this.#setup), ...readQuestion("setup", setup) }));
    return new OpenRing(document, changed, this.store);
  }

  #report({ answers, warnings }: Told<(typeof REPORT)[number]>, { piece = RING_DEFAULTS.piece }: PieceAsking): Report {
    const { facts, allowances, weights, printFigures: print } = answers;
    const sprue = "sprue" in answers ? (answers.sprue as SprueReport | null) : null;
    this.#digest ??= digestOf(this.#engine.design);
    return {
      ...makeReport({ ...facts, warnings, sha256: this.#digest }),
      piece,
      allowances,
      weights,
      print,
      sprue,
      warnings,
    };
  }
}

const TRUE_SIZE = { axial: 1, radial: 1 } as const;

const MADE = ["printed", "piece", "stones", "printSettings", "allowance"] as const;

const REPORT = ["facts", "allowances", "weights", "printFigures"] as const;

const SHEET = ["profile", "wrap", "stones", "rules", "judgement", "laneTiles", "sheetPictures"] as const;

/** The sprue is on the casting and the master alone. */
function sprueOf({ piece }: PieceAsking): readonly "sprue"[] {
  return piece === "finished" ? [] : ["sprue"];
}
