import { signal } from "@preact/signals";
import { expect, test } from "vitest";
import { pressKey } from "../../../src/workbench/ring/press-key.js";
import type { Place } from "../../../src/workbench/ring/ring-state.js";

/** Presses a key; what was done, in words, and whether the page was kept from doing its own. */
function press(key: string, held: { readonly ctrlKey?: boolean } = {}): readonly string[] {
  const done: string[] = [];
  const measured = signal<readonly Place[] | undefined>([]);
  const event = {
    key,
    ctrlKey: false,
    metaKey: false,
    altKey: false,
    ...held,
    preventDefault: () => done.push("kept"),
  };
  pressKey(event, {
    stage: {
      turn: (left, up) => done.push(`turn ${Math.sign(left)} ${Math.sign(up)}`),
      zoom: (factor) => done.push(factor > 1 ? "nearer" : "farther"),
      canvas: { clientWidth: 300, clientHeight: 200 },
    },
    state: { measured },
    look: (name) => done.push(name),
    pick: (x, y) => done.push(`pick ${x} ${y}`),
  });
  if (measured.value === undefined) done.push("ended");
  return done;
}

test("keys turn the ring, go nearer, take a place and end measuring; all others are left to the page", () => {
  expect(press("ArrowLeft")).toEqual(["kept", "turn 1 0"]);
  expect(press("ArrowDown")).toEqual(["kept", "turn 0 -1"]);
  expect(press("+")).toEqual(["kept", "nearer"]);
  expect(press("-")).toEqual(["kept", "farther"]);
  expect(press("Home")).toEqual(["kept", "turned"]);
  expect(press("Enter")).toEqual(["kept", "pick 150 100"]);
  expect(press("Escape")).toEqual(["kept", "ended"]);
  for (const key of ["Tab", "a", "constructor"]) expect(press(key)).toEqual([]);
  expect(press("ArrowLeft", { ctrlKey: true })).toEqual([]);
});
