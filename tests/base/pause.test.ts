import { afterEach, describe, expect, it, vi } from "vitest";
import { pause } from "../../src/base/pause.js";

afterEach(() => vi.unstubAllGlobals());

describe.each([
  ["where there is setImmediate", () => undefined],
  ["where there is none, as in browsers", () => vi.stubGlobal("setImmediate", undefined)],
])("pause, %s", (_, prepare) => {
  it("lets a timer run that is due", async () => {
    prepare();
    let fired = false;
    setTimeout(() => {
      fired = true;
    }, 0);
    let pauses = 0;
    // What is due may still stand behind what was asked for earlier, but not for ever.
    for (; !fired && pauses < 100; pauses++) {
      const until = performance.now() + 1;
      while (performance.now() < until);
      await pause();
    }
    expect(fired).toBe(true);
    expect(pauses).toBeLessThan(100);
  });
});
