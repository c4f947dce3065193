/**
 * What a picture can be asked for, and what it may not.
 */
import { AnnuletError, type Problem } from "../../base/errors.js";
import { findAlloy } from "../../measure/alloys/catalogue.js";
import { type Look, lookOf } from "../../measure/alloys/look.js";
import { facing, type LookAt } from "./aim.js";
import type { View } from "./camera.js";
import { type ViewName, views } from "./views.js";

/** What a picture is asked for with. */
export interface PictureOptions {
  /** Pixels, 1 to 8192. Default 1600. */
  readonly width?: number;
  /** Pixels, 1 to 8192. Default 1200. */
  readonly height?: number;
  /** Where to look from: a name or a place of your own. Default three-quarter, or facing what is looked at. */
  readonly view?: ViewName | View;
  /** The place of a ring that is in the middle of the picture. Default: the middle of the mesh is. */
  readonly lookAt?: LookAt;
  /** Enlargement about what is in the middle, above 0; at 1 (default) the whole mesh is seen, from inside the bore's width. */
  readonly zoom?: number;
  /** Symbol of a built-in material, or the look of one of your own. Default ag925. */
  readonly material?: string | Look;
  /** Surface of metal. Default polished. */
  readonly finish?: Finish;
  /** Paper with the ring's shadow (default), paper without, or nothing at all behind the ring. */
  readonly ground?: PictureGround;
  /** Factor on all light, above 0. Default 1. */
  readonly exposure?: number;
  /** Samples along each side of a pixel, 1 to 4. Default 2. */
  readonly supersample?: number;
  /** Edges where the surface turns by more than this stay sharp, degrees, 0 to 180. Default 42. */
  readonly crease?: number;
  /** What is seen of triangles from behind, as through a hole: nothing (default), or magenta, so that none is missed. */
  readonly backs?: "hidden" | "magenta";
  /** One entry for each triangle of the mesh: those with 1 are painted red, shaded as the others are. Default none. */
  readonly marked?: Uint8Array;
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

/** Longest side, pixels, and most samples in all: four bytes a sample are held several times over. */
const LONGEST_SIDE = 8192;
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
 * @throws AnnuletError `option-invalid` with everything that is wrong, `material-unknown`, `view-unknown`
 */
export function settingsOf(options: PictureOptions): PictureSettings {
  const given = Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined));
  const { lookAt, marked } = options;
  const view = lookAt !== undefined && options.view === undefined ? facing(lookAt) : PICTURE_DEFAULTS.view;
  const all: Required<Omit<PictureOptions, "marked" | "lookAt">> = { ...PICTURE_DEFAULTS, view, ...given };
  const problems: Problem[] = [];
  if (lookAt !== undefined && !Number.isFinite(lookAt.angle)) {
    const message = "the picture's lookAt is off";
    problems.push({ code: "option-invalid", message, path: "lookAt", value: lookAt.angle, allowed: "degrees" });
  }
  const expect = (path: keyof typeof all, holds: boolean, allowed: string) => {
    if (holds) return;
    problems.push({ code: "option-invalid", message: `the picture's ${path} is off`, path, value: all[path], allowed });
  };
  const isCount = (value: number, most: number) => Number.isInteger(value) && value >= 1 && value <= most;
  const isPositive = (value: number) => value > 0 && value < Number.POSITIVE_INFINITY;
  expect("width", isCount(all.width, LONGEST_SIDE), `a whole number of pixels, 1 to ${LONGEST_SIDE}`);
  expect("height", isCount(all.height, LONGEST_SIDE), `a whole number of pixels, 1 to ${LONGEST_SIDE}`);
  expect("zoom", isPositive(all.zoom), "a number above 0");
  expect("exposure", isPositive(all.exposure), "a number above 0");
  expect("supersample", isCount(all.supersample, 4), "1, 2, 3 or 4");
  expect("crease", all.crease >= 0 && all.crease <= 180, "degrees, 0 to 180");
  if (problems.length === 0) {
    const samples = all.width * all.height * all.supersample ** 2;
    expect("supersample", samples <= MOST_SAMPLES, `at most ${MOST_SAMPLES} samples in all; there would be ${samples}`);
  }
  const found = findView(all.view, problems);
  const look = findLook(all.material, problems);
  if (found === undefined || look === undefined || problems.length > 0) throw new AnnuletError(problems);
  return { ...all, view: found, lookAt, look, marked };
}

function findView(view: ViewName | View, problems: Problem[]): View | undefined {
  const found = typeof view === "string" ? (Object.hasOwn(views, view) ? views[view] : undefined) : view;
  if (found === undefined) {
    const allowed = Object.keys(views).join(", ");
    problems.push({ code: "view-unknown", message: "There is no such view.", path: "view", value: view, allowed });
  } else if (!Number.isFinite(found.azimuth) || !(Math.abs(found.elevation) <= 90)) {
    const allowed = "an azimuth in degrees and an elevation from -90 to 90";
    problems.push({
      code: "option-invalid",
      message: "the picture's view is off",
      path: "view",
      value: found,
      allowed,
    });
  }
  return found;
}

function findLook(material: string | Look, problems: Problem[]): Look | undefined {
  if (typeof material !== "string") return material;
  try {
    return lookOf(findAlloy(material));
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    problems.push(...error.problems);
    return undefined;
  }
}
