import { describe, expect, it } from "vitest";
import { bridgeAt, type Meeting, shareAt } from "../../../src/relief/weave/bridge.js";
import { failureOf } from "../../flat/strips.js";

const meeting = (s: number, over: boolean, half = 0.4): Meeting => ({ s, over, half });
const options = { weave: { lift: 0.3 }, width: 1, name: "withy", path: "weave" };

describe("a bridge", () => {
  it("rises over the ribbon's width where there is room, and over what room there is otherwise", () => {
    const free = bridgeAt(meeting(5, true), [undefined, meeting(9, false)], options);
    expect(free).toEqual({ s: 5, level: 0.2, before: 1, after: 1 });
    const near = bridgeAt(meeting(5, true), [meeting(3.8, false), meeting(5.3, true)], options);
    // 1.2 between the crossings, less half of both half lengths.
    expect(near.before).toBeCloseTo(1.2 - 0.2 - 0.2, 12);
    expect(near.after).toBe(1);
    expect(bridgeAt(meeting(5, true), [undefined, undefined], { ...options, weave: { lift: 0.3, run: 2 } }).after).toBe(
      2,
    );
  });

  it("that has no room is refused with what there is", () => {
    const tight = failureOf(() => bridgeAt(meeting(5, true), [meeting(4.3499, false), undefined], options));
    expect([tight.code, tight.path, tight.allowed]).toEqual(["weave-too-tight", "weave.lift", "at most 0.25 mm"]);
    expect(
      bridgeAt(meeting(5, true), [meeting(4.3499, false), undefined], { ...options, weave: { lift: 0.19 } }).before,
    ).toBeCloseTo(0.2501, 12);
    const long = failureOf(() =>
      bridgeAt(meeting(5, true), [meeting(3.8, false), undefined], { ...options, weave: { lift: 0.3, run: 0.9 } }),
    );
    expect([long.path, long.allowed]).toEqual(["weave.run", "at most 0.8 mm"]);
    const none = failureOf(() => bridgeAt(meeting(5, true), [meeting(4.9, false), undefined], options));
    expect(none.allowed).toBe("crossings farther apart");
  });

  it("is level in the middle, down at its ends, half way up half way, and without a corner", () => {
    const bridges = [{ s: 5, level: 0.2, before: 1, after: 0.5 }];
    expect([4.8, 5, 5.2].map((s) => shareAt(bridges, s))).toEqual([1, 1, 1]);
    expect([3.8, 5.7, 9].map((s) => shareAt(bridges, s))).toEqual([0, 0, 0]);
    expect(shareAt(bridges, 4.3)).toBeCloseTo(0.5, 12);
    expect(shareAt(bridges, 5.45)).toBeCloseTo(0.5, 12);
    for (const s of [3.8, 4.8, 5.2, 5.7]) {
      const slope = (shareAt(bridges, s + 1e-6) - shareAt(bridges, s - 1e-6)) / 2e-6;
      expect(Math.abs(slope)).toBeLessThan(1e-4);
    }
  });
});
