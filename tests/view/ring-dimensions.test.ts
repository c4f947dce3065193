// Covers: src/view/dimension-line.ts, src/view/label.ts, src/view/finding-marks.ts, src/view/on-screen.ts
import {
  type Material,
  Mesh,
  Object3D,
  OrthographicCamera,
  PerspectiveCamera,
  Scene,
  Vector3,
  type WebGLRenderer,
} from "three";
import type { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { describe, expect, test } from "vitest";
import { makeDimensionLine } from "../../src/view/dimension-line.js";
import { FindingMarks, MOST_PLACES } from "../../src/view/finding-marks.js";
import { pixelAt } from "../../src/view/on-screen.js";
import { DimensionLines, dimensionsOf } from "../../src/view/ring-dimensions.js";

const PEN = { ink: "#000000", paper: "#ffffff" } as const;

const SIZES = { diameter: 17.2, width: 7.4, thickness: 1.9, overall: 2.15 } as const;

/** Ends of the segments of all lines below an object. */
function endsOf(object: Object3D): readonly (readonly [Vector3, Vector3])[] {
  const ends: (readonly [Vector3, Vector3])[] = [];
  object.traverse((part) => {
    if (!("isLineSegments2" in part)) return;
    const { geometry } = part as LineSegments2;
    const [start, end] = [geometry.getAttribute("instanceStart"), geometry.getAttribute("instanceEnd")];
    for (let i = 0; i < start.count; i++) {
      ends.push([new Vector3().fromBufferAttribute(start, i), new Vector3().fromBufferAttribute(end, i)]);
    }
  });
  return ends;
}

/** How many geometries and materials are in use below an object, and how many of them were let go of since. */
function countDisposed(object: Object3D): () => readonly [used: number, gone: number] {
  const used = new Set<{ addEventListener(type: "dispose", heard: () => void): void }>();
  let gone = 0;
  object.traverse((part) => {
    if (!(part instanceof Mesh)) return;
    used.add(part.geometry);
    used.add(part.material as Material);
  });
  for (const thing of used) thing.addEventListener("dispose", () => gone++);
  return () => [used.size, gone];
}

describe("dimension lines of a ring", () => {
  test("measure what they tell: the bore across the axis, the width along the finger, the thickness at the top", () => {
    const [bore, width, thickness] = dimensionsOf(SIZES, (length) => length.toFixed(1).replace(".", ","));
    const lengthOf = ({ from, to }: typeof bore) => new Vector3(...from).distanceTo(new Vector3(...to));
    expect(lengthOf(bore)).toBeCloseTo(17.2, 12);
    expect(lengthOf(width)).toBeCloseTo(7.4, 12);
    expect(lengthOf(thickness)).toBeCloseTo(1.9, 12);
    expect([bore, width, thickness].map(({ text }) => text)).toEqual(["Ø 17,2", "7,4", "1,9"]);
    expect(thickness.from).toEqual([0, 8.6, 3.7]);
  });

  test("stand clear of the highest point, with extension lines from what is measured", () => {
    const lines = new DimensionLines(dimensionsOf(SIZES), PEN);
    const ends = endsOf(lines.object);
    // One line of the bore; two times a line and its two extension lines.
    expect(ends).toHaveLength(7);
    const [, along, first] = ends;
    expect(along[0].x).toBeCloseTo(8.6 + 2.15 + 1.6, 5);
    expect(along[0].distanceTo(along[1])).toBeCloseTo(7.4, 5);
    expect(first[0].x).toBeGreaterThan(8.6 + 1.9);
    expect(first[1].x).toBeGreaterThan(along[0].x);
  });

  test("let go of everything, and leave their scene", () => {
    const scene = new Scene();
    const lines = new DimensionLines(dimensionsOf(SIZES), PEN);
    scene.add(lines.object);
    const counts = countDisposed(lines.object);
    lines.dispose();
    expect(counts()[0]).toBeGreaterThan(10);
    expect(counts()[1]).toBe(counts()[0]);
    expect(scene.children).toEqual([]);
  });

  test("arrowheads point outwards from within, and at each other from without", () => {
    const tips = (arrows: "inside" | "outside") => {
      const { object } = makeDimensionLine({ from: [0, 0, 0], to: [10, 0, 0], text: "10", arrows }, PEN);
      return object.children
        .filter((part): part is Mesh => part instanceof Mesh && !("isLineSegments2" in part))
        .map((arrow) => new Vector3(0, 1, 0).applyQuaternion(arrow.quaternion).x);
    };
    // A cone's tip is its own +y.
    expect(tips("inside").map(Math.sign)).toEqual([-1, 1]);
    expect(tips("outside").map(Math.sign)).toEqual([1, -1]);
  });
});

describe("findings on a ring", () => {
  const finding = (...places: readonly (readonly [number, number, number] | undefined)[]) => ({
    places: places.map((point) => (point === undefined ? {} : { point })),
  });

  test("have a balloon and a leader line for each place in space, away from the finger", () => {
    const marks = new FindingMarks([finding([0, 9, 1], undefined), finding(), finding([-9, 0, -1], [0, 0, 2])], PEN);
    const ends = endsOf(marks.object);
    expect(ends).toHaveLength(3);
    for (const [place, head] of ends) {
      expect(Math.hypot(head.x, head.y)).toBeGreaterThanOrEqual(Math.hypot(place.x, place.y));
      expect(head.distanceTo(place)).toBeCloseTo(4, 5);
    }
    marks.dispose();
  });

  test("show the worst places alone where there are many, and nothing where there are none", () => {
    const many = Array.from({ length: 40 }, (_, i) => [0, 9 + i, 0] as const);
    expect(endsOf(new FindingMarks([finding(...many)], PEN).object)).toHaveLength(MOST_PLACES);
    const none = new FindingMarks([], PEN);
    expect(none.object.children).toEqual([]);
    expect(() => none.dispose()).not.toThrow();
  });
});

describe("a pixel's size in space", () => {
  const HEIGHT = 600;
  const object = new Object3D();
  object.position.set(0, 0, -5);
  object.updateMatrixWorld();

  /** The same by three's own projection: how far a point moves for one pixel. */
  const byProjection = (camera: PerspectiveCamera | OrthographicCamera) => {
    camera.updateMatrixWorld();
    const top = new Vector3(0, 1, -5).project(camera).y - new Vector3(0, 0, -5).project(camera).y;
    return 2 / (top * HEIGHT);
  };

  test("is what cameras of both kinds project", () => {
    const perspective = new PerspectiveCamera(40, 1.5, 1, 100);
    perspective.position.z = 20;
    const parallel = new OrthographicCamera(-12, 12, 8, -8, 1, 100);
    parallel.position.z = 20;
    parallel.zoom = 3;
    parallel.updateProjectionMatrix();
    for (const camera of [perspective, parallel]) {
      camera.updateMatrixWorld();
      expect(pixelAt(object, camera, HEIGHT)).toBeCloseTo(byProjection(camera), 10);
    }
  });

  test("makes a label as high on the screen wherever the camera is", () => {
    const renderer = { getSize: (size: { set(x: number, y: number): unknown }) => size.set(900, HEIGHT) };
    const { object: line } = makeDimensionLine({ from: [0, 0, 0], to: [4, 0, 0], text: "4" }, PEN);
    line.updateMatrixWorld(true);
    const label = line.children.at(-1) as Object3D;
    const ink = label.children.at(-1) as Mesh;
    for (const distance of [10, 30, 90]) {
      const camera = new PerspectiveCamera(40, 1.5, 1, 200);
      camera.position.set(distance, distance, distance);
      camera.lookAt(2, 0, 0);
      camera.updateMatrixWorld();
      ink.onBeforeRender(
        renderer as never as WebGLRenderer,
        new Scene(),
        camera,
        ink.geometry,
        ink.material as Material,
        null as never,
      );
      const ends = [-0.5, 0.5].map((y) => new Vector3(0, y, 0).applyMatrix4(ink.matrixWorld).project(camera).y);
      expect(((ends[1] - ends[0]) * HEIGHT) / 2).toBeCloseTo(13, 1);
    }
  });
});
