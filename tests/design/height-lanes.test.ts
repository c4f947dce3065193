import { fitDesign, type Warning } from "annulet";
import { describe, expect, it } from "vitest";
import { heightLanes } from "../../src/design/height-lanes.js";
import { readDesign } from "../../src/design/read.js";

const texture = { texture: { form: "hammered", size: 1 }, height: 0.2 };
const image = { image: "heights.png", height: 0.3 };
const dot = { path: "M 0.3 -0.1 H 0.5 V 0.1 H 0.3 Z", height: 0.3 };
const hole = { path: dot.path, mode: "pierced" };
const ribbon = { path: "M 0 0 H 1", ribbon: { width: 0.6 }, height: 0.3 };

/** Three tiles round the finger: three times as long as high. */
const FIT = { repeats: 3, hold: "band" };

const ringOf = (pattern: object, beads: readonly object[] = []) => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.05,
  profile: { width: 5, thickness: 2, outside: { form: "flat" } },
  pattern: { fit: FIT, ...pattern },
  beads,
});

function stretchesOf(document: unknown): string[] {
  const warnings: Warning[] = [];
  fitDesign(document, { warn: (warning) => warnings.push(warning) });
  return warnings.filter(({ code }) => code === "tile-stretched").map(({ message }) => message.split(" is ")[0]);
}

describe("a stretched tile", () => {
  it.each([
    ["a texture", [texture]],
    ["an image", [image]],
    ["both", [texture, image]],
  ])("is no matter where all that there is comes of %s", (_, regions) => {
    expect(stretchesOf(ringOf({ regions }))).toEqual([]);
    expect(stretchesOf(ringOf({ regions }, [{ along: "seat-edge", diameter: 0.5 }]))).toEqual([]);
    expect(stretchesOf(ringOf({ regions }, [{ along: { v: 1 }, diameter: 0.5 }]))).toEqual([]);
  });

  it.each([
    ["a dot", { regions: [texture, dot] }],
    ["a hole", { regions: [texture, hole] }],
    ["a ribbon", { regions: [image, ribbon] }],
    ["a dot in the medallion", { regions: [texture], medallion: { tiles: 1, regions: [dot] } }],
    ["a dot at the ends", { regions: [texture], cover: 200, ends: { form: "ornament", regions: [dot] } }],
    ["nothing yet", {}],
  ])("is told where there is %s", (_, pattern) => {
    expect(stretchesOf(ringOf(pattern))).toEqual(["the tile"]);
  });

  it("is told where beads are drawn in the tile", () => {
    const runs = [{ along: { path: "M 0 0 H 1" }, diameter: 0.5 }];
    expect(stretchesOf(ringOf({ regions: [texture] }, runs))).toEqual(["the tile"]);
  });

  it("is told of each lane by itself", () => {
    const fit = { repeats: 3 };
    const lanes = [
      { name: "low", fit, regions: [texture] },
      { name: "high", fit, regions: [dot] },
    ];
    expect(stretchesOf(ringOf({ fit: { hold: "band" }, lanes }))).toEqual(["the tile of high"]);
    const path = "M 0 0 H 1";
    const named = (lane: string | undefined) => {
      const { pattern, beads } = readDesign(
        ringOf({ fit: { hold: "band" }, lanes }, [{ along: { path, lane }, diameter: 0.5 }]),
      );
      return pattern && heightLanes(pattern, beads);
    };
    expect(named("high")).toEqual(["low"]);
    expect(named("low")).toEqual([]);
    expect(named(undefined)).toEqual([]);
  });
});
