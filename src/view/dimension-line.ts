/**
 * A dimension line as on trade drawings (ISO 129-1 in spirit): filled arrowheads, extension lines from what is measured, the
 * figure on the line.
 */
import {
  type BufferGeometry,
  type Camera,
  ConeGeometry,
  Group,
  Mesh,
  MeshBasicMaterial,
  Vector3,
  type WebGLRenderer,
} from "three";
import { LineMaterial } from "three/addons/lines/LineMaterial.js";
import { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { LineSegmentsGeometry } from "three/addons/lines/LineSegmentsGeometry.js";
import type { Point3 } from "../base/math/point.js";
import { type Drawn, disposeAll, makeLabel, ORDER, PEN_DEFAULTS, type Pen } from "./label.js";
import { heightOf, pixelAt } from "./on-screen.js";

/** What is measured, and how it is drawn. */
export interface Dimension {
  /** The two places, mm. */
  readonly from: Point3;
  readonly to: Point3;
  /** From the two places to the line, mm. Default none: the line runs between them. */
  readonly offset?: Point3 | undefined;
  /** The figure: digits, point or comma, Ø, mm. */
  readonly text: string;
  /** Where arrowheads stand: between the places, or outside of them, pointing at each other, where there is no room. */
  readonly arrows?: "inside" | "outside" | undefined;
  /** Whether it is seen through metal. Default not. */
  readonly through?: boolean | undefined;
}

/** An arrowhead: CSS pixels long, three times as long as wide; at most this share of the line. */
const ARROW = 11;
const MOST_OF_LINE = 0.35;

/** How far extension lines go on beyond the dimension line, and begin off what is measured; mm. Chosen. */
const BEYOND = 0.5;
const GAP = 0.2;

/** How far a line goes on beyond arrowheads that stand outside, mm. Chosen. */
const TAIL = 1.6;

/** @throws RangeError for a letter that cannot be drawn */
export function makeDimensionLine(dimension: Dimension, pen: Pen): Drawn {
  const { from, to, offset = [0, 0, 0], text, arrows = "inside", through = false } = dimension;
  const shift = new Vector3(...offset);
  const [start, end] = [new Vector3(...from).add(shift), new Vector3(...to).add(shift)];
  const along = end.clone().sub(start);
  const length = along.length();
  along.normalize();
  const outside = arrows === "outside";
  const tail = along.clone().multiplyScalar(outside ? TAIL : 0);
  const segments = [start.clone().sub(tail), end.clone().add(tail)];
  if (shift.length() > 0) segments.push(...extensionLine(from, shift), ...extensionLine(to, shift));
  const lines = makeLines(segments, pen, through);
  const heads = [start, end].map((tip, at) => {
    const towards = along.clone().multiplyScalar((at === 0) === outside ? 1 : -1);
    return makeArrow(tip, towards, { pen, through, most: outside ? TAIL : length * MOST_OF_LINE });
  });
  const label = makeLabel(text, pen);
  label.object.position.copy(outside ? end.clone().addScaledVector(along, 2 * TAIL) : start.clone().lerp(end, 0.5));
  const object = new Group();
  object.add(lines, ...heads, label.object);
  return {
    object,
    dispose: () => {
      label.dispose();
      disposeAll(heads);
      lines.geometry.dispose();
      lines.material.dispose();
    },
  };
}

function extensionLine(place: Point3, shift: Vector3): readonly [Vector3, Vector3] {
  const away = shift.clone().normalize();
  const foot = new Vector3(...place);
  return [foot.clone().addScaledVector(away, GAP), foot.clone().add(shift).addScaledVector(away, BEYOND)];
}

/** Thin lines, as wide on the screen wherever they are. */
export function makeLines(ends: readonly Vector3[], pen: Pen, through: boolean): LineSegments2 {
  const geometry = new LineSegmentsGeometry();
  geometry.setPositions(ends.flatMap((end) => end.toArray()));
  const material = new LineMaterial({ color: pen.ink, linewidth: pen.line ?? PEN_DEFAULTS.line, depthTest: !through });
  material.toneMapped = false;
  const lines = new LineSegments2(geometry, material);
  lines.renderOrder = ORDER.line;
  lines.frustumCulled = false;
  return lines;
}

interface ArrowOptions {
  readonly pen: Pen;
  readonly through: boolean;
  /** mm that it may be long. */
  readonly most: number;
}

/** An arrowhead whose tip is at a place, towards which it points. */
function makeArrow(
  tip: Vector3,
  towards: Vector3,
  { pen, through, most }: ArrowOptions,
): Mesh<BufferGeometry, MeshBasicMaterial> {
  const geometry = new ConeGeometry(1 / 6, 1, 12).translate(0, -0.5, 0);
  const arrow = new Mesh<BufferGeometry, MeshBasicMaterial>(
    geometry,
    new MeshBasicMaterial({ color: pen.ink, depthTest: !through, toneMapped: false }),
  );
  arrow.position.copy(tip);
  arrow.quaternion.setFromUnitVectors(new Vector3(0, 1, 0), towards);
  arrow.renderOrder = ORDER.line;
  arrow.frustumCulled = false;
  arrow.onBeforeRender = (renderer: WebGLRenderer, _: unknown, camera: Camera) => {
    arrow.scale.setScalar(Math.min(most, ARROW * pixelAt(arrow, camera, heightOf(renderer))));
    arrow.updateMatrix();
    arrow.matrixWorld.multiplyMatrices(arrow.parent?.matrixWorld ?? arrow.matrix, arrow.matrix);
  };
  return arrow;
}
