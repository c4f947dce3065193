/**
 * What a picture can be asked for, and what it may not.
 */
import { nearest } from "../../base/errors/nearest.js";
import { AnnuletError, type Problem } from "../../base/errors.js";
import type { MaterialName } from "../../design/design-input.js";
import { readOptions } from "../../design/read-options.js";
import { findAlloy } from "../../measure/alloys/catalogue.js";
import { type Look, lookOf } from "../../measure/alloys/look.js";
import { facing, type LookAt } from "./aim.js";
import type { View } from "./camera.js";
import { markedPictureSchema } from "./picture-schema.js";
import { type ViewName, views } from "./views.js";

/** What a picture is asked for with. */
export interface PictureOptions {
  /** Pixels, 1 to 8192. Default 1600. */
  readonly width?: number | undefined;
  /** Pixels, 1 to 8192. Default 1200. */
  readonly height?: number | undefined;
  /** Where to look from: a name or a place of your own. Default three-quarter, or facing what is looked at. */
  readonly view?: ViewName | View | undefined;
  /** The place of a ring that is in the middle of the picture. Default: the middle of the mesh is. */
  readonly lookAt?: LookAt | undefined;
  /** Enlargement about what is in the middle, above 0; at 1 (default) the whole mesh is seen, from inside the bore's width. */
  readonly zoom?: number | undefined;
  /** Symbol of a built-in material, or the look of one of your own. Default ag925. */
  readonly material?: MaterialName | (string & {}) | Look | undefined;
  /** Surface of metal. Default polished. */
  readonly finish?: Finish | undefined;
  /** Paper with the ring's shadow (default), paper without, or nothing at all behind the ring. */
  readonly ground?: PictureGround | undefined;
  /** Factor on all light, above 0. Default 1. */
  readonly exposure?: number | undefined;
  /** Samples along each side of a pixel, 1 to 4. Default 2. */
  readonly supersample?: number | undefined;
  /** Edges where the surface turns by more than this stay sharp, degrees, 0 to 180. Default 42. */
  readonly crease?: number | undefined;
  /** What is seen of triangles from behind, as through a hole: nothing (default), or magenta, so that none is missed. */
  readonly backs?: "hidden" | "magenta" | undefined;
  /** One entry for each triangle of the mesh: those with 1 are painted red, shaded as the others are. Default none. */
  readonly marked?: Uint8Array | undefined;
}

/** Surface of the metal in pictures. */
export type Finish = "polished" | "satin";
/** What is seen behind the ring. */
export type PictureGround = "shadow" | "plain" | "clear";

/** The crease lies below a chamfer's 45° and above most of the steps in which a fillet of 0.1 mm is cut at 0.01 mm. */
export const PICTURE_DEFAULTS = {
  width: 1600,
  height: 1200,
  view: "three-quarter",
  zoom: 1,
  material: "ag925",
  finish: "polished",
  ground: "shadow",
  exposure: 1,
  supersample: 2,
  crease: 42,
  backs: "hidden",
} as const satisfies Required<Omit<PictureOptions, "marked" | "lookAt">>;

/** Most samples in all: four bytes a sample are held several times over. Chosen. */
const MOST_SAMPLES = 1e8;

/** Options with every value there and checked. */
export interface PictureSettings {
  readonly width: number;
  readonly height: number;
  readonly view: View;
  readonly lookAt: LookAt | undefined;
  readonly zoom: number;
  readonly look: Look;
  readonly finish: Finish;
  readonly ground: PictureGround;
  readonly exposure: number;
  readonly supersample: number;
  readonly crease: number;
  readonly backs: "hidden" | "magenta";
  readonly marked: Uint8Array | undefined;
}

/**
 * Fills in defaults.
 *
 * @throws AnnuletError `option-unknown`, `option-invalid` with everything that is wrong, `material-unknown`, `view-unknown`
 */
export function settingsOf(options: PictureOptions): PictureSettings {
  const problems: Problem[] = [];
  const given = heldBack(problems, () => readOptions(markedPictureSchema, options)) ?? namesIn(options);
  const { lookAt, marked } = given;
  const view = lookAt !== undefined && given.view === undefined ? facing(lookAt) : PICTURE_DEFAULTS.view;
  const all = { ...PICTURE_DEFAULTS, view, ...given };
  const samples = all.width * all.height * all.supersample ** 2;
  if (problems.length === 0 && samples > MOST_SAMPLES) {
    const allowed = `at most ${MOST_SAMPLES} samples in all; there would be ${samples}`;
    const message = "is too fine for a picture of this size";
    problems.push({ code: "option-invalid", message, path: "supersample", value: all.supersample, allowed });
  }
  const found = heldBack(problems, () => findView(all.view));
  const look = heldBack(problems, () => findLook(all.material));
  if (found === undefined || look === undefined || problems.length > 0) throw new AnnuletError(problems);
  return { ...all, view: found, lookAt, look, marked };
}

/** What comes of it; where it throws, its problems are put with the others. */
function heldBack<Result>(problems: Problem[], run: () => Result): Result | undefined {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    problems.push(...error.problems);
    return undefined;
  }
}

/** Of options that are wrong, what is looked up by name all the same. */
function namesIn(options: unknown): PictureOptions {
  try {
    const { view, material } = Object(options) as PictureOptions;
    return {
      ...(typeof view === "string" ? { view } : {}),
      ...(typeof material === "string" ? { material } : {}),
    };
  } catch {
    // What cannot be read has been said.
    return {};
  }
}

function findView(view: ViewName | View): View {
  if (typeof view !== "string") return view;
  if (Object.hasOwn(views, view)) return views[view];
  const names = Object.keys(views);
  throw new AnnuletError({
    code: "view-unknown",
    message: "There is no such view.",
    path: "view",
    value: view,
    allowed: names.join(", "),
    hint: nearest(view, names),
  });
}

function findLook(material: string | Look): Look {
  return typeof material === "string" ? lookOf(findAlloy(material)) : material;
}
