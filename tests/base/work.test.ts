// Covers: src/base/pausing.ts
import { describe, expect, it } from "vitest";
import { LIMITS } from "../../src/base/limits.js";
import { finish, type Pausing } from "../../src/base/pausing.js";
import { Work } from "../../src/base/work.js";

function* counting(to: number, did: (i: number) => void): Pausing<string> {
  for (let i = 0; i < to; i++) {
    yield `regions[${i}]`;
    did(i);
  }
  return "done";
}

/** Keeps the thread busy for so long. */
function busy(ms: number): void {
  for (const end = performance.now() + ms; performance.now() < end; ) {
    // Nothing else.
  }
}

describe("work in pieces", () => {
  it("comes to the same at once and giving way", async () => {
    const [now, later]: number[][] = [[], []];
    expect(finish(counting(5, (i) => now.push(i)))).toBe("done");
    const work = new Work();
    expect(await work.through(counting(5, (i) => later.push(i)))).toBe("done");
    expect(later).toEqual(now);
    expect(work.at).toBe("regions[4]");
  });

  it("hears a signal that goes up while it is busy, long before it is done", async () => {
    const controller = new AbortController();
    setTimeout(() => controller.abort(new Error("enough")), 0);
    let done = 0;
    const slow = counting(1000, () => {
      busy(20);
      done++;
    });
    await expect(new Work(LIMITS, controller.signal).through(slow)).rejects.toThrow("enough");
    expect(done).toBeLessThan(100);
  });
});

describe("steps", () => {
  it("tell a share that grows with each and never reaches the whole, more or fewer than were expected", async () => {
    const told: number[] = [];
    const work = new Work(LIMITS, undefined, (share) => told.push(share));
    work.expect(5);
    for (let i = 0; i < 31; i++) work.step();
    expect(told).toHaveLength(31);
    expect(told).toEqual([...new Set(told)].sort((a, b) => a - b));
    expect(told[4]).toBeCloseTo(0.8, 12);
    expect(told[30]).toBeLessThan(1);
    await work.through(counting(3, () => undefined));
    await work.rest();
    expect(told.length).toBeGreaterThanOrEqual(35);
    expect(() => new Work().step()).not.toThrow();
  });
});

describe("counting", () => {
  it("adds corners up, and holds triangles one by one", () => {
    const work = new Work({ ...LIMITS, corners: 100, triangles: 50 });
    work.addCorners(60, "a");
    expect(() => work.addCorners(60, "b")).toThrow(/^b: the art comes to about 120 corners/);
    work.requireTriangles(50, "a");
    expect(() => work.requireTriangles(12_500_000, "pattern.regions[3]")).toThrow(/regions\[3\]: .* about 13 million/);
  });
});
