/**
 * All stages of a ring, in the order in which they are worked out, each with what it reads: fields of the design, options,
 * answers of stages before it, and those of the casting before it is finished, which is the same stages over a design with
 * larger sizes. What `work` makes is compared by what it was made from, a `figure` or a `slice` by its value.
 */

import { outermost } from "../measure/outermost.js";
import { coverStop } from "../pattern/ends.js";
import { choice, compared, figure, type StageTable, slice, work } from "./stage.js";
import * as casting from "./steps/casting.js";
import { sameFiles } from "./steps/file-contents.js";
import * as fitting from "./steps/fit.js";
import * as flat from "./steps/flat.js";
import * as output from "./steps/output.js";
import * as solid from "./steps/solid.js";

export const stages: StageTable = {
  deviation: slice("option.decimate", solid.deviation),
  printSettings: slice("design.print option.print", output.printSettings),
  size: figure("size", "design.size", fitting.size),
  boreRadius: slice("size", ({ size }) => size.diameter / 2),
  fitPattern: slice("design.pattern design.beads", fitting.fitPattern),
  fit: figure("fit", "design.profile design.tolerance boreRadius fitPattern", fitting.fit),
  width: slice("design.profile fit", ({ design, fit }) => fit?.bandWidth ?? design.profile.width),
  profile: work("profile", "design.profile design.tolerance boreRadius width", flat.profile),
  keepsSize: slice("design.pattern", ({ design }) => design.pattern?.fit.taper === "keep"),
  seat: slice("design.tolerance keepsSize profile", flat.seat),
  fontUses: slice("design.lettering design.pattern", flat.fontUses),
  fontFiles: compared("pattern", "option.files fontUses", flat.fontFiles, sameFiles),
  fonts: work("pattern", "fontUses fontFiles", flat.fonts),
  drawingUses: slice("design.beads design.pattern design.stones", flat.drawingUses),
  drawingFiles: compared("pattern", "option.files drawingUses", flat.drawingFiles, sameFiles),
  drawings: work("pattern", "drawingUses drawingFiles", flat.drawings),
  imageUses: slice("design.pattern", flat.imageUses),
  imageFiles: compared("pattern", "option.files imageUses", flat.imageFiles, sameFiles),
  images: work("pattern", "imageUses imageFiles", flat.images),
  tileRuns: slice("design.beads", flat.tileRuns),
  bodyTolerance: slice("design.tolerance option.detail", flat.bodyTolerance),
  drawnPattern: work(
    "pattern",
    "design.pattern design.tolerance bodyTolerance fit seat fonts drawings images tileRuns",
    flat.drawnPattern,
  ),
  filling: slice("design.pattern bodyTolerance fit profile seat", flat.filling),
  pattern: work("pattern", "design.lift drawnPattern filling", flat.pattern),
  seatCarries: slice("design.lettering design.hallmark pattern", flat.seatCarries),
  wrap: work("wrap", "profile fit seat seatCarries", flat.wrap),
  marks: work("wrap", "design.lettering design.hallmark design.tolerance profile fonts wrap", flat.marks),
  coverStop: slice("design.pattern", ({ design }) => design.pattern && coverStop(design.pattern)),
  beads: work("solids", "design.beads option.maxBeads coverStop profile pattern wrap", solid.beads),
  stoneTiles: slice("design.stones design.pattern", solid.stoneTiles),
  stones: work(
    "solids",
    "design.stones design.gems design.tolerance stoneTiles coverStop fit seat drawings profile wrap",
    solid.stones,
  ),
  parts: work(
    "solids",
    "design.beads design.tolerance option.detail profile pattern wrap marks beads stones",
    solid.parts,
  ),
  headroom: figure("solids", "design.proud profile parts", solid.headroom),
  prove: work("union", "design.tolerance option.detail profile pattern wrap marks beads stones", solid.prove),
  ringParts: work(undefined, "design.tolerance option.detail profile pattern wrap marks beads", solid.ringParts),
  union: work("union", "option.kernel option.detail parts headroom prove", solid.union),
  asUnited: work(undefined, "union", ({ union: { mesh, check, turned } }) => ({
    mesh,
    check,
    turned,
    decimation: undefined,
  })),
  decimated: work("decimate", "deviation union", solid.decimated),
  thinned: choice(({ decimate }) => (decimate === 0 ? "asUnited" : "decimated")),
  genus: slice(
    "pattern parts stones",
    ({ pattern, parts, stones }) =>
      1 + pattern.holes - parts.lostHoles + stones.stones.filter(({ through }) => through !== false).length,
  ),
  gate: work("checks", "design.tolerance genus parts thinned pattern wrap", solid.gate),
  solid: work(undefined, "gate thinned", ({ thinned }) => thinned.mesh),
  turned: work(undefined, "thinned", ({ thinned }) => thinned.turned),
  uncrossed: work("checks", "gate solid turned pattern wrap", solid.uncrossed),
  measure: figure("measure", "solid turned", solid.measure),
  outermost: figure("measure", "solid", ({ solid }) => outermost(solid)),
  notices: figure(undefined, "size profile union", output.notices),
  metal: slice("design.alloys design.material", output.metal),
  stretch: figure(undefined, "pattern wrap", flat.stretch),
  facts: work(
    undefined,
    "design.name design.material design.profile design.lettering design.hallmark option.detail size fit width profile marks beads stones headroom union thinned genus gate measure outermost notices metal stretch",
    output.facts,
  ),
  rules: slice("design.rules option.rules", output.rules),
  judgement: work(
    undefined,
    "design.tolerance option.detail profile pattern wrap marks beads stones parts genus gate solid turned rules",
    solid.judgement,
  ),
  unrolledBand: work(undefined, "profile pattern wrap", solid.unrolledBand),
  tile: work(undefined, "design.name design.pattern option.tile size fit profile pattern wrap beads", output.tile),
  laneTiles: work(undefined, "design.name design.pattern size fit profile pattern wrap beads", output.laneTiles),
  allowance: slice("design.casting", casting.allowance),
  patternMetal: slice("design.alloys design.casting", casting.patternMetal),
  allowances: work(
    undefined,
    "allowance metal patternMetal profile pattern measure cast.profile cast.pattern cast.measure",
    casting.allowances,
  ),
  weights: work(
    undefined,
    "design.alloys design.costing allowance allowances patternMetal measure cast.measure",
    casting.weights,
  ),
  sprued: work(undefined, "design.sprue design.tolerance option.kernel cast.profile cast.solid", casting.sprued),
  sprue: work(undefined, "sprued metal", casting.sprue),
  castPiece: work(undefined, "cast.solid sprued", ({ cast, sprued }) => sprued?.mesh ?? cast.solid),
  masterPiece: work(undefined, "allowance castPiece", casting.masterPiece),
  piece: choice(({ piece }) => PIECES[piece]),
  castTurned: work(undefined, "cast.turned castPiece", ({ cast, castPiece }) => output.ofMesh(castPiece, cast.turned)),
  masterTurned: work(undefined, "castTurned masterPiece", (read) => output.ofMesh(read.masterPiece, read.castTurned)),
  pieceTurned: choice(({ piece }) => PIECES_TURNED[piece]),
  printed: work(undefined, "printSettings piece", output.printed),
  printFigures: work("output", "printSettings printed pieceTurned", output.printFigures),
  studio: work(undefined, "option.detail bodyTolerance profile pattern wrap parts stones solid", output.studio),
  look: slice("metal", output.look),
  picture: work(undefined, "option.picture studio look", output.picture),
  sheetPictures: work(undefined, "option.pictureWidth studio look", output.sheetPictures),
};

/** What each piece is made by. */
const PIECES = { finished: "solid", cast: "castPiece", master: "masterPiece" } as const;

/** What was seen of each. */
const PIECES_TURNED = { finished: "turned", cast: "castTurned", master: "masterTurned" } as const;
