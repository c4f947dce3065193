// Across: marked triangles in pictures
import { describe, expect, it } from "vitest";
import { type Picture, takePicture } from "../../../src/output/picture/picture.js";
import { failureOf } from "../../support/failure-of.js";
import { box } from "../../support/meshes.js";

const SMALL = { width: 120, height: 90, ground: "clear" } as const;
const cube = box();

/** Pixels far more red than green, and all that see the mesh. */
function count({ pixels }: Picture): { red: number; seen: number } {
  let [red, seen] = [0, 0];
  for (let i = 0; i < pixels.length; i += 4) {
    if (pixels[i + 3] === 255) seen++;
    if (pixels[i + 3] === 255 && pixels[i] > 2 * pixels[i + 1]) red++;
  }
  return { red, seen };
}

describe("marked triangles", () => {
  it("are painted red, and no others", () => {
    expect(count(takePicture(cube, SMALL)).red).toBe(0);
    const all = count(takePicture(cube, { ...SMALL, marked: new Uint8Array(12).fill(1) }));
    expect(all.red).toBe(all.seen);
    expect(all.seen).toBeGreaterThan(1000);
    // The box's third and fourth triangle are its face at +x, square to this view.
    const view = { stance: "lying", azimuth: 0, elevation: 0 } as const;
    const half = new Uint8Array(12);
    half[2] = 1;
    const { red, seen } = count(takePicture(cube, { ...SMALL, view, marked: half }));
    expect(red / seen).toBeGreaterThan(0.47);
    expect(red / seen).toBeLessThan(0.53);
  });

  it("must be as many as the mesh has", () => {
    expect(failureOf(() => takePicture(cube, { marked: new Uint8Array(11) })).problems).toMatchObject([
      { code: "option-invalid", path: "marked", value: 11, allowed: "12 entries, one for each triangle" },
    ]);
  });
});
