// Covers: src/view/gem-material.ts, src/view/gem-shader.ts
import { PerspectiveCamera, Plane, Scene, type ShaderMaterial, Vector3 } from "three";
import { describe, expect, test } from "vitest";
import { lookOf, RingStones } from "../../src/entries/view.js";
import { stonesInView } from "../../src/output/stones/stones-in-view.js";
import { placeOn } from "../support/place-stones.js";

const setting = { form: "flush" };

/** Four in a row from 60° to 120°, and a cabochon at the back. */
const stones = async () =>
  stonesInView(
    await placeOn([
      { size: 1.5, gem: "ruby", place: { form: "row", count: 4, over: { from: 60, to: 120 } }, setting },
      { cut: "cabochon", size: 2, gem: "turquoise", place: { form: "single", angle: 270 }, setting },
    ]),
  );

describe("a ring's stones", () => {
  test("are met by a ray from outside, each as itself, the nearest first", async () => {
    const shown = await stones();
    const drawn = new RingStones(shown);
    for (const stone of shown.stones) {
      const origin = stone.at.map((x, k) => x + 10 * stone.out[k]) as [number, number, number];
      const direction = stone.out.map((x) => -2 * x) as [number, number, number];
      const hit = drawn.meet({ origin, direction });
      expect(hit?.stone).toBe(stone);
      // The table lies above the girdle by less than half of the width.
      expect(hit?.distance).toBeGreaterThan(4.5);
      expect(hit?.distance).toBeLessThan(5);
    }
    expect(drawn.meet({ origin: [0, 0, 30], direction: [0, 0, -1] })).toBeUndefined();
  });

  test("are left out of a cut where their middle is, and come again", async () => {
    const shown = await stones();
    const drawn = new RingStones(shown);
    const behind = { origin: [0, -30, 0], direction: [0, 1, 0] } as const;
    drawn.clip([new Plane(new Vector3(0, 1, 0), 0)]);
    expect(drawn.meet(behind)?.stone.group).not.toBe(1);
    drawn.clip([]);
    expect(drawn.meet(behind)?.stone.group).toBe(1);
  });

  test("are shaded by their gem: clear ones by their planes, dense ones by their colour; and lit from the camera", async () => {
    const shown = await stones();
    const drawn = new RingStones(shown, { material: "au750-red" });
    const scene = new Scene();
    scene.add(drawn.object);
    const materials: ShaderMaterial[] = [];
    drawn.object.traverse((one) => {
      if ("material" in one) materials.push(one.material as ShaderMaterial);
    });
    const [ruby, turquoise] = materials;
    expect(ruby.defines).toMatchObject({ PLANES: 58 });
    expect(ruby.uniforms.planes.value).toHaveLength(58);
    expect(turquoise.defines).toEqual({});
    expect(ruby.uniforms.colour.value.toArray()).toEqual([...shown.bodies[0].gem.colour]);
    const [r, , b] = lookOf("au750-red").colour;
    const { metal } = ruby.uniforms;
    expect(metal.value.r / metal.value.b).toBeCloseTo(r / b, 9);
    const camera = new PerspectiveCamera();
    camera.position.set(3, 0, 3);
    camera.lookAt(0, 0, 0);
    drawn.faceStudio(camera);
    expect(ruby.uniforms.turned.value).toBeCloseTo(Math.PI / 4, 9);
    let gone = 0;
    for (const material of materials) material.addEventListener("dispose", () => gone++);
    drawn.dispose();
    expect(gone).toBe(2);
    expect(scene.children).toEqual([]);
  });
});
