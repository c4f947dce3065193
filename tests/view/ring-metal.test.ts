// Covers: src/view/geometry.ts, src/view/section-cut.ts, src/view/hatch.ts, src/view/studio-texture.ts
import { DataUtils, type Mesh, type MeshBasicMaterial, PerspectiveCamera, Plane, Scene, Vector3 } from "three";
import { describe, expect, test } from "vitest";
import { RingMetal, SectionCut, studioTexture } from "../../src/entries/view.js";
import { studioLight } from "../../src/output/picture/studio.js";
import { smallRing } from "../support/small-ring.js";

describe("a ring in metal", () => {
  test("shows the very arrays, and knows the ball about them", async () => {
    const buffers = await smallRing();
    const { object } = new RingMetal(buffers);
    expect(object.geometry.getAttribute("position").array).toBe(buffers.positions);
    expect(object.geometry.index?.array).toBe(buffers.triangles);
    const radius = object.geometry.boundingSphere?.radius ?? 0;
    object.geometry.computeBoundingBox();
    expect(radius).toBeGreaterThanOrEqual(object.geometry.boundingBox?.max.x ?? Number.NaN);
    expect(radius).toBeLessThan(14);
  });

  test("takes the look of any material, and of one's own", async () => {
    const metal = new RingMetal(await smallRing(), { material: "au750-yellow", finish: "satin" });
    const { material } = metal.object;
    expect(material.color.r).toBeGreaterThan(material.color.b * 2);
    expect(material.metalness).toBe(1);
    const satin = material.roughness;
    metal.dress({ material: "au750-yellow" });
    expect(material.roughness).toBeLessThan(satin);
    metal.dress({ material: "wax" });
    expect(material.metalness).toBe(0);
    metal.dress({ material: { name: "own", colour: [0.25, 0.5, 0.75], metal: true } });
    expect(material.color.toArray()).toEqual([0.25, 0.5, 0.75]);
    expect(() => metal.dress({ material: "unobtainium" })).toThrow(/unobtainium/);
  });

  test("lets go of the mesh that it showed before, and of everything in the end", async () => {
    const buffers = await smallRing();
    const metal = new RingMetal(buffers);
    const scene = new Scene();
    scene.add(metal.object);
    const gone: string[] = [];
    const { geometry, material } = metal.object;
    geometry.addEventListener("dispose", () => gone.push("first"));
    metal.show(buffers);
    expect(gone).toEqual(["first"]);
    metal.object.geometry.addEventListener("dispose", () => gone.push("second"));
    material.addEventListener("dispose", () => gone.push("material"));
    material.envMap?.addEventListener("dispose", () => gone.push("studio"));
    metal.dispose();
    expect(gone.sort()).toEqual(["first", "material", "second", "studio"]);
    expect(scene.children).toEqual([]);
  });

  test("is lit from where the camera stands: the key light stays at the reader's left", async () => {
    const metal = new RingMetal(await smallRing());
    const camera = new PerspectiveCamera();
    for (const angle of [0, 1, -2.5]) {
      camera.position.set(Math.sin(angle), 0.4, Math.cos(angle));
      camera.lookAt(0, 0, 0);
      metal.faceStudio(camera);
      expect(metal.object.material.envMapRotation.y).toBeCloseTo(angle, 6);
    }
  });
});

test("the studio's texture holds the light of pictures, direction by direction", () => {
  const texture = studioTexture();
  const { width, height, data } = texture.image;
  const light = new Float64Array(3);
  for (const direction of [
    [-0.75, 0.62, 0.35],
    [0.95, 0.2, 0.05],
    [0.1, -0.9, 0.2],
    [0.05, 0.1, -1],
  ]) {
    const [x, y, z] = new Vector3(...direction).normalize().toArray();
    studioLight(x, y, z, light);
    // As three looks a direction up in an equirectangular map.
    const i = Math.floor((Math.atan2(z, x) / (2 * Math.PI) + 0.5) * width) % width;
    const j = Math.floor((Math.asin(y) / Math.PI + 0.5) * height);
    const stored = [0, 1, 2].map((k) => DataUtils.fromHalfFloat((data as Uint16Array)[4 * (j * width + i) + k]));
    // A texel is 1.4 degrees wide.
    for (const k of [0, 1, 2]) expect(Math.abs(stored[k] - light[k])).toBeLessThan(0.12);
  }
});

describe("a cut", () => {
  test("takes away what lies before its plane, follows the ring and makes it whole again", async () => {
    const buffers = await smallRing();
    const metal = new RingMetal(buffers);
    const cut = new SectionCut(metal, { metal: "#ffffff", line: "#000000" });
    expect(cut.object.visible).toBe(false);
    const plane = new Plane(new Vector3(0.6, 0.8, 0), 2);
    cut.at(plane);
    expect(metal.object.material.clippingPlanes).toEqual([plane]);
    const [backs, fronts, cap] = cut.object.children as Mesh[];
    expect(plane.distanceToPoint(cap.position)).toBeCloseTo(0, 12);
    cap.updateMatrixWorld();
    expect(new Vector3(0, 0, 1).transformDirection(cap.matrixWorld).dot(plane.normal)).toBeCloseTo(-1, 12);
    for (const mesh of [backs, fronts]) expect((mesh.material as MeshBasicMaterial).clippingPlanes).toEqual([plane]);
    metal.show(buffers);
    cut.follow();
    expect(backs.geometry).toBe(metal.object.geometry);
    let gone = 0;
    for (const { material } of [backs, fronts, cap])
      (material as MeshBasicMaterial).addEventListener("dispose", () => gone++);
    cut.dispose();
    expect(gone).toBe(3);
    expect(metal.object.material.clippingPlanes).toEqual([]);
  });
});
