// Covers: src/base/pausing.ts
/**
 * How much is handled between two chances to hear a signal, counted, of designs in which one step was long: an image and a long
 * row of tiles in a pattern that stops, one body of many motifs, an outline of many corners, a long text.
 */
import { Clipper64, ClipperOffset } from "clipper2-ts";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { fileSource } from "../../src/entries/node.js";
import { build, type Kernel, manifoldKernel } from "../../src/index.js";
import { GrowingPoints } from "../../src/mesh/growing.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { greyPng } from "../art/image/pngs.js";

/** Its own image under nothing: half of a ring is one piece of work for the kernel. */
const TILTED = greyPng(32, 32, (x, y) => Math.max(0, 0.8 - Math.hypot(x - 0.45, y - 0.53) * 2));

/** A round outline of so many corners, whose edge is wavy. */
function wavy(corners: number): string {
  const points = Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const radius = 35 * (1 + 0.1 * Math.sin(40 * angle));
    return `${(50 + radius * Math.cos(angle)).toFixed(3)} ${(50 + radius * Math.sin(angle)).toFixed(3)}`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><path d="M${points.join("L")}Z"/></svg>`;
}

const fonts = fileSource();
const files = (name: string) => (name === "a.png" ? TILTED : name === "wavy.svg" ? wavy(6000) : fonts(name));

const band = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  profile: { width: 6, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
  tolerance: 0.02,
};

const motif = { motif: { name: "foil" }, height: 0.3 };

/**
 * Each design with the most that is handled between two chances, and the least that is handled in all, so that something
 * is known to be counted: triangles of the bodies of one operation of the kernel, corners in polygon operations, points of flat
 * bodies. As measured, the bounds with half as much again, the rest halved.
 */
const designs: readonly (readonly [what: string, design: object, most: Handled, least: Handled])[] = [
  [
    "an image under a cover",
    {
      ...band,
      pattern: {
        cover: 300,
        fit: { repeats: 8 },
        regions: [{ image: "a.png", height: 0.4, map: { resolution: 0.08 } }],
      },
    },
    { triangles: 25_000, corners: 1, points: 13_000 },
    { triangles: 25_000, corners: -1, points: 50_000 },
  ],
  [
    "one body of many motifs",
    { ...band, pattern: { fit: { repeats: 24, rows: 4 }, regions: [motif] } },
    { triangles: 2_000, corners: 3_400, points: 1_000 },
    { triangles: 500, corners: 2_500, points: 2_500 },
  ],
  [
    "an outline of many corners",
    { ...band, pattern: { fit: { repeats: 6 }, regions: [{ svg: "wavy.svg", unit: "mm", height: 0.3 }] } },
    { triangles: 12_000, corners: 9_000, points: 12_500 },
    { triangles: 3_500, corners: 30_000, points: 8_000 },
  ],
  [
    "many repeats under a cover",
    {
      ...band,
      pattern: {
        cover: 340,
        fit: { repeats: 120, hold: "band" },
        regions: [{ path: "M 0.2 -0.45 C 0.5 -0.3 0.8 -0.2 0.8 0 S 0.5 0.3 0.2 0.45 Z", height: 0.3 }],
      },
    },
    { triangles: 20_000, corners: 4_700, points: 1_000 },
    { triangles: 6_000, corners: 15_000, points: 13_000 },
  ],
  [
    "a long text",
    { ...band, lettering: [{ text: "sea lavender ".repeat(8).trim(), at: "bore", height: 0.5, depth: 0.1 }] },
    { triangles: 21_000, corners: 4_000, points: 1_000 },
    { triangles: 7_000, corners: 19_000, points: 15_000 },
  ],
];

interface Handled {
  readonly triangles: number;
  readonly corners: number;
  readonly points: number;
}

const NOTHING = { triangles: 0, corners: 0, points: 0 };

/** What is handled since the last chance, the most of it so far, and all. */
let counted = { now: { ...NOTHING }, most: { ...NOTHING }, all: { ...NOTHING } };

function count(kind: keyof Handled, by: number): void {
  counted.now[kind] += by;
  counted.all[kind] += by;
  counted.most[kind] = Math.max(counted.most[kind], counted.now[kind]);
}

/** An operation takes what is united so far and one part more: all of the parts at most. */
function operate(...parts: readonly Mesh[]): void {
  counted.now.triangles = 0;
  for (const { triangles } of parts) count("triangles", triangles.length / 3);
}

const kernel: Kernel = {
  name: "counting",
  union: (parts, ...more) => {
    operate(...parts);
    return manifoldKernel.union(parts, ...more);
  },
  subtract: (body, tool, signal) => {
    operate(body, tool);
    return manifoldKernel.subtract(body, tool, signal);
  },
  cut: manifoldKernel.cut,
};

/** Has a method of others' objects count before it works. */
function listen<Name extends string>(
  object: Record<Name, (...given: never[]) => unknown>,
  name: Name,
  hear: (given: readonly unknown[]) => void,
): void {
  const method = object[name];
  object[name] = function (this: unknown, ...given: never[]) {
    hear(given);
    return method.apply(this, given);
  };
  restore.push(() => {
    object[name] = method;
  });
}

const restore: (() => void)[] = [];

const cornersIn = ([paths]: readonly unknown[]) =>
  (paths as readonly (readonly unknown[])[]).reduce((sum, path) => sum + path.length, 0);

describe("a signal is heard after a bounded piece of work", () => {
  beforeEach(() => {
    // A clock by which all work is long, so that it gives way wherever it may.
    let now = 0;
    vi.spyOn(performance, "now").mockImplementation(() => {
      now += 50;
      return now;
    });
    counted = { now: { ...NOTHING }, most: { ...NOTHING }, all: { ...NOTHING } };
    listen(globalThis as never, "setImmediate", () => {
      counted.now = { ...NOTHING };
    });
    const corners = (given: readonly unknown[]) => count("corners", cornersIn(given));
    for (const name of ["addSubjectPaths", "addClipPaths", "addSubject", "addClip", "addOpenSubject"]) {
      if (name in Clipper64.prototype) listen(Clipper64.prototype as never, name, corners);
    }
    listen(ClipperOffset.prototype as never, "addPaths", corners);
    listen(GrowingPoints.prototype as never, "push", () => count("points", 1));
  });

  afterEach(() => {
    for (const back of restore.splice(0).toReversed()) back();
    vi.restoreAllMocks();
  });

  it.each(designs)("%s", async (_, design, most, least) => {
    await build(design, { files, kernel, limits: { seconds: 1e6 } });
    for (const kind of ["triangles", "corners", "points"] as const) {
      expect(counted.most[kind], kind).toBeLessThanOrEqual(most[kind]);
      expect(counted.all[kind], kind).toBeGreaterThan(least[kind]);
    }
  });
});
