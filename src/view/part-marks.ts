/**
 * Lines along the edges of a part of the ring, as `partLines` of a ring gives them: so that what is chosen is seen on the metal.
 */
import { Group, type Plane } from "three";
import { LineMaterial } from "three/addons/lines/LineMaterial.js";
import { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { LineSegmentsGeometry } from "three/addons/lines/LineSegmentsGeometry.js";
import { type Drawn, ORDER, PEN_DEFAULTS, type Pen } from "./label.js";

/** Widths of the line and of the paper beneath it, over the pen's: wide enough to be seen over glints. Chosen. */
const WIDE = 2;
const PAPER = 4;

/**
 * Lines on the metal, hidden where it hides them.
 *
 * @example
 * const marks = new PartMarks(await ring.partLines({ path: "pattern.regions[0]" }), { ink: "#1c6547", paper: "#f3f4f1" });
 * scene.add(marks.object);
 */
export class PartMarks implements Drawn {
  readonly object = new Group();
  readonly #lines: readonly LineSegments2[];

  /** @param segments six numbers each, mm */
  constructor(segments: Float32Array, { ink, paper, line = PEN_DEFAULTS.line }: Pen) {
    this.object.name = "part marks";
    const geometry = new LineSegmentsGeometry().setPositions(segments);
    const layers = [
      { color: paper, linewidth: PAPER * line, order: ORDER.line - 2 },
      { color: ink, linewidth: WIDE * line, order: ORDER.line - 1 },
    ];
    this.#lines = layers.map(({ color, linewidth, order }) => {
      // What is drawn later lies over what was drawn before at the very depth.
      const material = new LineMaterial({ color, linewidth, depthWrite: false });
      material.toneMapped = false;
      const lines = new LineSegments2(geometry, material);
      lines.renderOrder = order;
      lines.frustumCulled = false;
      return lines;
    });
    this.object.add(...this.#lines);
  }

  /** Leaves out what lies on the negative side of planes; the renderer needs `localClippingEnabled`. */
  clip(planes: readonly Plane[]): void {
    for (const { material } of this.#lines) material.clippingPlanes = [...planes];
  }

  /** Lets go of all that the graphics card holds of them, and takes them out of their scene. */
  dispose(): void {
    this.object.removeFromParent();
    for (const { geometry, material } of this.#lines) {
      geometry.dispose();
      material.dispose();
    }
  }
}
