/**
 * The three sizes that every ring is drawn with: bore, band width, thickness.
 */
import { Group } from "three";
import { type Dimension, makeDimensionLine } from "./dimension-line.js";
import type { Drawn, Pen } from "./label.js";

/** Sizes of a ring, mm, as its report tells them: `size.diameter`, `band.width`, `band.thickness`, `band.overall`. */
export interface RingSizes {
  /** Of the bore at its narrowest. */
  readonly diameter: number;
  readonly width: number;
  readonly thickness: number;
  /** From the bore to the highest point of all: dimension lines stand clear of it. Default the thickness. */
  readonly overall?: number | undefined;
}

/** From the ring to its dimension lines, mm. Chosen. */
const CLEAR = 1.6;

/** How a length is written: mm to text. */
export type WriteLength = (length: number) => string;

/** To a hundredth of a millimetre, with a point. */
export const writeLength: WriteLength = (length) => length.toFixed(2);

/** The bore's diameter across the bore, the band's width at its right, its thickness at the top. */
export function dimensionsOf(sizes: RingSizes, write: WriteLength = writeLength): readonly Dimension[] {
  const { diameter, width, thickness, overall = thickness } = sizes;
  const bore = diameter / 2;
  const outside = bore + Math.max(thickness, overall);
  return [
    { from: [-bore, 0, 0], to: [bore, 0, 0], text: `Ø ${write(diameter)}` },
    {
      from: [bore + thickness, 0, -width / 2],
      to: [bore + thickness, 0, width / 2],
      offset: [outside - bore - thickness + CLEAR, 0, 0],
      text: write(width),
    },
    {
      from: [0, bore, width / 2],
      to: [0, bore + thickness, width / 2],
      offset: [0, 0, CLEAR],
      text: write(thickness),
      arrows: "outside",
    },
  ];
}

/**
 * Dimension lines of a ring, or any of your own: add `object` to the scene, and dispose of it in the end.
 *
 * @throws RangeError for a letter that cannot be drawn
 *
 * @example
 * const { size, band } = await ring.report();
 * const lines = new DimensionLines(dimensionsOf({ ...band, diameter: size.diameter }), { ink: "#14202c", paper: "#f3f4f1" });
 * scene.add(lines.object);
 */
export class DimensionLines implements Drawn {
  readonly object = new Group();
  readonly #drawn: readonly Drawn[];

  constructor(dimensions: readonly Dimension[], pen: Pen) {
    this.object.name = "dimension lines";
    this.#drawn = dimensions.map((dimension) => makeDimensionLine(dimension, pen));
    this.object.add(...this.#drawn.map(({ object }) => object));
  }

  /** Lets go of all that the graphics card holds of them, and takes them out of their scene. */
  dispose(): void {
    this.object.removeFromParent();
    for (const drawn of this.#drawn) drawn.dispose();
  }
}
