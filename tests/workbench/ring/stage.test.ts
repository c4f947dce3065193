// Covers: src/workbench/ring/follow-bench.ts, src/workbench/ring/open-stage.ts, src/workbench/ring/paper-pens.ts
import { signal } from "@preact/signals";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Dimension } from "../../../src/entries/view.js";
import { followBench } from "../../../src/workbench/ring/follow-bench.js";
import { openStage } from "../../../src/workbench/ring/open-stage.js";
import { readPens } from "../../../src/workbench/ring/paper-pens.js";
import { newRingState } from "../../../src/workbench/ring/ring-state.js";
import { RingStage } from "../../../src/workbench/ring/stage.js";
import type { Bench } from "../../../src/workbench/state/bench.js";
import { smallRing } from "../../support/small-ring.js";

/** As much of a page as colours are read from: a probe's colour is its property's name. */
function fakeDocument() {
  const probe = { style: { color: "" }, remove: vi.fn() };
  const body = { append: vi.fn() };
  vi.stubGlobal("document", { createElement: () => probe, documentElement: {}, body });
  vi.stubGlobal("window", { document: { body } });
  vi.stubGlobal("getComputedStyle", () => ({ color: probe.style.color, fontSize: "20px" }));
  vi.stubGlobal("matchMedia", () => ({ addEventListener: vi.fn(), removeEventListener: vi.fn() }));
  return { probe, body };
}

let page: ReturnType<typeof fakeDocument>;

beforeEach(() => {
  page = fakeDocument();
});

afterEach(() => {
  vi.unstubAllGlobals();
});

test("colours are read where the style has them, and letters grow with the page's type", () => {
  const pens = readPens(page.body as never);
  expect(pens.chalk.ink).toBe("var(--chalk)");
  expect(pens.ink).toMatchObject({ ink: "var(--ink)", paper: "var(--paper)", letters: 16.25 });
  expect(pens.hatch).toEqual({ metal: "var(--metal-cut)", line: "var(--hatch)" });
  expect(page.probe.remove).toHaveBeenCalledOnce();
});

describe("the stage follows the bench", () => {
  const answer = <Value>(value: Value) => signal({ value, text: "{}", detail: "draft" as const });

  function follow(buffers: unknown) {
    const told: string[] = [];
    const drawn = new Map<string, readonly Dimension[]>();
    const stage = {
      show: (_: unknown, bore: number) => told.push(`show ${bore}`),
      dress: ({ material, finish }: { material: { name: string }; finish: string }) =>
        told.push(`${material.name} ${finish}`),
      cut: ({ kind }: { kind: string }) => told.push(`cut ${kind}`),
      drawDimensions: (layer: string, lines: readonly Dimension[]) => drawn.set(layer, lines),
      showStones: (stones: { stones: readonly unknown[] } | undefined) =>
        told.push(`stones ${stones?.stones.length ?? 0}`),
      drawPart: (segments: Float32Array) => told.push(`part ${segments.length}`),
      drawFindings: (findings: readonly unknown[]) => told.push(`findings ${findings.length}`),
      usePens: () => told.push("pens"),
      canvas: { dataset: {} as Record<string, string> },
    };
    const report = { band: { width: 6, thickness: 2, overall: 2.2 }, size: { diameter: 17 } };
    const of = {
      buffers: signal<unknown>(undefined),
      size: answer({ diameter: 17 }),
      report: answer(report),
      stones: answer({ bodies: [], stones: [{}, {}, {}] }),
      check: answer({ findings: [{ places: [] }, { places: [] }] }),
    };
    const document = { value: signal<Record<string, unknown>>({ material: "ag925" }) };
    const state = newRingState();
    const end = followBench(
      { answers: { of }, document, selected: signal(undefined) } as never as Bench,
      state,
      stage as never,
    );
    of.buffers.value = { value: buffers, text: "{}", detail: "draft" };
    return { told, drawn, stage, state, document, end };
  }

  test("what it shows, wears, cuts and draws", async () => {
    const { told, drawn, stage, state, document, end } = follow(await smallRing());
    expect(told).toContain("show 8.5");
    expect(stage.canvas.dataset.detail).toBe("draft");
    expect(told).toContain("findings 2");
    expect(drawn.get("dimensions")).toEqual([]);
    state.dimensions.value = true;
    expect(drawn.get("dimensions")?.map(({ text }) => text)).toEqual(["Ø 17.00", "6.00", "2.00"]);
    expect(told).toContain("stones 3");
    state.stones.value = false;
    expect(told.at(-1)).toBe("stones 0");
    state.findings.value = false;
    expect(told.at(-1)).toBe("findings 0");
    state.measured.value = [
      [0, 0, 0],
      [3, 4, 0],
    ];
    expect(drawn.get("measured")?.map(({ text }) => text)).toEqual(["5.00 mm"]);
    state.cut.value = { kind: "axis", angle: 10 };
    expect(told.at(-1)).toBe("cut axis");
    document.value.value = { material: "bronze" };
    state.finish.value = "satin";
    expect(told.at(-1)).toMatch(/bronze.* satin/i);
    end();
    const before = told.length;
    state.finish.value = "polished";
    state.cut.value = { kind: "none" };
    expect(told.length).toBe(before);
  });
});

test("without WebGL there is no stage, and the view says so", () => {
  const nothing = { getContext: () => null, addEventListener: vi.fn(), removeEventListener: vi.fn() };
  vi.spyOn(console, "error").mockImplementation(() => undefined);
  expect(() => new RingStage(nothing as never, readPens(page.body as never))).toThrow();
  const state = newRingState();
  const opened = openStage({ canvas: nothing as never, handle: { current: null }, bench: {} as never, state });
  expect(opened).toBeUndefined();
  expect(state.trouble.value).toBe("no-webgl");
  vi.restoreAllMocks();
});
