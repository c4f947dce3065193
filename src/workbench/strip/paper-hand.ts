/**
 * The pointers on the paper: one takes hold of it, two draw it apart, and one that does not move presses.
 */
import type { FlatView, ScreenPoint } from "./flat-view.js";
import { panned, zoomed } from "./flat-view.js";

/** A pointer that has moved less presses, CSS pixels: a hand is not still. Chosen. */
const STILL = 5;

interface Pointer {
  readonly from: ScreenPoint;
  at: ScreenPoint;
}

/** What a pointer's end came to: a press at a place, or nothing. */
export type Press = ScreenPoint | undefined;

export class PaperHand {
  readonly #pointers = new Map<number, Pointer>();
  /** Whether the pointers that are down have moved the paper. */
  #moved = false;

  /** Whether the paper is held. */
  get holds(): boolean {
    return this.#pointers.size > 0;
  }

  down(id: number, at: ScreenPoint): void {
    if (this.#pointers.size === 0) this.#moved = false;
    else this.#moved = true;
    this.#pointers.set(id, { from: at, at });
  }

  /** The view as it follows. */
  move(id: number, at: ScreenPoint, view: FlatView, size: ScreenPoint): FlatView {
    const pointer = this.#pointers.get(id);
    if (pointer === undefined) return view;
    const before = pointer.at;
    if (Math.hypot(at[0] - pointer.from[0], at[1] - pointer.from[1]) > STILL) this.#moved = true;
    if (!this.#moved) return view;
    pointer.at = at;
    const other = [...this.#pointers].find(([one]) => one !== id)?.[1].at;
    if (other === undefined) return panned(view, [at[0] - before[0], at[1] - before[1]]);
    const apart = Math.hypot(before[0] - other[0], before[1] - other[1]);
    const now = Math.hypot(at[0] - other[0], at[1] - other[1]);
    const middle: ScreenPoint = [(before[0] + other[0]) / 2, (before[1] + other[1]) / 2];
    const nearer = apart > 0 && now > 0 ? zoomed(view, size, middle, now / apart) : view;
    return panned(nearer, [(at[0] - before[0]) / 2, (at[1] - before[1]) / 2]);
  }

  up(id: number): Press {
    const pointer = this.#pointers.get(id);
    this.#pointers.delete(id);
    return pointer === undefined || this.#moved ? undefined : pointer.at;
  }

  /** The pointer was taken away by something else. */
  lose(id: number): void {
    this.#pointers.delete(id);
  }
}

/** By which factor a wheel comes nearer; `deltaMode` 1 counts lines, 2 pages. */
export function wheelFactor({ deltaY, deltaMode }: Pick<WheelEvent, "deltaY" | "deltaMode">): number {
  const PIXELS = [1, 16, 400];
  const MOST = 240;
  const PER_PIXEL = 0.0022;
  const turned = Math.min(MOST, Math.max(-MOST, deltaY * PIXELS[deltaMode]));
  return Math.exp(-PER_PIXEL * turned);
}

/** What a key does to the view: how far it moves, CSS pixels, or by which factor it comes nearer. */
export function viewKey(key: string): { readonly by?: ScreenPoint; readonly factor?: number } | undefined {
  const STRIDE = 60;
  const FACTOR = 1.25;
  const strides: Readonly<Record<string, ScreenPoint>> = {
    ArrowLeft: [STRIDE, 0],
    ArrowRight: [-STRIDE, 0],
    ArrowUp: [0, STRIDE],
    ArrowDown: [0, -STRIDE],
  };
  if (Object.hasOwn(strides, key)) return { by: strides[key] };
  if (key === "+" || key === "=") return { factor: FACTOR };
  return key === "-" ? { factor: 1 / FACTOR } : undefined;
}
