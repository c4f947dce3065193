/**
 * A picture of a mesh: z-buffer, a studio mirrored in the metal, a soft shadow. No graphics card, no browser.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Point3 } from "../../base/math/point.js";
import { radians } from "../../base/units.js";
import { boundsCentre, meshBounds } from "../../mesh/bounds.js";
import type { Mesh } from "../../mesh/mesh.js";
import { requireSound } from "../../mesh/sound.js";
import type { ShownStone } from "../stones/shown-stone.js";
import { aimAt } from "./aim.js";
import { makeCamera, projectPoints } from "./camera.js";
import { cornerNormals, facesOf } from "./corner-normals.js";
import { develop } from "./develop.js";
import { makeEchoGrid } from "./echo.js";
import { makeGround } from "./ground.js";
import { knownNormals } from "./known/known-normals.js";
import type { KnownSurface } from "./known/known-surface.js";
import { type LightMap, makeLightMap } from "./light-map.js";
import { mirrored } from "./mirrored.js";
import { openness } from "./openness.js";
import { type PictureOptions, settingsOf } from "./options.js";
import { pixelViewOf } from "./pixel-view.js";
import { rasterize } from "./raster.js";
import { sceneOf, withStones } from "./stones/scene.js";
import { shadeScene } from "./stones/shade-scene.js";
import { studioLight } from "./studio.js";

/** Pixels of a picture. */
export interface Picture {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, alpha, 0 to 255 in sRGB, line by line from the top; colours are not multiplied by alpha. */
  readonly pixels: Uint8Array;
}

/** Takes pictures of one mesh. */
export type Studio = (options?: PictureOptions) => Picture;

/** How far hollows are looked for, over the bounding radius. */
const HOLLOW_REACH = 0.1;

/** Level of blur of what a satin surface mirrors. */
const BLUR = { polished: 0, satin: 1.7 } as const;

/**
 * Takes a picture. Corners of triangles must share vertices for the surface to look smooth, as those of built and read
 * meshes do. The same mesh and options give the same pixels.
 *
 * @throws AnnuletError `mesh-malformed`, `mesh-without-extent`, and for options `option-invalid`, `material-unknown`,
 *   `view-unknown`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const png = encodePng(takePicture(mesh, { view: "lying", material: "au750-red", width: 200, height: 150 }));
 */
export function takePicture(mesh: Mesh, options: PictureOptions = {}): Picture {
  return openStudio(mesh)(options);
}

/**
 * Sets a mesh up for several pictures: what they have in common is worked out once.
 *
 * @returns what takes a picture; it throws as `takePicture` does for options
 * @throws AnnuletError `mesh-malformed`, `mesh-without-extent`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const take = openStudio(mesh);
 * const pictures = [views.front, views.side].map((view) => take({ view, width: 200, height: 150 }));
 */
export function openStudio(mesh: Mesh): Studio {
  return openStudioOf(mesh, []);
}

/**
 * As `openStudio`, for a mesh whose facets are chords of known surfaces: their normals are taken from those.
 *
 * @param stones what is shown with it; metal mirrors none of them
 * @throws AnnuletError as `openStudio`
 */
export function openStudioOf(
  mesh: Mesh,
  surfaces: readonly KnownSurface[],
  stones: readonly ShownStone[] = [],
): Studio {
  requireSound(mesh);
  const scene = sceneOf(mesh, stones);
  const ball = boundingBall(scene.mesh);
  if (!(ball.radius > 0)) {
    throw new AnnuletError({
      code: "mesh-without-extent",
      message: "there is nothing to be seen: the mesh has no triangles, or all of it is one point",
    });
  }
  const faces = facesOf(mesh);
  const known = knownNormals(mesh.positions, surfaces);
  const grid = makeEchoGrid(mesh);
  const map = studioMap();
  return (options = {}) => {
    const settings = settingsOf(options);
    requireMarks(settings.marked, mesh);
    const { width, height, view, lookAt, zoom, supersample, look } = settings;
    const aim = lookAt === undefined ? ball : aimAt(mesh, lookAt, ball.radius);
    const camera = makeCamera({ view, width: width * supersample, height: height * supersample, zoom, ...aim });
    const projected = projectPoints(camera, scene.mesh.positions);
    const seen = rasterize(scene.mesh.triangles, projected, camera, settings.backs === "magenta");
    const ofMetal = cornerNormals(mesh, faces, {
      seen: whichSeen(seen.triangle, mesh),
      crease: radians(settings.crease),
      known,
    });
    const normals = withStones(ofMetal, scene);
    const surface = pixelViewOf(scene.mesh, seen, { projected, normals, camera, supersample });
    const open = openness(surface, HOLLOW_REACH * ball.radius);
    // From below the ground would hide the ring, so it is left out.
    const ground = view.elevation < 0 ? undefined : makeGround(scene.mesh, camera, ball);
    const reflections = mirrored(surface, camera, { grid, ground, map });
    const shading = {
      ...{ mesh: scene.mesh, camera, supersample, projected, normals, map, open },
      mirrored: reflections,
    };
    const shade = shadeScene(scene, { ...shading, look, blur: BLUR[settings.finish] }, grid);
    const pixels = develop({
      seen,
      camera,
      supersample,
      shade,
      marked: settings.marked,
      exposure: settings.exposure,
      ground: settings.ground === "shadow" ? ground : undefined,
      clear: settings.ground === "clear",
    });
    return { width, height, pixels };
  };
}

let lit: LightMap | undefined;

/** The studio's light, the same for every mesh: worked out once. Nobody writes to it. */
function studioMap(): LightMap {
  lit ??= makeLightMap(studioLight);
  return lit;
}

function requireMarks(marked: Uint8Array | undefined, mesh: Mesh): void {
  const triangles = mesh.triangles.length / 3;
  if (marked === undefined || marked.length === triangles) return;
  throw new AnnuletError({
    code: "option-invalid",
    message: "the picture's marks are not those of this mesh",
    path: "marked",
    value: marked.length,
    allowed: `${triangles} entries, one for each triangle`,
  });
}

/** A ball about the middle of the mesh's box. */
function boundingBall(mesh: Mesh): { readonly centre: Point3; readonly radius: number } {
  const centre = boundsCentre(meshBounds(mesh));
  const { positions } = mesh;
  let square = 0;
  for (let i = 0; i < positions.length; i += 3) {
    const [x, y, z] = [positions[i] - centre[0], positions[i + 1] - centre[1], positions[i + 2] - centre[2]];
    square = Math.max(square, x * x + y * y + z * z);
  }
  return { centre, radius: Math.sqrt(square) };
}

/** One entry a triangle: 1 where a sample sees it. */
function whichSeen(triangleOf: Int32Array, mesh: Mesh): Uint8Array {
  const seen = new Uint8Array(mesh.triangles.length / 3);
  // Those of stones lie beyond the last entry, where nothing is kept.
  for (let i = 0; i < triangleOf.length; i++) if (triangleOf[i] >= 0) seen[triangleOf[i]] = 1;
  return seen;
}
