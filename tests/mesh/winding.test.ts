import { describe, expect, it } from "vitest";
import { reverseMesh } from "../../src/mesh/transform.js";
import { windingNumber } from "../../src/mesh/winding.js";
import { box, torus } from "../support/meshes.js";

describe("windingNumber", () => {
  it("is 1 inside, 0 outside and in a ring's opening, −1 inside an inward-facing solid", () => {
    expect(windingNumber(box(), [0.3, 0.9, 0.5])).toBeCloseTo(1, 12);
    expect(windingNumber(box(), [1.3, 0.9, 0.5])).toBeCloseTo(0, 12);
    expect(windingNumber(torus(3, 1, 30, 12), [0, 0, 0])).toBeCloseTo(0, 12);
    expect(windingNumber(torus(3, 1, 30, 12), [3, 0, 0.1])).toBeCloseTo(1, 12);
    expect(windingNumber(reverseMesh(box()), [0.5, 0.5, 0.5])).toBeCloseTo(-1, 12);
  });
});
