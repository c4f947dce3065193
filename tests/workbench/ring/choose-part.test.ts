import { signal } from "@preact/signals";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import {
  type ChoosingBench,
  choosePart,
  chooseStone,
  girdleLines,
  markChosen,
  sayChosen,
} from "../../../src/workbench/ring/choose-part.js";
import type { Path } from "../../../src/workbench/state/json-text.js";

/** One triangle that looks along +z. */
const buffers = {
  positions: Float32Array.of(0, 0, 0, 2, 0, 0, 0, 2, 0),
  normals: new Float32Array(9),
  triangles: Uint32Array.of(0, 1, 2),
};
const hit = { point: [0.5, 0.5, 0], triangle: 0, distance: 1 } as const;

function benchWith(ring: object | undefined) {
  const shown = signal<{ detail: string } | undefined>({ detail: "full" });
  const selected = signal<Path | undefined>(undefined);
  const bench = { selected, answers: { ring, of: { buffers: shown } } } as unknown as ChoosingBench;
  return { bench, selected, shown };
}

describe("a face that is pressed", () => {
  it("chooses the part that made it, by the way that it faces", async () => {
    const partAt = vi.fn(async () => ({ path: "pattern.regions[2].beads", names: [] }));
    const { bench, selected } = benchWith({ partAt });
    await choosePart(bench, buffers as never, hit);
    expect(partAt).toHaveBeenCalledWith({ point: [0.5, 0.5, 0], normal: [0, 0, 4] }, { detail: "full" });
    expect(selected.value).toEqual(["pattern", "regions", 2, "beads"]);
  });

  it("changes nothing where the ring cannot tell, or is none", async () => {
    for (const ring of [undefined, { partAt: () => Promise.reject(new Error("wrong")) }]) {
      const { bench, selected } = benchWith(ring);
      selected.value = ["size"];
      await choosePart(bench, buffers as never, hit);
      expect(selected.value).toEqual(["size"]);
    }
  });
});

describe("a stone that is pressed", () => {
  it("chooses its group, and its girdle is marked where it stands", () => {
    const { bench, selected } = benchWith(undefined);
    const square = [
      [1, 1],
      [-1, 1],
      [-1, -1],
      [1, -1],
    ] as const;
    const place = { body: 0, at: [0, 10, 3], out: [0, 1, 0], along: [1, 0, 0] } as const;
    const stones = {
      bodies: [{ outline: square }],
      stones: [
        { ...place, group: 2 },
        { ...place, group: 1 },
      ],
    };
    chooseStone(bench, stones.stones[0] as never);
    expect(selected.value).toEqual(["stones", 2]);
    chooseStone(bench, place as never);
    expect(selected.value).toEqual(["stones", 2]);
    const lines = girdleLines(stones as never, 2);
    // +y of the stone is out × along: towards −z.
    expect([...lines.slice(0, 6)]).toEqual([1, 10, 2, -1, 10, 2]);
    expect(lines).toHaveLength(4 * 6);
    expect(girdleLines(stones as never, 0)).toHaveLength(0);
  });
});

describe("what is chosen", () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it("is marked once it stands still, anew with each ring, and not once something else is chosen", async () => {
    const asked: string[] = [];
    const waiting: (() => void)[] = [];
    const partLines = ({ path }: { path: string }) =>
      new Promise((resolve) => {
        asked.push(path);
        waiting.push(() => resolve(Float32Array.of(asked.length, 0, 0, 0, 0, 0)));
      });
    const { bench, selected, shown } = benchWith({ partLines });
    const drawn: number[] = [];
    const end = markChosen(bench, { drawPart: (segments) => drawn.push(segments[0] ?? 0) });
    const answer = async () => {
      for (const go of waiting.splice(0)) go();
      await vi.advanceTimersByTimeAsync(0);
    };
    expect(drawn).toEqual([0]);
    selected.value = ["beads", 0];
    selected.value = ["profile", "bore"];
    await vi.advanceTimersByTimeAsync(500);
    expect(asked).toEqual(["profile.bore"]);
    await answer();
    expect(drawn).toEqual([0, 1]);
    shown.value = { detail: "draft" };
    await vi.advanceTimersByTimeAsync(500);
    // Chosen away before the answer came: it is not drawn.
    selected.value = undefined;
    await answer();
    expect(drawn).toEqual([0, 1, 0]);
    end();
    selected.value = ["beads", 0];
    await vi.advanceTimersByTimeAsync(500);
    expect(asked).toHaveLength(2);
  });

  it("is said by its own name, else by its field's", () => {
    const document = { pattern: { regions: [{ name: "leaf" }, {}] } };
    expect(sayChosen(document, ["pattern", "regions", 0, "beads"])).toBe("leaf");
    expect(sayChosen(document, ["pattern", "regions", 1])).toMatch(/2$/);
    expect(sayChosen(document, ["profile", "outside", "rail"])).not.toBe("");
  });
});
