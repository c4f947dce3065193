import { describe, expect, it } from "vitest";
import { hasBrowser, runInBrowser } from "./support/browser.js";

/** Unites two cubes of side 2, one moved by (1, 1, 1): 8 + 8 − 1 = 15. */
const KERNEL_PAGE = `
import load from "manifold-3d";
export async function run() {
  const kernel = await load();
  kernel.setup();
  const cube = kernel.Manifold.cube(2);
  const moved = cube.translate(1, 1, 1);
  const both = cube.add(moved);
  const answer = { volume: both.volume(), triangles: both.numTri(), agent: navigator.userAgent };
  for (const solid of [cube, moved, both]) solid.delete();
  return answer;
}`;

describe.skipIf(!hasBrowser())("in a browser", () => {
  it("runs the WASM kernel", async () => {
    const answer = (await runInBrowser(KERNEL_PAGE)) as { volume: number; triangles: number; agent: string };
    expect(answer.agent).toMatch(/Chrome/);
    expect(answer.volume).toBeCloseTo(15, 9);
    expect(answer.triangles).toBeGreaterThan(12);
  });

  it("passes on what the page throws", async () => {
    await expect(runInBrowser('export function run() { throw new Error("on purpose"); }')).rejects.toThrow(
      "on purpose",
    );
  });
});
