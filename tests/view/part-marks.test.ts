import { Plane, Scene, Vector3 } from "three";
import type { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { describe, expect, it } from "vitest";
import { PartMarks } from "../../src/view/part-marks.js";

describe("marks of a part", () => {
  const segments = Float32Array.of(0, 0, 0, 1, 0, 0, 1, 0, 0, 1, 2, 0);

  it("are lines of the pen over wider ones of the paper, hidden by metal, and go from their scene", () => {
    const marks = new PartMarks(segments, { ink: "#00ff00", paper: "#ffffff", line: 2 });
    const [paper, ink] = marks.object.children as LineSegments2[];
    expect([paper.material.color.getHexString(), ink.material.color.getHexString()]).toEqual(["ffffff", "00ff00"]);
    expect(paper.material.linewidth).toBeGreaterThan(ink.material.linewidth);
    expect(paper.renderOrder).toBeLessThan(ink.renderOrder);
    expect(ink.material.depthTest).toBe(true);
    expect([...ink.geometry.attributes.instanceStart.array]).toEqual([...segments]);
    const scene = new Scene().add(marks.object);
    marks.dispose();
    expect(scene.children).toEqual([]);
  });

  it("are cut with the ring, and whole again", () => {
    const marks = new PartMarks(segments, { ink: 0, paper: 0 });
    const materials = (marks.object.children as LineSegments2[]).map(({ material }) => material);
    const plane = new Plane(new Vector3(1, 0, 0), 0);
    marks.clip([plane]);
    expect(materials.map(({ clippingPlanes }) => clippingPlanes)).toEqual([[plane], [plane]]);
    marks.clip([]);
    expect(materials.map(({ clippingPlanes }) => clippingPlanes)).toEqual([[], []]);
  });
});
