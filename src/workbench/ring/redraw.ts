/**
 * Draws when something changed, at most once a frame, and not at all otherwise.
 */

/** How frames are asked for; `requestAnimationFrame` and its end. */
export interface Frames {
  request(draw: (time: number) => void): number;
  cancel(frame: number): void;
}

const BROWSER_FRAMES: Frames = {
  request: (draw) => requestAnimationFrame(draw),
  cancel: (frame) => cancelAnimationFrame(frame),
};

export class Redraw {
  readonly #draw: (time: number) => boolean;
  readonly #frames: Frames;
  #frame: number | undefined;

  /** @param draw draws; true where it must go on in the next frame, since something moves by itself */
  constructor(draw: (time: number) => boolean, frames: Frames = BROWSER_FRAMES) {
    this.#draw = draw;
    this.#frames = frames;
  }

  /** Something changed. */
  ask(): void {
    this.#frame ??= this.#frames.request((time) => {
      this.#frame = undefined;
      if (this.#draw(time)) this.ask();
    });
  }

  end(): void {
    if (this.#frame !== undefined) this.#frames.cancel(this.#frame);
    this.#frame = undefined;
  }
}
