import { describe, expect, it } from "vitest";
import { openness } from "../../../src/output/picture/openness.js";
import type { PixelView } from "../../../src/output/picture/pixel-view.js";

/** A surface by depth that faces the camera. */
function surfaceBy(depthAt: (x: number, y: number) => number): PixelView {
  const [width, height, focal] = [80, 60, 2000];
  const depth = new Float32Array(width * height);
  const normal = new Float32Array(3 * width * height);
  for (let i = 0; i < depth.length; i++) {
    depth[i] = depthAt(i % width, Math.floor(i / width));
    normal[3 * i + 2] = -1;
  }
  return { width, height, focal, depth, normal };
}

describe("openness", () => {
  it("is 1 on a plane and where nothing is seen", () => {
    const open = openness(
      surfaceBy((x) => (x < 20 ? 0 : 100)),
      1,
    );
    expect(Math.min(...open)).toBeGreaterThan(0.99);
  });

  it("falls in a groove, the more the deeper it is, and is back to 1 beyond the reach", () => {
    const groove = (deep: number) =>
      openness(
        surfaceBy((x) => (x >= 36 && x < 44 ? 100 + deep : 100)),
        1,
      );
    // 8 pixels are 0.4 mm wide at this depth.
    const [shallow, middle, deep] = [0.1, 0.3, 0.8].map((depth) => groove(depth)[30 * 80 + 40]);
    expect(shallow).toBeLessThan(0.995);
    expect(middle).toBeLessThan(shallow);
    expect(deep).toBeLessThan(middle);
    expect(groove(0.8)[30 * 80 + 5]).toBeGreaterThan(0.98);
  });
});
