/**
 * The light of any sample of a ring with stones: metal, clear stones, and stones into which one cannot look, which shine over
 * their colour as wax and resin do.
 */
import type { EchoGrid } from "../echo.js";
import { makeShade, type Shade, type ShadeOptions } from "../shade.js";
import type { Scene } from "./scene.js";
import { shadeStones } from "./shade-stones.js";

export function shadeScene(scene: Scene, options: ShadeOptions, grid: EchoGrid): Shade {
  const metal = makeShade(options);
  if (scene.stones.length === 0) return metal;
  const { camera, supersample, projected, map, look, mirrored } = options;
  const clear = shadeStones({ scene, camera, supersample, projected, map, grid, colour: look.colour, mirrored });
  const dense = new Map<string, Shade>();
  return (triangle, ...run) => {
    if (triangle < scene.metal) return metal(triangle, ...run);
    const { gem } = scene.stones[scene.stoneOf[triangle - scene.metal]].body;
    if (gem.look.clear) return clear(triangle, ...run);
    const shade = dense.get(gem.name) ?? makeShade({ ...options, look: { ...gem.look, name: gem.name, metal: false } });
    dense.set(gem.name, shade);
    shade(triangle, ...run);
  };
}
