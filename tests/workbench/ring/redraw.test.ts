import { expect, test } from "vitest";
import { Redraw } from "../../../src/workbench/ring/redraw.js";

/** Frames that come when they are let come. */
function handFrames() {
  const asked = new Map<number, (time: number) => void>();
  let last = 0;
  return {
    request: (draw: (time: number) => void) => {
      asked.set(++last, draw);
      return last;
    },
    cancel: (frame: number) => void asked.delete(frame),
    /** Lets all come that were asked for. */
    come(): void {
      const now = [...asked.values()];
      asked.clear();
      for (const draw of now) draw(0);
    },
    waiting: () => asked.size,
  };
}

test("many changes are one picture, no change is none, and what moves by itself goes on until it rests", () => {
  const frames = handFrames();
  let [drawn, moving] = [0, 0];
  const redraw = new Redraw(() => {
    drawn++;
    return moving-- > 0;
  }, frames);
  frames.come();
  expect(drawn).toBe(0);
  redraw.ask();
  redraw.ask();
  expect(frames.waiting()).toBe(1);
  frames.come();
  frames.come();
  expect(drawn).toBe(1);
  moving = 2;
  redraw.ask();
  for (let i = 0; i < 6; i++) frames.come();
  expect(drawn).toBe(4);
  redraw.ask();
  redraw.end();
  frames.come();
  expect(drawn).toBe(4);
});
