/**
 * A number in space that always faces the reader, as high on the screen wherever it stands.
 */
import {
  type BufferGeometry,
  type Camera,
  CircleGeometry,
  Group,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  RingGeometry,
  type WebGLRenderer,
} from "three";
import { letteringGeometry, lettersWide } from "./lettering.js";
import { heightOf, pixelAt } from "./on-screen.js";

/** Colours and sizes of what is drawn over the ring. */
export interface Pen {
  /** Of lines and figures; any colour that three reads. */
  readonly ink: string | number;
  /** Behind figures, so that they can be read over lines. */
  readonly paper: string | number;
  /** Height of figures, CSS pixels. Default 13. */
  readonly letters?: number | undefined;
  /** Width of lines, CSS pixels. Default 1.25. */
  readonly line?: number | undefined;
}

export const PEN_DEFAULTS = { letters: 13, line: 1.25 } as const;

/** Paper round a text, over its height. */
const MARGIN = 0.45;

/** Least radius and rim of a circle round a number, over its height; its sides. */
const ROUND = 0.95;
const RIM = 0.09;
const ROUND_SIDES = 32;

/** Drawn after everything else, in this order. */
export const ORDER = { line: 10, paper: 20, ink: 21 } as const;

/** What can be put into a scene and is let go of in the end. */
export interface Drawn {
  readonly object: Group;
  dispose(): void;
}

/**
 * @param ringed in a circle, as numbers of balloons are
 * @throws RangeError for a letter that cannot be drawn
 */
export function makeLabel(text: string, pen: Pen, ringed = false): Drawn {
  const object = new Group();
  const high = pen.letters ?? PEN_DEFAULTS.letters;
  const round = Math.max(ROUND, lettersWide(text) / 2 + MARGIN);
  const sheet = ringed ? new CircleGeometry(round) : new PlaneGeometry(lettersWide(text) + 2 * MARGIN, 1 + 2 * MARGIN);
  const parts = [flat(sheet, pen.paper, ORDER.paper), flat(letteringGeometry(text), pen.ink, ORDER.ink)];
  if (ringed) parts.push(flat(new RingGeometry(round - RIM, round, ROUND_SIDES), pen.ink, ORDER.ink));
  object.add(...parts);
  for (const part of parts) {
    part.onBeforeRender = (renderer: WebGLRenderer, _: unknown, camera: Camera) => {
      faceReader(part, camera, high * pixelAt(object, camera, heightOf(renderer)));
    };
  }
  return { object, dispose: () => disposeAll(parts) };
}

/** Turns a part of a label to the camera, where the label stands. */
function faceReader(part: Mesh, camera: Camera, scale: number): void {
  part.matrixWorld.copy(camera.matrixWorld);
  part.matrixWorld.copyPosition(part.parent?.matrixWorld ?? part.matrixWorld);
  part.matrixWorld.scale(part.scale.setScalar(scale));
}

function flat(
  geometry: BufferGeometry,
  color: string | number,
  order: number,
): Mesh<BufferGeometry, MeshBasicMaterial> {
  const material = new MeshBasicMaterial({
    color,
    depthTest: false,
    depthWrite: false,
    transparent: true,
    toneMapped: false,
  });
  const mesh = new Mesh(geometry, material);
  mesh.renderOrder = order;
  mesh.frustumCulled = false;
  return mesh;
}

/** Lets go of meshes that share nothing. */
export function disposeAll(meshes: readonly Mesh<BufferGeometry, MeshBasicMaterial>[]): void {
  for (const mesh of meshes) {
    mesh.geometry.dispose();
    mesh.material.dispose();
  }
}
