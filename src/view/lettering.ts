/**
 * Figures as on drawings, of strokes one tenth of their height wide (the proportions of ISO 3098 type B, shapes of our own), as
 * triangles: so numbers in space need neither a font nor a canvas.
 */
import { BufferAttribute, BufferGeometry } from "three";
import { arcAround, type Stroke } from "./strokes.js";

/** A letter: how wide it is and its strokes, in heights; y up from the line. */
interface Letter {
  readonly wide: number;
  readonly strokes: readonly Stroke[];
}

/** Stroke, and space between letters, over the height. */
const STROKE = 0.1;
const SPACE = 0.2;

const oval = (x: number, y: number, rx: number, ry: number): Stroke => arcAround([x, y], [rx, ry], 0, 360);

const LETTERS: Readonly<Record<string, Letter>> = {
  "0": { wide: 0.5, strokes: [oval(0.25, 0.5, 0.25, 0.5)] },
  "1": {
    wide: 0.25,
    strokes: [
      [
        [0, 0.75],
        [0.25, 1],
        [0.25, 0],
      ],
    ],
  },
  "2": { wide: 0.5, strokes: [[...arcAround([0.25, 0.74], [0.25, 0.26], 170, -40), [0, 0], [0.5, 0]]] },
  "3": {
    wide: 0.5,
    strokes: [[...arcAround([0.24, 0.77], [0.23, 0.23], 150, -90), ...arcAround([0.24, 0.27], [0.26, 0.27], 90, -150)]],
  },
  "4": {
    wide: 0.55,
    strokes: [
      [
        [0.4, 0],
        [0.4, 1],
        [0, 0.3],
        [0.55, 0.3],
      ],
    ],
  },
  "5": {
    wide: 0.5,
    strokes: [[[0.46, 1], [0.08, 1], [0.04, 0.56], ...arcAround([0.23, 0.32], [0.27, 0.32], 120, -150)]],
  },
  "6": {
    wide: 0.5,
    strokes: [[[0.38, 1], [0.06, 0.5], ...arcAround([0.25, 0.3], [0.25, 0.3], 160, -200)]],
  },
  "7": {
    wide: 0.5,
    strokes: [
      [
        [0, 1],
        [0.5, 1],
        [0.15, 0],
      ],
    ],
  },
  "8": { wide: 0.5, strokes: [oval(0.25, 0.77, 0.21, 0.23), oval(0.25, 0.27, 0.25, 0.27)] },
  "9": {
    wide: 0.5,
    strokes: [[[0.12, 0], [0.44, 0.5], ...arcAround([0.25, 0.7], [0.25, 0.3], -20, 340)]],
  },
  ".": {
    wide: 0.06,
    strokes: [
      [
        [0.03, 0],
        [0.03, 0.04],
      ],
    ],
  },
  ",": {
    wide: 0.1,
    strokes: [
      [
        [0.07, 0.03],
        [0.02, -0.14],
      ],
    ],
  },
  "-": {
    wide: 0.35,
    strokes: [
      [
        [0, 0.42],
        [0.35, 0.42],
      ],
    ],
  },
  m: {
    wide: 0.72,
    strokes: [
      [
        [0, 0],
        [0, 0.66],
      ],
      [...arcAround([0.18, 0.46], [0.18, 0.2], 180, 0), [0.36, 0]],
      [...arcAround([0.54, 0.46], [0.18, 0.2], 180, 0), [0.72, 0]],
    ],
  },
  Ø: {
    wide: 0.66,
    strokes: [
      oval(0.33, 0.5, 0.33, 0.33),
      [
        [0.03, 0],
        [0.63, 1],
      ],
    ],
  },
  " ": { wide: 0.2, strokes: [] },
};

/** Letters that can be drawn. */
export const DRAWABLE = Object.keys(LETTERS).join("");

/** How wide a text is over its height. */
export function lettersWide(text: string): number {
  return lettersOf(text).reduce((sum, { wide }) => sum + wide + SPACE, -SPACE);
}

/**
 * A text in the plane z = 0, one high, its middle at the origin.
 *
 * @throws RangeError for a letter that is none of `DRAWABLE`
 */
export function letteringGeometry(text: string): BufferGeometry {
  const corners: number[] = [];
  let left = -lettersWide(text) / 2;
  for (const { wide, strokes } of lettersOf(text)) {
    for (const stroke of strokes) {
      const moved = stroke.map(([x, y]) => [x + left, y - 0.5] as const);
      layStroke(moved, STROKE / 2, corners);
    }
    left += wide + SPACE;
  }
  return new BufferGeometry().setAttribute("position", new BufferAttribute(new Float32Array(corners), 3));
}

function lettersOf(text: string): readonly Letter[] {
  return [...text].map((letter) => {
    if (!Object.hasOwn(LETTERS, letter)) throw new RangeError(`no strokes for ${JSON.stringify(letter)}`);
    return LETTERS[letter];
  });
}

/** Corners of a round dot. */
const DOT = 8;

/** Triangles along a stroke, with a dot on every corner of it. */
function layStroke(stroke: Stroke, half: number, corners: number[]): void {
  stroke.forEach(([x, y], at) => {
    for (let k = 0; k < DOT; k++) {
      const [a, b] = [(2 * Math.PI * k) / DOT, (2 * Math.PI * (k + 1)) / DOT];
      corners.push(x, y, 0, x + half * Math.cos(a), y + half * Math.sin(a), 0);
      corners.push(x + half * Math.cos(b), y + half * Math.sin(b), 0);
    }
    if (at === 0) return;
    const [fromX, fromY] = stroke[at - 1];
    const length = Math.hypot(x - fromX, y - fromY);
    if (length === 0) return;
    const [across, along] = [(-(y - fromY) / length) * half, ((x - fromX) / length) * half];
    corners.push(fromX - across, fromY - along, 0, x - across, y - along, 0, x + across, y + along, 0);
    corners.push(fromX - across, fromY - along, 0, x + across, y + along, 0, fromX + across, fromY + along, 0);
  });
}
