/**
 * SVG path data that is changed by hand: read into steps, each with its own text, and written with the text of every step that
 * still says the same. So what was not touched stays as it was written, and a step that was written relative to a point that
 * moved is written anew.
 */
import { type SVGCommand, SVGPathData, SVGPathDataParser } from "svg-pathdata";
import type { ArtPoint } from "./tile-units.js";

export type PathLetter = "M" | "L" | "H" | "V" | "C" | "S" | "Q" | "T" | "A" | "Z";

/** One command with absolute coordinates. */
export interface PathStep {
  readonly letter: PathLetter;
  readonly relative: boolean;
  /** Its control points, those too that S and T take over, then its end; none for Z. */
  readonly points: readonly ArtPoint[];
  readonly arc?: ArcShape | undefined;
  /** As it was read; none once its own points are others. */
  readonly written?: Written | undefined;
}

/** Radii, degrees, and which of the four arcs. */
export interface ArcShape {
  readonly rx: number;
  readonly ry: number;
  readonly turn: number;
  readonly large: boolean;
  readonly sweep: boolean;
}

interface Written {
  readonly text: string;
  /** Whether its letter is in the text, not taken over from the command before. */
  readonly lettered: boolean;
  /** Where it began. */
  readonly from: ArtPoint;
}

export interface PathText {
  readonly steps: readonly PathStep[];
  /** What follows the last command. */
  readonly tail: string;
}

/**
 * The longest path that is taken apart, characters: twice as long ones took 33 ms of CPU to read, which a drag does for each step.
 * Beyond it points lie too near each other to be taken hold of.
 */
export const LONGEST_PATH = 30_000;

const LETTERS = new Map<number, PathLetter>([
  [SVGPathData.MOVE_TO, "M"],
  [SVGPathData.LINE_TO, "L"],
  [SVGPathData.HORIZ_LINE_TO, "H"],
  [SVGPathData.VERT_LINE_TO, "V"],
  [SVGPathData.CURVE_TO, "C"],
  [SVGPathData.SMOOTH_CURVE_TO, "S"],
  [SVGPathData.QUAD_TO, "Q"],
  [SVGPathData.SMOOTH_QUAD_TO, "T"],
  [SVGPathData.ARC, "A"],
  [SVGPathData.CLOSE_PATH, "Z"],
]);

/** Reads path data; undefined for what is none, or is too long. */
export function readPathText(d: string): PathText | undefined {
  if (d.length > LONGEST_PATH) return undefined;
  try {
    return placed(cutUp(d));
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

interface Cut {
  readonly pieces: readonly { readonly command: SVGCommand; readonly text: string }[];
  readonly tail: string;
}

/**
 * Each command with its own stretch of the text. The parser knows that a command is whole once it sees what follows its last
 * number, so the letters are handed to it one by one.
 *
 * @throws SyntaxError
 */
function cutUp(d: string): Cut {
  const parser = new SVGPathDataParser();
  const commands: SVGCommand[] = [];
  const ends: number[] = [];
  for (let i = 0; i < d.length; i++) {
    parser.parse(d[i], commands);
    // A letter that closes the path is whole itself; all else ends before the sign that shows it.
    while (ends.length < commands.length) {
      const closing = commands[ends.length].type === SVGPathData.CLOSE_PATH;
      ends.push(closing ? i + 1 : i);
    }
  }
  parser.finish(commands);
  while (ends.length < commands.length) ends.push(d.length);
  const pieces = commands.map((command, i) => ({ command, text: d.slice(ends[i - 1] ?? 0, ends[i]) }));
  return { pieces, tail: d.slice(ends[ends.length - 1] ?? 0) };
}

/** Where the pen is: at a point, in a subpath that began at another, and with which control point behind it. */
interface Pen {
  at: ArtPoint;
  start: ArtPoint;
  /** The last step's letter and last control point. */
  last: { readonly letter: PathLetter; readonly control: ArtPoint } | undefined;
}

const ORIGIN: ArtPoint = [0, 0];

function placed({ pieces, tail }: Cut): PathText {
  const pen: Pen = { at: ORIGIN, start: ORIGIN, last: undefined };
  const steps = pieces.map(({ command, text }): PathStep => {
    const letter = LETTERS.get(command.type) as PathLetter;
    const relative = "relative" in command && command.relative;
    const written = { text, lettered: /[a-df-z]/i.test(text), from: pen.at };
    const arc = "rX" in command ? arcOf(command) : undefined;
    const step = { letter, relative, points: pointsOf(letter, command, pen), arc, written };
    follow(pen, step);
    return step;
  });
  return { steps, tail };
}

function arcOf({ rX, rY, xRot, lArcFlag, sweepFlag }: Extract<SVGCommand, { rX: number }>): ArcShape {
  return { rx: rX, ry: rY, turn: xRot, large: lArcFlag !== 0, sweep: sweepFlag !== 0 };
}

function pointsOf(letter: PathLetter, command: SVGCommand, pen: Pen): ArtPoint[] {
  const [dx, dy] = "relative" in command && command.relative ? pen.at : ORIGIN;
  const numbers = command as Partial<Record<"x" | "y" | "x1" | "y1" | "x2" | "y2", number>>;
  const point = (x: number | undefined, y: number | undefined): ArtPoint => [
    x === undefined ? pen.at[0] : x + dx,
    y === undefined ? pen.at[1] : y + dy,
  ];
  const end = point(numbers.x, numbers.y);
  if (letter === "Z") return [];
  if (letter === "C") return [point(numbers.x1, numbers.y1), point(numbers.x2, numbers.y2), end];
  if (letter === "S") return [reflected(pen, "CS"), point(numbers.x2, numbers.y2), end];
  if (letter === "Q") return [point(numbers.x1, numbers.y1), end];
  return letter === "T" ? [reflected(pen, "QT"), end] : [end];
}

/** The control point that S and T take over. */
function reflected({ at, last }: Pen, after: string): ArtPoint {
  if (last === undefined || !after.includes(last.letter)) return at;
  return [2 * at[0] - last.control[0], 2 * at[1] - last.control[1]];
}

function follow(pen: Pen, { letter, points }: Pick<PathStep, "letter" | "points">): void {
  const end = points[points.length - 1] ?? pen.start;
  pen.last = points.length > 1 ? { letter, control: points[points.length - 2] } : undefined;
  pen.at = end;
  if (letter === "M") pen.start = end;
}

/** Coordinates nearer than this are the same: rounding of what is added up. */
const SAME = 1e-9;

function same([ax, ay]: ArtPoint, [bx, by]: ArtPoint): boolean {
  return Math.abs(ax - bx) <= SAME && Math.abs(ay - by) <= SAME;
}

/** Writes path data: the text of what stays, the rest anew. */
export function writePathText({ steps, tail }: PathText): string {
  const pen: Pen = { at: ORIGIN, start: ORIGIN, last: undefined };
  let text = "";
  /** The command that numbers without a letter would be taken for. */
  let running = "";
  for (const step of steps) {
    const letter = fitting(step, pen);
    const name = step.relative ? letter.toLowerCase() : letter;
    text += stands(step, letter, name, running, pen)
      ? (step.written as Written).text
      : encoded(step, letter, name, pen, text);
    follow(pen, step);
    running = ({ M: "L", m: "l", Z: "", z: "" } as Readonly<Record<string, string>>)[name] ?? name;
  }
  return text + tail;
}

/** The letter by which a step can be written where the pen is: H, V, S and T say less than their neighbours. */
function fitting({ letter, points }: PathStep, pen: Pen): PathLetter {
  const [first] = points;
  if (letter === "H") return Math.abs(first[1] - pen.at[1]) <= SAME ? "H" : "L";
  if (letter === "V") return Math.abs(first[0] - pen.at[0]) <= SAME ? "V" : "L";
  if (letter === "S") return same(first, reflected(pen, "CS")) ? "S" : "C";
  if (letter === "T") return same(first, reflected(pen, "QT")) ? "T" : "Q";
  return letter;
}

/** Whether a step's text says the same where the pen is now. */
function stands(
  { letter, relative, written }: PathStep,
  fit: PathLetter,
  name: string,
  running: string,
  pen: Pen,
): boolean {
  if (written === undefined || fit !== letter) return false;
  if (relative && letter !== "Z" && !same(written.from, pen.at)) return false;
  return written.lettered || running === name;
}

/** Decimals that are written: far below what is flattened. */
const DECIMALS = 9;

function decimal(value: number): string {
  return String(Number(value.toFixed(DECIMALS)) + 0);
}

function encoded(
  { letter, relative, points, arc }: PathStep,
  fit: PathLetter,
  name: string,
  pen: Pen,
  before: string,
): string {
  const space = before === "" || /\s$/.test(before) ? "" : " ";
  if (fit === "Z") return `${space}${name}`;
  const [dx, dy] = relative ? pen.at : ORIGIN;
  const end = points[points.length - 1];
  const said = fit === "S" || fit === "T" ? points.slice(1) : points;
  const numbers =
    fit === "H" && letter === "H"
      ? [end[0] - dx]
      : fit === "V" && letter === "V"
        ? [end[1] - dy]
        : said.flatMap(([x, y]) => [x - dx, y - dy]);
  const shape = arc === undefined ? [] : [arc.rx, arc.ry, arc.turn, Number(arc.large), Number(arc.sweep)];
  return `${space}${name} ${[...shape, ...numbers].map(decimal).join(" ")}`;
}
